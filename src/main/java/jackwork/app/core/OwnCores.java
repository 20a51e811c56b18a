package jackwork.app.core;

import jackwork.app.wire.TooLongException;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/**
 * One piece of computing on all cores, in threads that nothing else shares: it waits for no other's, and can be dropped
 * ({@link jackwork.geometry.Wanted}).
 */
public final class OwnCores<T> {

    private final ForkJoinPool pool = new ForkJoinPool(Runtime.getRuntime().availableProcessors());
    private final FutureTask<T> task;

    private OwnCores(Callable<T> work) {
        this.task = new FutureTask<>(work);
        pool.execute(task);
    }

    /** Begins it; whoever does {@link #drop}s it at last, done or not. */
    static <T> OwnCores<T> begin(Callable<T> work) {
        return new OwnCores<>(work);
    }

    /** Works something out while the caller waits; dropped when the caller is interrupted. */
    public static <T> T use(Duration longest, Supplier<T> work) {
        OwnCores<T> begun = begin(work::get);
        try {
            return begun.await(longest);
        } finally {
            begun.drop();
        }
    }

    /**
     * @throws CancellationException when the caller is interrupted meanwhile; it stays interrupted
     * @throws TooLongException when it takes longer
     */
    T await(Duration longest) {
        try {
            return task.get(longest.toNanos(), TimeUnit.NANOSECONDS);
        } catch (TimeoutException e) {
            throw new TooLongException(longest);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("stopped: nobody waits for it any more");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            } else if (e.getCause() instanceof Error fault) {
                throw fault;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    /** Nobody wants it any more, or it is done: its threads go. */
    void drop() {
        pool.shutdownNow();
    }
}
