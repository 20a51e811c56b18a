package jackwork.design;

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

    private static String clipped(String words) {
        return words.length() <= MOST_LETTERS
                ? words
                : words.substring(0, MOST_LETTERS / 2) + " … " + words.substring(words.length() - MOST_LETTERS / 2);
    }

    private static String seen(String words) {
        if (words.codePoints().noneMatch(ToldWords::isObeyed)) {
            return words;
        }
        StringBuilder seen = new StringBuilder();
        words.codePoints().map(c -> isObeyed(c) ? REPLACEMENT : c).forEach(seen::appendCodePoint);
        return seen.toString();
    }

    /** Whether a screen does something at it instead of showing it: escapes, and what turns the direction of writing. */
    static boolean isObeyed(int c) {
        return (Character.isISOControl(c) && c != '\n' && c != '\t')
                || (c >= 0x202A && c <= 0x202E)
                || (c >= 0x2066 && c <= 0x2069);
    }
}
