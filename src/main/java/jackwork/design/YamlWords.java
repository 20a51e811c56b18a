package jackwork.design;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Text as YAML has it: bare where nobody reads it as anything else, else in double quotes; on one line always. */
public final class YamlWords {

    /** Names, words and paths; they are text wherever they stand, also as a key and between brackets. */
    private static final Pattern BARE = Pattern.compile("(\\.\\./)*\\p{L}[\\p{L}0-9_./-]*( [\\p{L}0-9_./-]+)*");
    /** What some reader of YAML, if not ours, takes for no text. */
    private static final Set<String> TAKEN = Set.of("true", "false", "null", "yes", "no", "on", "off", "y", "n");

    private YamlWords() {}

    /** A text that is read back as that same text, whatever is in it; fit to be a key or a value. */
    public static String quoted(String text) {
        boolean bare = BARE.matcher(text).matches()
                && text.codePoints().noneMatch(Character::isSupplementaryCodePoint)
                && !TAKEN.contains(text.toLowerCase(Locale.ROOT));
        return bare ? text : inQuotes(text);
    }

    /** The same, never bare. */
    static String inQuotes(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '"', '\\' -> out.append('\\').appendCodePoint(letter);
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (isSeen(letter)) {
                        out.appendCodePoint(letter);
                    } else {
                        out.append(String.format(Locale.ROOT, letter > 0xFFFF ? "\\U%08X" : "\\u%04X", letter));
                    }
                }
            }
        });
        return out.append('"').toString();
    }

    /** Whether a letter can stand in a file as it is: what cannot be seen, or is half a letter, cannot. */
    private static boolean isSeen(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
