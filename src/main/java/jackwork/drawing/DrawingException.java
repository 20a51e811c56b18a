package jackwork.drawing;

import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Point;
import java.util.Optional;

/**
 * A drawing that cannot be read. The message says what was read, what was expected and what to do,
 * after the file and the place in it ({@code heron.svg:12:5: ...}).
 */
public final class DrawingException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;

    DrawingException(String file, int line, int column, String problem) {
        super(file + ":" + line + ":" + column + ": " + problem);
        this.file = file;
        this.line = line;
        this.column = column;
    }

    public String file() {
        return file;
    }

    /** Line of the element at fault, from 1. */
    public int line() {
        return line;
    }

    /** Column of the element at fault, from 1, counted in code points. */
    public int column() {
        return column;
    }

    /** Where an outline goes wrong, in mm from the drawing's origin with y up, when that is what is wrong. */
    public Optional<Point> at() {
        return getCause() instanceof InvalidOutlineException invalid ? Optional.of(invalid.at()) : Optional.empty();
    }
}
