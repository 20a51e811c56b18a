package jackwork.bench;

import jackwork.design.ToldWords;
import java.util.stream.Collectors;

/** The log cannot do what was asked; its message says why and what to do instead. Nothing was changed. */
public final class BenchException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final boolean unreached;

    public BenchException(String message) {
        super(told(message));
        this.unreached = false;
    }

    BenchException(String message, Throwable cause) {
        super(message, cause);
        this.unreached = true;
    }

    private BenchException(String message, boolean unreached) {
        super(message);
        this.unreached = unreached;
    }

    /** Each of its lines quotes what a stranger may have written. */
    private static String told(String message) {
        return message.lines().map(ToldWords::message).collect(Collectors.joining("\n"));
    }

    /** The file is no log that can be used: what was to be logged may be sent again once a log is back. */
    static BenchException ofLog(String message) {
        return new BenchException(message, true);
    }

    /** The same with the place of what it complains of before it. */
    BenchException at(String place) {
        return unreached ? this : new BenchException(place + getMessage());
    }

    /** Whether the log could not be reached, so that the same may do later; else it is refused for good. */
    public boolean unreached() {
        return unreached;
    }
}
