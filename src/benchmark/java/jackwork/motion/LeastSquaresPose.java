package jackwork.motion;

import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Rows;
import jackwork.motion.rest.PoseSolver;
import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * A pose by a general solver: Hipparchus' Levenberg-Marquardt on the closure equations of
 * {@link Rows}, with their own Jacobian, started from the pose before and stopped once no joint
 * misses by more than 1e-9 mm (the lever's row, in rad, counts 100 times, as in {@link PoseSolver}).
 *
 * <p>It is the same equations to what is promised to the maker, by a library anyone would reach for
 * first. It is not a rival made for mechanisms: it knows nothing of the stroke, so it predicts nothing
 * from velocities and gives none; it does not watch for another branch; it solves by dense QR; and it
 * makes new matrices at each evaluation, as its interface asks. {@link PoseSolver} does all of the first
 * and goes to {@link PoseSolver#CLOSED}.
 */
final class LeastSquaresPose {

    /** Greatest distance by which a joint may miss, mm. */
    static final double CLOSED = 1e-9;

    private static final int MOST_EVALUATIONS = 100;

    private final Mechanism mechanism;
    private final Rows joints;
    private final int[] independent;
    private final double[] closure;
    private final double[] gradient;
    private final int n;
    private final RealVector zero;
    private final LevenbergMarquardtOptimizer optimizer = new LevenbergMarquardtOptimizer();
    private double[] pose;

    LeastSquaresPose(Mechanism mechanism) {
        this.mechanism = mechanism;
        this.joints = new Rows(mechanism);
        this.independent = mechanism.structure.independent();
        this.n = mechanism.coordinates();
        this.closure = new double[n];
        this.gradient = new double[n];
        this.zero = new ArrayRealVector(n);
        reset();
    }

    /** Back to the pose as drawn, stroke 0. */
    void reset() {
        pose = mechanism.drawnPose();
    }

    /**
     * Solves at a stroke from the last pose solved.
     *
     * @return x, y (mm) and angle (rad) of each body, [3 × bodies]
     * @throws IllegalStateException when it stops before the joints are closed
     */
    double[] moveTo(double stroke) {
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .model(closure(stroke))
                .target(zero)
                .start(pose)
                .checker((iteration, before, now) -> miss(now.getResiduals()) <= CLOSED)
                .maxEvaluations(MOST_EVALUATIONS)
                .maxIterations(MOST_EVALUATIONS)
                .build();
        pose = optimizer.optimize(problem).getPoint().toArray();
        double missed = closureError(stroke);
        if (!(missed <= CLOSED)) {
            throw new IllegalStateException("at stroke " + stroke + " a joint misses by " + missed + " mm");
        }
        return pose;
    }

    /** Largest distance by which a joint misses at the last pose, mm. */
    private double closureError(double stroke) {
        close(pose, stroke);
        return miss(new ArrayRealVector(closure, false));
    }

    private double miss(RealVector residuals) {
        double most = 100 * Math.abs(residuals.getEntry(n - 1));
        for (int i = 0; i < n - 1; i++) {
            most = Math.max(most, Math.abs(residuals.getEntry(i)));
        }
        return most;
    }

    private MultivariateJacobianFunction closure(double stroke) {
        return point -> {
            double[] q = point.toArray();
            close(q, stroke);
            double[][] rows = new double[n][n];
            for (int i = 0; i < n - 1; i++) {
                Arrays.fill(gradient, 0);
                joints.addForce(independent[i], 1, gradient);
                System.arraycopy(gradient, 0, rows[i], 0, n);
            }
            rows[n - 1][3 * mechanism.drive.body() + 2] = 1;
            RealVector value = new ArrayRealVector(closure);
            RealMatrix slope = new Array2DRowRealMatrix(rows, false);
            return new Pair<>(value, slope);
        };
    }

    private void close(double[] q, double stroke) {
        joints.at(q);
        for (int i = 0; i < n - 1; i++) {
            closure[i] = joints.gap[independent[i]];
        }
        closure[n - 1] = q[3 * mechanism.drive.body() + 2] - mechanism.drive.turn() * stroke;
    }
}
