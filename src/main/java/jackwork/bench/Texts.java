package jackwork.bench;

import java.nio.file.Path;
import java.time.Instant;

/** What may be written into the log: words and numbers that can be read again. */
final class Texts {

    private static final Instant FIRST = Instant.parse("1900-01-01T00:00:00Z");
    private static final Instant LAST = Instant.parse("9999-12-31T23:59:59Z");

    /** Days between which somebody logs something with this program: no clock is asked, clocks go wrong. */
    private static final Instant SENSIBLE_FROM = Instant.parse("2000-01-01T00:00:00Z");

    private static final Instant SENSIBLE_TO = Instant.parse("2099-12-31T23:59:59Z");

    private Texts() {}

    /** @throws IllegalArgumentException when it is too short or too long, or has control characters */
    static void require(String name, String text, int least, int most) {
        if (text.strip().length() < least) {
            throw new IllegalArgumentException(name + " is empty; expected a word");
        }
        if (text.length() > most) {
            throw new IllegalArgumentException(
                    name + " has " + text.length() + " characters, expected " + most + " at most");
        }
        if (text.codePoints().anyMatch(c -> Character.isISOControl(c) && c != '\n')) {
            throw new IllegalArgumentException(name + " has characters in it that cannot be seen; type it anew");
        }
    }

    static void require(String name, int number, int least, int most) {
        if (number < least || number > most) {
            throw new IllegalArgumentException(name + " reads " + number + ", expected " + least + " to " + most);
        }
    }

    /** @throws IllegalArgumentException when it is no path to something in the workshop, from its folder on */
    static void requireInside(String name, String path) {
        Path way = Path.of(path);
        if (way.getRoot() != null || way.startsWith("..") || !way.normalize().equals(way)) {
            throw new IllegalArgumentException(name + " reads \"" + path
                    + "\", expected a path within the workshop's folder, as in boxes/reed-box");
        }
    }

    static void requireYear(Instant at) {
        if (at.isBefore(FIRST) || at.isAfter(LAST)) {
            throw new IllegalArgumentException("the date reads " + at + ", expected one from 1900 to 9999");
        }
    }

    static void requireSensible(Instant at) {
        if (at.isBefore(SENSIBLE_FROM) || at.isAfter(SENSIBLE_TO)) {
            throw new IllegalArgumentException("the date reads " + at
                    + ", expected one from 2000 to 2099; mend the date, or set the clock it was taken from");
        }
    }
}
