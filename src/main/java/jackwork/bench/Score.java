package jackwork.bench;

import jackwork.chance.Interval;
import jackwork.chance.Proof;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How trials went, of one revision with one coin, or with all.
 *
 * @param failures by cause, most frequent first
 */
public record Score(int tries, int passes, Map<String, Integer> failures) {

    public static Score of(List<Trial> trials) {
        int tries = 0;
        int passes = 0;
        Map<String, Integer> failures = new TreeMap<>();
        for (Trial trial : trials) {
            tries = Math.addExact(tries, trial.tries());
            passes += trial.passes();
            trial.failures().forEach((cause, count) -> failures.merge(cause, count, Integer::sum));
        }
        List<Map.Entry<String, Integer>> sorted = new ArrayList<>(failures.entrySet());
        sorted.sort(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry::getKey));
        Map<String, Integer> ordered = new LinkedHashMap<>();
        sorted.forEach(entry -> ordered.put(entry.getKey(), entry.getValue()));
        return new Score(tries, passes, ordered);
    }

    /** Share that passes; not a number before the first try. */
    public double rate() {
        return tries == 0 ? Double.NaN : (double) passes / tries;
    }

    /** Where the true share lies, 95 times in 100 (Clopper and Pearson). */
    public Interval interval() {
        return Interval.ofRate(passes, tries);
    }

    /**
     * Coins that must pass from now on, without one failing, until the rate is proved.
     *
     * @param rate wanted
     * @param confidence wanted
     */
    public int cleanNeeded(double rate, double confidence) {
        return Math.max(0, Proof.tries(rate, confidence, tries - passes) - tries);
    }
}
