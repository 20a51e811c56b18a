package jackwork.app.history;

import java.nio.file.Path;

/** What is kept for taking back is not what Jackwork writes there: nothing of it may be used. */
final class UnfitHistoryException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Path at;

    /** @param at what is to be put aside */
    UnfitHistoryException(Path at, String message) {
        super(message);
        this.at = at;
    }

    Path at() {
        return at;
    }
}
