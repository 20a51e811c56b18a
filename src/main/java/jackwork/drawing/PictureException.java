package jackwork.drawing;

/** A picture that cannot be used. The message says what was read, what was expected and what to do, after the file. */
public final class PictureException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final String problem;

    PictureException(String file, String problem) {
        super(file + ": " + problem);
        this.file = file;
        this.problem = problem;
    }

    public String file() {
        return file;
    }

    /** The message without the file. */
    public String problem() {
        return problem;
    }
}
