package jackwork.cli;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/** What the system's locale makes of letters beyond ASCII. Java takes words and names of files in its encoding alone. */
final class Locales {

    /** Stands for a letter that could not be read. */
    private static final char LOST = '\uFFFD';

    private Locales() {}

    /** Whether some letter of a word was lost before the program saw it. */
    static boolean lost(String... words) {
        return Stream.of(words).anyMatch(word -> word.indexOf(LOST) >= 0);
    }

    /** Whether the locale, C or POSIX, has no letters beyond ASCII. */
    static boolean knowsAsciiAlone() {
        String encoding = System.getProperty("sun.jnu.encoding", "");
        return Charset.isSupported(encoding) && Charset.forName(encoding).equals(StandardCharsets.US_ASCII);
    }
}
