package jackwork.app.bring;

/** What was brought in cannot be used as it is; nothing was changed. */
public final class BringException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String remedy;

    public BringException(String problem, String remedy) {
        super(problem);
        this.remedy = remedy;
    }

    /** What to do instead. */
    public String remedy() {
        return remedy;
    }
}
