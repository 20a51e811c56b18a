package jackwork.design;

/**
 * One complaint about a file.
 *
 * @param line counted from 1; 0 when the complaint is about the whole file
 * @param column counted from 1, in code points
 */
public record Problem(String file, int line, int column, String message) {

    public Problem {
        message = ToldWords.message(message);
    }

    @Override
    public String toString() {
        return line == 0 ? file + ": " + message : file + ":" + line + ":" + column + ": " + message;
    }
}
