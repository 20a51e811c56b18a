package jackwork.make;

import jackwork.layout.Effort;
import jackwork.layout.LayoutResult;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How long to look for tighter sheets.
 *
 * @param moves of single pieces, where no seconds are given
 * @param seconds in all; 0 for the usual: a fixed number of trials, so that the same design gives the same sheets
 * @param stopped asked all the while: true takes the best so far
 * @param told of every tighter layout, in words
 */
public record SheetSearch(long moves, double seconds, BooleanSupplier stopped, Consumer<String> told) {

    private static final long SEED = 1;

    /** Moves of single pieces in all, whatever the number of stocks: about a second. */
    private static final long MOVES = 3_000;

    public SheetSearch(double seconds, BooleanSupplier stopped, Consumer<String> told) {
        this(MOVES, seconds, stopped, told);
    }

    public static SheetSearch usual() {
        return new SheetSearch(0, () -> false, words -> {});
    }

    /** Each piece where there is room for it, and no more: for comparing two designs laid out alike, not for cutting. */
    static SheetSearch none() {
        return new SheetSearch(0, 0, () -> false, words -> {});
    }

    /** @param share the effort is shared by so many stocks */
    Effort effort(String stock, int pieces, int share) {
        Effort effort = seconds > 0
                ? Effort.seconds(seconds / share, Runtime.getRuntime().availableProcessors(), SEED)
                : Effort.moves(moves / share, SEED);
        return new Effort(
                effort.moves(),
                effort.deadline(),
                effort.threads(),
                effort.seed(),
                stopped,
                better -> told.accept(words(stock, pieces, better)));
    }

    private static String words(String stock, int pieces, LayoutResult better) {
        return String.format(
                Locale.ROOT,
                "%s: %d pieces on %d sheet%s, the last used over %.0f mm",
                stock,
                pieces,
                better.sheets(),
                better.sheets() == 1 ? "" : "s",
                better.length());
    }
}
