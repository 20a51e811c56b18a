package jackwork.design;

/**
 * One complaint about a file.
 *
 * @param line counted from 1; 0 when the complaint is about the whole file
 * @param column counted from 1, in code points
 */
public record Problem(String file, int line, int column, String message) {

    /** What is longer quotes something that no one wants to read whole. */
    private static final int MOST_LETTERS = 1000;

    public Problem {
        if (message.length() > MOST_LETTERS) {
            message = message.substring(0, MOST_LETTERS / 2) + " … "
                    + message.substring(message.length() - MOST_LETTERS / 2);
        }
    }

    @Override
    public String toString() {
        return line == 0 ? file + ": " + message : file + ":" + line + ":" + column + ": " + message;
    }
}
