package jackwork.app.wire;

/** A design that the workshop does not have. */
public final class UnknownDesignException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public UnknownDesignException(String id, java.util.List<String> known) {
        super("this workshop has no design \"" + id + "\"; it has " + String.join(", ", known));
    }
}
