package jackwork.make;

/** A design that cannot be made as it is: the maker's to mend. */
public abstract sealed class MakeException extends RuntimeException
        permits CaseException, LaserException, PartTooLargeException, PrintException {

    private static final long serialVersionUID = 1L;

    MakeException(String message) {
        super(message);
    }
}
