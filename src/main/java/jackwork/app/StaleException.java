package jackwork.app;

/** The files are not any more what an edit was decided on; nothing was changed. */
public final class StaleException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    StaleException() {
        this("the files have changed since");
    }

    StaleException(String message) {
        super(message);
    }
}
