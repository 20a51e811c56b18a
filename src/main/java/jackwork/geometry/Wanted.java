package jackwork.geometry;

import java.util.concurrent.CancellationException;

/**
 * Long computing looks here now and then whether it is still wanted: whoever gave it up has interrupted its thread. It
 * stands on the lowest floor because every floor above it computes.
 */
public final class Wanted {

    private Wanted() {}

    /** @throws CancellationException when this thread was interrupted; it stays interrupted */
    public static void goOn() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("stopped: nobody waits for it any more");
        }
    }
}
