package jackwork.app.wire;

/** What was asked is saved; only the answer to it could not be given. */
public final class SavedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public SavedException(RuntimeException why) {
        super("your change is saved; only the answer to it failed (" + why.getMessage() + ")", why);
    }
}
