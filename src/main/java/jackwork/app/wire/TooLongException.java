package jackwork.app.wire;

import java.time.Duration;

/** What was asked took longer than anybody waits for; it was stopped, and nothing was changed. */
public final class TooLongException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public TooLongException(Duration longest) {
        super("it took longer than " + words(longest) + " and was stopped");
    }

    private static String words(Duration longest) {
        return longest.toSeconds() >= 1 ? longest.toSeconds() + " s" : longest.toMillis() + " ms";
    }
}
