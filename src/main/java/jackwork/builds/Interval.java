package jackwork.builds;

import java.util.List;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Of a pass rate, at 95 %: from the scatter of independent replicates (Student), at least as wide as where all agree:
 * then as for plain random draws (Clopper and Pearson), which a Latin hypercube does not do worse than.
 */
public record Interval(double low, double high) {

    private static final double CONFIDENCE = 0.95;

    static Interval of(List<BuildResult> results, int replicates) {
        int passes = 0;
        int[] passed = new int[replicates];
        int each = results.size() / replicates;
        for (BuildResult result : results) {
            if (result.passes()) {
                passes++;
                passed[result.number() % replicates]++;
            }
        }
        double rate = (double) passes / results.size();
        double squares = 0;
        boolean alike = true;
        for (int p : passed) {
            double off = (double) p / each - rate;
            squares += off * off;
            alike &= p == passed[0];
        }
        double error = Math.sqrt(squares / (replicates - 1) / replicates);
        if (alike) {
            return plain(passes, results.size());
        }
        double t = new TDistribution(replicates - 1).inverseCumulativeProbability(0.5 + CONFIDENCE / 2);
        return new Interval(Math.max(0, rate - t * error), Math.min(1, rate + t * error));
    }

    /** Clopper and Pearson's interval of plain random draws (Biometrika 26, 1934). */
    static Interval plain(int passes, int tries) {
        double tail = (1 - CONFIDENCE) / 2;
        double low =
                passes == 0 ? 0 : new BetaDistribution(passes, tries - passes + 1.0).inverseCumulativeProbability(tail);
        double high = passes == tries
                ? 1
                : new BetaDistribution(passes + 1.0, tries - passes).inverseCumulativeProbability(1 - tail);
        return new Interval(low, high);
    }
}
