package jackwork.check;

import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * What the spread of the numbers does to a margin, to first order: each is put to both ends of its
 * 95 % interval alone, and the drops are added as a root sum of squares (JCGM 100:2008, 5.1.2, for
 * independent inputs). Virtual builds later draw them all at once.
 */
public final class Spread {

    /** Drops below this share of the margin are not worth naming. */
    private static final double NAMED = 0.01;

    private final double margin;
    private final List<Ground> grounds = new ArrayList<>();
    private final List<String> reserves = new ArrayList<>();
    private boolean reserveGone;

    public Spread(double margin) {
        this.margin = margin;
    }

    /** @param marginAt the margin with this number at another value; NaN counts as the margin lost */
    public Spread add(String name, Uncertain number, DoubleUnaryOperator marginAt) {
        double low = marginAt.applyAsDouble(number.low());
        double high = marginAt.applyAsDouble(number.high());
        double worst =
                Math.min(Double.isNaN(low) ? -Math.abs(margin) : low, Double.isNaN(high) ? -Math.abs(margin) : high);
        double best = Math.max(Double.isNaN(low) ? margin : low, Double.isNaN(high) ? margin : high);
        grounds.add(new Ground(name, number, Math.max(0, margin - worst), Math.max(0, best - margin)));
        return this;
    }

    /**
     * What the question leaves out, as it is expected: a margin that it takes is not enough to pass.
     *
     * @param what in the words of the formula, with what is left then
     * @param marginThen the margin with that counted
     */
    Spread reserve(String what, double marginThen) {
        reserves.add(what);
        reserveGone |= !(marginThen > 0);
        return this;
    }

    public Status status() {
        if (!(margin > 0)) {
            return Status.FAIL;
        }
        return margin - rootOfSquares(Ground::drop) > 0 && !reserveGone ? Status.PASS : Status.DOUBTFUL;
    }

    /** What is kept for what the question leaves out, to be added to its formula; empty when nothing is. */
    String reserves() {
        // What fails has nothing to keep.
        return reserves.isEmpty() || !(margin > 0) ? "" : "; kept for what is left out: " + String.join(", ", reserves);
    }

    /** What the status is decided on: all grounds, those too small to be named as well; null when there are none. */
    @Nullable
    Margins margins() {
        return grounds.isEmpty() || Double.isNaN(margin)
                ? null
                : new Margins(margin - rootOfSquares(Ground::drop), margin + rootOfSquares(Ground::gain));
    }

    private double rootOfSquares(ToDoubleFunction<Ground> of) {
        return Math.sqrt(grounds.stream()
                .mapToDouble(ground -> of.applyAsDouble(ground) * of.applyAsDouble(ground))
                .sum());
    }

    /** What is lost where it passes, what may be won where it fails. */
    private double moved(Ground ground) {
        return margin > 0 ? ground.drop() : Math.max(ground.drop(), ground.gain());
    }

    /** Those that matter, most first. */
    List<Ground> grounds() {
        return grounds.stream()
                .filter(g -> moved(g) > NAMED * Math.abs(margin))
                .sorted(Comparator.comparingDouble(this::moved).reversed())
                .toList();
    }
}
