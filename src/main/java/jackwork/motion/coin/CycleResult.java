package jackwork.motion.coin;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What came of one cycle.
 *
 * @param times at which each stage was reached, s from letting go; stages not reached are absent
 * @param nearest how near each stage that was looked for came, in its own measure: 1 and more is reached
 * @param byItself time that a stage takes however well all goes, s: the finger's way at its own speed
 * @param computed false when the run left the stepper's bounds, or its friction did not settle: then nothing of it counts,
 *     and no times are kept
 * @param closure largest miss of a joint before projection, mm
 * @param residual largest miss of the complementarity, as a share of its scale
 * @param energyFromNowhere most energy that neither finger nor height gave, as a share of the most exchanged
 * @param attempts steps that it took
 */
public record CycleResult(
        Map<CycleStage, Double> times,
        Map<CycleStage, Double> nearest,
        Map<CycleStage, Double> byItself,
        boolean computed,
        double closure,
        double residual,
        double energyFromNowhere,
        int attempts) {

    public CycleResult {
        times = kept(times, computed);
        nearest = kept(nearest, computed);
        byItself = kept(byItself, computed);
    }

    /** Of a run that is not computed nothing is kept, so that nobody can use it. */
    private static Map<CycleStage, Double> kept(Map<CycleStage, Double> measured, boolean computed) {
        Map<CycleStage, Double> kept = new EnumMap<>(CycleStage.class);
        if (computed) {
            kept.putAll(measured);
        }
        return kept;
    }

    /** Whether every stage was reached. */
    public boolean passes() {
        return computed && firstMissed().isEmpty();
    }

    /** Share of its time that the stage which took longest had left. What a press takes by itself is no delay. */
    public double timeLeft() {
        double slowest = 0;
        double before = 0;
        for (CycleStage stage : CycleStage.values()) {
            double at = times.getOrDefault(stage, before);
            slowest = Math.max(slowest, at - before - byItself.getOrDefault(stage, 0.0));
            before = Math.max(before, at);
        }
        return 1 - slowest / CoinLimits.PATIENCE;
    }

    /** The first stage that was not reached: the cause. */
    public Optional<CycleStage> firstMissed() {
        for (CycleStage stage : CycleStage.values()) {
            if (!times.containsKey(stage)) {
                return Optional.of(stage);
            }
        }
        return Optional.empty();
    }
}
