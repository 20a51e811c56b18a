package jackwork.geometry;

/** An outline that bounds no single region; carries the place so that it can be shown. */
public final class InvalidOutlineException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Point at;

    public InvalidOutlineException(String message, Point at) {
        super(message);
        this.at = at;
    }

    /** Where it goes wrong, mm. */
    public Point at() {
        return at;
    }
}
