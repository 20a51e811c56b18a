package jackwork.bench;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;

/**
 * Readings of one quantity on several pieces, or several times. The interval is where the next piece will be 95 times in
 * 100, not how well the mean is known: {@code t s √(1 + 1/n)} by Student's t with n − 1 degrees of freedom (prediction
 * interval of a normal variable, from memory), and what the instrument cannot tell apart, as a root sum of squares.
 */
public final class Readings {

    private static final double CONFIDENCE = 0.95;

    private Readings() {}

    /**
     * @param values at least two
     * @param resolution what the instrument can tell apart, in the readings' unit
     * @param how they were taken, for people
     * @throws IllegalArgumentException when there are fewer than two, or one is not a finite number
     */
    public static Uncertain of(double[] values, double resolution, String unit, String how) {
        if (values.length < 2) {
            throw new IllegalArgumentException(
                    "one reading says nothing of how far the next may be off; take at least two, better five");
        }
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a reading is " + value + ", expected a number");
            }
        }
        int n = values.length;
        double mean = StatUtils.mean(values);
        double t = new TDistribution(n - 1).inverseCumulativeProbability(0.5 + CONFIDENCE / 2);
        double spread = t * Math.sqrt(StatUtils.variance(values) * (1 + 1.0 / n));
        double half = Math.hypot(spread, resolution / 2);
        return new Uncertain(mean, mean - half, mean + half, unit, Basis.MEASURED, how + ", " + n + " readings");
    }
}
