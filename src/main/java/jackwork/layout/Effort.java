package jackwork.layout;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How long to search.
 *
 * @param moves of single pieces at most, each of some dozens of trials: the same number gives the same layout on one thread
 * @param deadline of {@code System.nanoTime}, after which the best so far is taken
 * @param threads searching side by side
 * @param seed of all chance
 * @param stopped asked between moves: true takes the best so far
 * @param progress told of every better layout
 */
public record Effort(
        long moves, long deadline, int threads, long seed, BooleanSupplier stopped, Consumer<LayoutResult> progress) {

    private static final long LONG = 3_600_000_000_000L;

    /** So many moves, however long they take. */
    public static Effort moves(long moves, long seed) {
        return new Effort(moves, System.nanoTime() + 24 * LONG, 1, seed, () -> false, result -> {});
    }

    /** So many seconds. */
    public static Effort seconds(double seconds, int threads, long seed) {
        return new Effort(
                Long.MAX_VALUE, System.nanoTime() + (long) (seconds * 1e9), threads, seed, () -> false, result -> {});
    }

    boolean over(long done) {
        return done >= moves || System.nanoTime() - deadline > 0 || stopped.getAsBoolean();
    }

    /** A share of the time and moves that are left. */
    Effort share(double share, long done) {
        long now = System.nanoTime();
        long until = now + (long) (share * (deadline - now));
        long left = moves == Long.MAX_VALUE ? Long.MAX_VALUE : done + (long) (share * (moves - done));
        return new Effort(left, until, threads, seed, stopped, progress);
    }
}
