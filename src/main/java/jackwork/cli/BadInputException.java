package jackwork.cli;

import java.util.function.Supplier;

/** Arguments that ask for what cannot be done; its message says what to do instead. */
final class BadInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BadInputException(String message) {
        super(message);
    }

    /** What the arguments make; what they cannot be is bad input. */
    static <T> T unless(Supplier<T> made) {
        try {
            return made.get();
        } catch (IllegalArgumentException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
    }
}
