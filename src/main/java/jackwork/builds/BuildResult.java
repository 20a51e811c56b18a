package jackwork.builds;

import java.util.List;
import java.util.Optional;

/**
 * What came of one build.
 *
 * @param number from 0
 * @param coins one trial for each coin, in the design's order
 */
public record BuildResult(int number, List<Trial> coins) {

    /**
     * One coin's trial.
     *
     * @param coin its code
     * @param cause of its failing; empty when it passes or is not computed
     * @param computed false when the run left the stepper's bounds
     * @param margin positive passes; how near the first missed stage came, or how much of its time was left
     */
    public record Trial(String coin, Optional<Cause> cause, boolean computed, double margin) {

        public boolean passes() {
            return computed && cause.isEmpty();
        }
    }

    public boolean passes() {
        return coins.stream().allMatch(Trial::passes);
    }

    /** Of the first coin that fails. */
    public Optional<Cause> cause() {
        return coins.stream().flatMap(trial -> trial.cause().stream()).findFirst();
    }

    /** The least of all coins. */
    public double margin() {
        return coins.stream().mapToDouble(Trial::margin).min().orElse(Double.NaN);
    }
}
