package jackwork.builds;

import jackwork.chance.Interval;
import java.util.List;
import java.util.function.Predicate;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Interval of a pass rate, at 95 %: from the scatter of independent replicates (Student). Where they agree, or hardly any piece
 * fails or passes, scatter tells nothing: then as for plain random draws (Clopper and Pearson), which a Latin hypercube does not do
 * worse than.
 */
final class ReplicateInterval {

    private static final double CONFIDENCE = 0.95;
    /** In a replicate, of those that are the fewer, pieces that fail or that pass: with less, one piece decides the scatter. */
    private static final double FEWEST = 1;

    private ReplicateInterval() {}

    static Interval of(List<BuildResult> results, int replicates) {
        return of(results, replicates, BuildResult::passes);
    }

    /** @param does what is counted */
    static Interval of(List<BuildResult> results, int replicates, Predicate<BuildResult> does) {
        int passes = 0;
        int[] passed = new int[replicates];
        int each = results.size() / replicates;
        for (BuildResult result : results) {
            if (does.test(result)) {
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
        if (alike || Math.min(passes, results.size() - passes) < FEWEST * replicates) {
            return Interval.ofRate(passes, results.size(), CONFIDENCE);
        }
        double t = new TDistribution(replicates - 1).inverseCumulativeProbability(0.5 + CONFIDENCE / 2);
        return new Interval(Math.max(0, rate - t * error), Math.min(1, rate + t * error));
    }
}
