package jackwork.app.wire;

/** The files are not any more what an edit was decided on; nothing was changed. */
public final class StaleException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public StaleException() {
        this("the files have changed since");
    }

    public StaleException(String message) {
        super(message);
    }
}
