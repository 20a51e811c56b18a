package jackwork.motion.rest;

import jackwork.motion.model.Closure;
import jackwork.motion.model.Direction;
import jackwork.motion.model.LuFactors;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.ModelLimits;
import jackwork.motion.model.Rows;
import java.util.Arrays;
import java.util.Optional;

/**
 * Follows the mechanism's path by its own arc length, (pose, stroke) together, past the point where
 * the stroke alone no longer decides the pose. There the lever-augmented Jacobian loses rank and the
 * stroke's share of the path's tangent passes through zero.
 *
 * <p>Pseudo-arclength continuation: H. B. Keller, "Numerical solution of bifurcation and nonlinear
 * eigenvalue problems", 1977 (named from memory).
 */
final class DeadPointSearch {

    /**
     * @param stroke where the lever stands still, 0 to 1
     * @param pose there, [3 × bodies]
     * @param slack what still moves there while the lever does not, [3 × bodies], scaled to 1
     */
    record DeadPoint(double stroke, double[] pose, double[] slack) {}

    private final Mechanism mechanism;
    private final Rows rows;
    private final Closure closure;
    private final LuFactors factors;
    private final int n;
    private final double[] point;
    private final double[] tangent;
    private final double[] trial;
    private final double[] trialTangent;
    private final double[] change;

    DeadPointSearch(Mechanism mechanism) {
        this.mechanism = mechanism;
        this.rows = new Rows(mechanism);
        this.closure = new Closure(mechanism, rows);
        this.n = mechanism.coordinates();
        this.factors = new LuFactors(n + 1);
        this.point = new double[n + 1];
        this.tangent = new double[n + 1];
        this.trial = new double[n + 1];
        this.trialTangent = new double[n + 1];
        this.change = new double[n + 1];
    }

    /**
     * Looks from the pose at which {@code from} stands, in the sense of {@code direction}.
     *
     * @return empty when the path runs on beyond the stroke's ends (−0.2 to 1.2) without one
     */
    Optional<DeadPoint> find(PoseSolver from, Direction direction) {
        System.arraycopy(from.pose(), 0, point, 0, n);
        point[n] = from.stroke();
        System.arraycopy(from.velocity(), 0, tangent, 0, n);
        tangent[n] = 1;
        normalise(tangent, direction.sign());
        double step = 0.25;
        for (int k = 0; k < RestLimits.DEAD_POINT_STEPS && point[n] > -0.2 && point[n] < 1.2; k++) {
            if (!step(step)) {
                step /= 2;
                if (step < 1e-9) {
                    return Optional.empty();
                }
                continue;
            }
            if (trialTangent[n] * direction.sign() <= 0) {
                return Optional.of(locate(step, direction));
            }
            System.arraycopy(trial, 0, point, 0, n + 1);
            System.arraycopy(trialTangent, 0, tangent, 0, n + 1);
            step = Math.min(1.0, step * 1.3);
        }
        return Optional.empty();
    }

    /** Halves the last step until the tangent's stroke share is zero to working precision. */
    private DeadPoint locate(double step, Direction direction) {
        double low = 0;
        double high = step;
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            if (step(middle) && trialTangent[n] * direction.sign() > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        step(high);
        return new DeadPoint(trial[n], Arrays.copyOf(trial, n), Arrays.copyOf(trialTangent, n));
    }

    /** Predicts along the tangent and corrects across it; fills trial and its tangent. */
    private boolean step(double length) {
        for (int i = 0; i <= n; i++) {
            trial[i] = point[i] + length * tangent[i];
        }
        double miss = Double.NaN;
        for (int k = 0; k < 12; k++) {
            rows.at(trial);
            miss = closure.miss(trial, trial[n]);
            assemble();
            if (!factors.factor()) {
                return false;
            }
            if (miss <= ModelLimits.CLOSED) {
                break;
            }
            double along = 0;
            closure.residual(trial, trial[n], change);
            for (int i = 0; i <= n; i++) {
                along += tangent[i] * (trial[i] - point[i]);
            }
            change[n] = length - along;
            factors.solve(change);
            for (int i = 0; i <= n; i++) {
                trial[i] += change[i];
            }
        }
        if (!(miss <= 10 * ModelLimits.CLOSED)) {
            return false;
        }
        Arrays.fill(trialTangent, 0);
        trialTangent[n] = 1;
        factors.solve(trialTangent);
        normalise(trialTangent, 1);
        return true;
    }

    private void assemble() {
        closure.assemble(factors);
        factors.add(closure.leverRow(), n, -mechanism.drive.turn());
        for (int i = 0; i <= n; i++) {
            factors.add(n, i, tangent[i]);
        }
    }

    private static void normalise(double[] vector, double sign) {
        double sum = 0;
        for (double v : vector) {
            sum += v * v;
        }
        double factor = sign / Math.sqrt(sum);
        for (int i = 0; i < vector.length; i++) {
            vector[i] *= factor;
        }
    }
}
