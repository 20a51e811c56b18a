package jackwork.builds;

import java.util.List;
import java.util.Optional;

/**
 * What came of one build.
 *
 * @param number from 0
 * @param coins one trial for each coin, in the design's order, as it came out
 * @param tuned the first setting of an adjuster at which every coin passes, where not all do at once
 */
public record BuildResult(int number, List<Trial> coins, Optional<Adjuster.Turn> tuned) {

    BuildResult(int number, List<Trial> coins) {
        this(number, coins, Optional.empty());
    }

    /**
     * One coin's trial.
     *
     * @param coin its code
     * @param cause of its failing; empty when it passes or is not computed
     * @param computed false when the run left the stepper's bounds, or its friction did not settle
     * @param margin positive passes; how near the first missed stage came, or how much of its time was left; not a
     *     number when it is not computed
     */
    public record Trial(String coin, Optional<Cause> cause, boolean computed, double margin) {

        public boolean passes() {
            return computed && cause.isEmpty();
        }
    }

    public boolean passes() {
        return coins.stream().allMatch(Trial::passes);
    }

    /** Whether it does at once, or once it is tuned. */
    public boolean passesTuned() {
        return passes() || tuned.isPresent();
    }

    /** Of the first coin that fails. */
    public Optional<Cause> cause() {
        return coins.stream().flatMap(trial -> trial.cause().stream()).findFirst();
    }

    /** Whether nothing is known of it: no coin fails, and some run is not computed. */
    public boolean isOpen() {
        return !passes() && cause().isEmpty();
    }

    /** The least of all coins; not a number when some run is not computed. */
    public double margin() {
        return coins.stream().mapToDouble(Trial::margin).min().orElse(Double.NaN);
    }
}
