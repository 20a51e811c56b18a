package jackwork.motion.rest;

import jackwork.motion.model.Closure;
import jackwork.motion.model.LuFactors;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.ModelLimits;
import jackwork.motion.model.Moves;
import jackwork.motion.model.Rows;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks past a pose where links stand in line for the ways that lead on: straight, and to either side along what
 * is loose there. Where two are found it is a change point.
 */
final class BranchSearch {

    /** How far to the side it looks, mm (rad × 100). */
    private static final double[] ASIDE = {0, 2, -2, 8, -8};

    private final Closure closure;
    private final Rows rows;
    private final LuFactors factors;
    private final double[] pose;
    private final double[] change;

    BranchSearch(Mechanism mechanism) {
        this.rows = new Rows(mechanism);
        this.closure = new Closure(mechanism, rows);
        this.factors = new LuFactors(mechanism.coordinates());
        this.pose = new double[mechanism.coordinates()];
        this.change = new double[mechanism.coordinates()];
    }

    /**
     * @param from just before the place
     * @param target a stroke just past it
     * @return poses there, [3 × bodies] each
     */
    List<double[]> find(PoseSolver from, double target) {
        double[] start = from.pose().clone();
        double step = target - from.stroke();
        double[] loose = loose(start);
        List<double[]> found = new ArrayList<>();
        for (double aside : ASIDE) {
            for (int i = 0; i < pose.length; i++) {
                pose[i] = start[i] + from.velocity()[i] * step + aside * loose[i];
            }
            boolean near = close(target)
                    && Moves.between(start, pose) < RestLimits.NEAR_BRANCH * Math.max(Math.abs(step), 0.02);
            if (near && found.stream().noneMatch(known -> Moves.between(known, pose) <= RestLimits.SAME_BRANCH)) {
                found.add(pose.clone());
            }
        }
        return found;
    }

    /** The loose motion, of size 1: what a nearly singular matrix makes of any right-hand side. */
    private double[] loose(double[] start) {
        rows.at(start);
        closure.assemble(factors);
        double[] loose = new double[start.length];
        if (!factors.factor()) {
            return loose;
        }
        for (int i = 0; i < loose.length; i++) {
            loose[i] = 1 + 0.1 * i;
        }
        factors.solve(loose);
        double size = Moves.size(loose);
        for (int i = 0; i < loose.length; i++) {
            loose[i] /= size;
        }
        return loose;
    }

    private boolean close(double stroke) {
        for (int k = 0; k < RestLimits.BRANCH_ITERATIONS; k++) {
            rows.at(pose);
            double miss = closure.miss(pose, stroke);
            if (miss <= ModelLimits.CLOSED) {
                return true;
            }
            closure.assemble(factors);
            if (!factors.factor()) {
                return false;
            }
            closure.residual(pose, stroke, change);
            factors.solve(change);
            for (int i = 0; i < pose.length; i++) {
                pose[i] += change[i];
            }
        }
        rows.at(pose);
        return closure.miss(pose, stroke) <= 10 * ModelLimits.CLOSED;
    }
}
