package jackwork.bench;

/** The log cannot do what was asked; its message says why and what to do instead. Nothing was changed. */
public final class BenchException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public BenchException(String message) {
        super(message);
    }

    BenchException(String message, Throwable cause) {
        super(message, cause);
    }

    /** The same with the place of what it complains of before it. */
    BenchException at(String place) {
        return getCause() == null ? new BenchException(place + getMessage()) : this;
    }

    /** Whether the log could not be reached, so that the same may do later; else it is refused for good. */
    public boolean unreached() {
        return getCause() != null;
    }
}
