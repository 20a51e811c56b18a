package jackwork.app.history;

import jackwork.design.Inside;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One change at a time to the files of a workshop, whichever program makes it: between looking whether they are still as
 * they were and writing them nobody else writes. Held for the writing alone, not while something is worked out. It ends
 * with the program that has it, however that ends.
 */
public final class Turn {

    private static final String FILE = "turn";
    /** Locks of files hold between programs, not within one. */
    private static final Map<Path, ReentrantLock> WITHIN = new ConcurrentHashMap<>();

    private Turn() {}

    /** What is done in it. */
    public interface Work<X extends Exception> {
        void run() throws X;
    }

    /**
     * Waits until nobody else has it, then does the work.
     *
     * @throws UncheckedIOException when the workshop's folder cannot be written to
     */
    public static <X extends Exception> void take(Path workshop, Work<X> work) throws X {
        Path home = workshop.toAbsolutePath().normalize();
        Path folder = home.resolve(".jackwork");
        Inside.requireOwn(home, folder.resolve(FILE));
        ReentrantLock within = WITHIN.computeIfAbsent(folder, key -> new ReentrantLock());
        within.lock();
        try {
            if (within.getHoldCount() > 1) {
                work.run();
            } else {
                takeFromOthers(folder, work);
            }
        } finally {
            within.unlock();
        }
    }

    private static <X extends Exception> void takeFromOthers(Path folder, Work<X> work) throws X {
        try (FileChannel channel = open(folder)) {
            channel.lock();
            work.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static FileChannel open(Path folder) throws IOException {
        Files.createDirectories(folder);
        return FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }
}
