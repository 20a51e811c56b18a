package jackwork.design;

import java.util.Locale;

/** Words that quote a file which anybody may have written: short enough to be read, and with nothing in them that a screen obeys. */
public final class ToldWords {

    /** What is longer quotes something that no one wants to read whole. */
    private static final int MOST_LETTERS = 1000;

    private static final int REPLACEMENT = 0xFFFD;

    private ToldWords() {}

    /** A complaint as it is told. */
    public static String message(String words) {
        return clipped(seen(words));
    }

    static boolean hasObeyed(String text) {
        return text.codePoints().anyMatch(ToldWords::isObeyed);
    }

    /** Of a text with a sign in it that a screen obeys. */
    static String complaint(String text) {
        return String.format(
                Locale.ROOT,
                "read a sign that cannot be seen (U+%04X) among its letters, expected letters alone; type it again",
                text.codePoints().filter(ToldWords::isObeyed).findFirst().orElse(0));
    }

    private static String clipped(String words) {
        return words.length() <= MOST_LETTERS
                ? words
                : words.substring(0, MOST_LETTERS / 2) + " … " + words.substring(words.length() - MOST_LETTERS / 2);
    }

    private static String seen(String words) {
        if (!hasObeyed(words)) {
            return words;
        }
        StringBuilder seen = new StringBuilder();
        words.codePoints().map(c -> isObeyed(c) ? REPLACEMENT : c).forEach(seen::appendCodePoint);
        return seen.toString();
    }

    /** Whether a screen does something at it instead of showing it: escapes, and what turns the direction of writing. */
    private static boolean isObeyed(int c) {
        return (Character.isISOControl(c) && c != '\n' && c != '\t')
                || (c >= 0x202A && c <= 0x202E)
                || (c >= 0x2066 && c <= 0x2069);
    }
}
