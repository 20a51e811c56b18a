package jackwork.chance;

import org.hipparchus.distribution.continuous.BetaDistribution;

/** Where a rate lies, between 0 and 1, at a confidence that whoever made it knows. */
public record Interval(double low, double high) {

    /** Clopper and Pearson's interval at 95 %. */
    public static Interval ofRate(int passes, int tries) {
        return ofRate(passes, tries, 0.95);
    }

    /**
     * Clopper and Pearson's interval of plain random draws (Biometrika 26, 1934): holds the true rate at least as often
     * as it says. Where there were no tries, all from 0 to 1.
     */
    public static Interval ofRate(int passes, int tries, double confidence) {
        if (passes < 0 || passes > tries || !(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException(
                    passes + " of " + tries + " at " + confidence + ": expected 0 to all of them, and 0 to 1");
        }
        double tail = (1 - confidence) / 2;
        double low =
                passes == 0 ? 0 : new BetaDistribution(passes, tries - passes + 1.0).inverseCumulativeProbability(tail);
        double high = passes == tries
                ? 1
                : new BetaDistribution(passes + 1.0, tries - passes).inverseCumulativeProbability(1 - tail);
        return new Interval(low, high);
    }
}
