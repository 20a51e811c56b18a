package jackwork.app.history;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;

/** What is written and noted: where only the last note failed, the change is saved all the same, and is not called a failure. */
public final class Saving {

    private Saving() {}

    /**
     * @param wanted texts that stand there afterwards
     * @throws UncheckedIOException when it could not be written
     */
    public static void all(Map<Path, String> wanted, Runnable write) {
        try {
            write.run();
        } catch (UncheckedIOException e) {
            if (!stands(wanted, e)) {
                throw e;
            }
        }
    }

    private static boolean stands(Map<Path, String> wanted, UncheckedIOException why) {
        try {
            return wanted.entrySet().stream()
                    .allMatch(file -> KeptTexts.read(file.getKey()).equals(file.getValue()));
        } catch (UncheckedIOException e) {
            why.addSuppressed(e);
            return false;
        }
    }
}
