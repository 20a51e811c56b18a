package jackwork.motion;

import jackwork.Compared;
import jackwork.motion.model.Mechanism;
import jackwork.motion.rest.PoseSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * One pose of the demo heron, its lever moved forth and back in steps of 1/199 of the stroke. The peer is
 * {@link LeastSquaresPose}, which says what it is and is not.
 */
@State(Scope.Thread)
@Compared(
        aim = 20,
        what = "one pose of the demo heron, 1/199 of the stroke from the last, velocities included",
        peer = "the same closure equations and Jacobian by Hipparchus' Levenberg-Marquardt from the last pose, to"
                + " 1e-9 mm; no velocities, no watch for another branch")
public class PoseBenchmark {

    private static final int STEPS = 199;
    /** Greatest difference between both solvers' poses, mm or rad × 100: both close to 1e-9 mm. */
    private static final double SAME = 1e-6;

    private PoseSolver ours;
    private LeastSquaresPose peer;
    private int step;
    private int sense;

    /** Goes forth and back once with both, and refuses to measure two that do not agree. */
    @Setup
    public void agree() {
        Mechanism mechanism = Heron.mechanism();
        ours = new PoseSolver(mechanism);
        peer = new LeastSquaresPose(mechanism);
        step = 0;
        sense = 1;
        for (int i = 0; i < 2 * STEPS; i++) {
            double stroke = next();
            double[] one = poseByOurs(stroke);
            double[] other = peer.moveTo(stroke);
            for (int k = 0; k < one.length; k++) {
                double scale = k % 3 == 2 ? 100 : 1;
                if (!(scale * Math.abs(one[k] - other[k]) <= SAME)) {
                    throw new IllegalStateException("at stroke " + stroke + " the poses differ in coordinate " + k);
                }
            }
        }
    }

    /** The next stroke of 0, 1/199, … 1, … 1/199, 0, … */
    private double next() {
        step += sense;
        if (step == 0 || step == STEPS) {
            sense = -sense;
        }
        return (double) step / STEPS;
    }

    private double[] poseByOurs(double stroke) {
        if (!ours.moveTo(stroke)) {
            throw new IllegalStateException("stroke " + stroke + " was not reached");
        }
        return ours.pose();
    }

    @Benchmark
    public double[] ours() {
        return poseByOurs(next());
    }

    @Benchmark
    public double[] peer() {
        return peer.moveTo(next());
    }
}
