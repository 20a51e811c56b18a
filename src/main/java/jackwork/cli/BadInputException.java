package jackwork.cli;

/** Arguments that ask for what cannot be done; its message says what to do instead. */
final class BadInputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BadInputException(String message) {
        super(message);
    }
}
