package jackwork.app.wire;

/** The page asked for something in a way that is not understood. */
public final class BadRequestException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public BadRequestException(String message) {
        super(message);
    }
}
