package jackwork.motion;

/**
 * Follows a mechanism's pose along the stroke: Newton's method on joint closure from a tangent
 * prediction, with the same factors giving the velocities. One per thread; allocates nothing after
 * construction.
 */
public final class PoseSolver {

    /** Closure that counts as closed, mm: two orders below what is promised (1e-9 mm). */
    static final double CLOSED = 1e-11;

    private static final int MOST_ITERATIONS = 12;
    /** A prediction corrected by more than this (mm, or rad × 100) has perhaps met another branch. */
    private static final double MOST_CORRECTION = 4.0;

    private final Mechanism mechanism;
    final Equations equations;
    private final LuFactors factors;
    private final double[] pose;
    private final double[] velocity;
    private final double[] start;
    private final double[] startVelocity;
    private final double[] change;
    private double stroke;
    private double residual;
    private int determinantSign;

    public PoseSolver(Mechanism mechanism) {
        this.mechanism = mechanism;
        int n = mechanism.coordinates();
        this.equations = new Equations(mechanism);
        this.factors = new LuFactors(n);
        this.pose = mechanism.drawnPose();
        this.velocity = new double[n];
        this.start = new double[n];
        this.startVelocity = new double[n];
        this.change = new double[n];
        reset();
    }

    /** Back to the pose as drawn, stroke 0. */
    public void reset() {
        System.arraycopy(mechanism.drawnPose(), 0, pose, 0, pose.length);
        settle(0);
    }

    /**
     * Moves to a stroke, in as many steps as that takes.
     *
     * @return false when it cannot get there: the pose then stands at the last stroke reached, and
     *     between that and the wanted one lies a dead point or an end of the mechanism's reach
     */
    public boolean moveTo(double wanted) {
        double step = wanted - stroke;
        double least = 1e-7;
        while (stroke != wanted) {
            double target = Math.abs(wanted - stroke) <= Math.abs(step) ? wanted : stroke + step;
            if (tryStep(target)) {
                continue;
            }
            step = (target - stroke) / 2;
            if (Math.abs(step) < least) {
                return false;
            }
        }
        return true;
    }

    private boolean tryStep(double target) {
        double from = stroke;
        int signBefore = determinantSign;
        System.arraycopy(pose, 0, start, 0, pose.length);
        System.arraycopy(velocity, 0, startVelocity, 0, pose.length);
        for (int i = 0; i < pose.length; i++) {
            pose[i] += velocity[i] * (target - from);
        }
        if (settle(target) && determinantSign == signBefore && corrected(from, target) < MOST_CORRECTION) {
            return true;
        }
        System.arraycopy(start, 0, pose, 0, pose.length);
        System.arraycopy(startVelocity, 0, velocity, 0, pose.length);
        equations.at(pose);
        stroke = from;
        determinantSign = signBefore;
        return false;
    }

    /** Greatest distance between prediction and result, mm (angles as the mm they make at 100 mm). */
    private double corrected(double from, double target) {
        double most = 0;
        for (int i = 0; i < pose.length; i++) {
            double predicted = start[i] + startVelocity[i] * (target - from);
            double scale = i % 3 == 2 ? 100 : 1;
            most = Math.max(most, scale * Math.abs(pose[i] - predicted));
        }
        return most;
    }

    /** Newton from the present pose at a stroke; then the velocities. */
    private boolean settle(double u) {
        boolean closed = false;
        for (int k = 0; k < MOST_ITERATIONS; k++) {
            equations.at(pose);
            residual = equations.close(pose, u);
            if (!Double.isFinite(residual)) {
                return false;
            }
            if (residual <= CLOSED && closed) {
                break;
            }
            closed = residual <= CLOSED;
            factors.clear();
            equations.addJacobian(pose, factors);
            if (!factors.factor()) {
                return false;
            }
            if (closed) {
                break;
            }
            for (int i = 0; i < pose.length; i++) {
                change[i] = -equations.closure[i];
            }
            factors.solve(change);
            for (int i = 0; i < pose.length; i++) {
                pose[i] += change[i];
            }
        }
        if (residual > 10 * CLOSED) {
            return false;
        }
        stroke = u;
        determinantSign = factors.determinantSign();
        java.util.Arrays.fill(velocity, 0);
        velocity[velocity.length - 1] = mechanism.drive.turn();
        factors.solve(velocity);
        return true;
    }

    public double stroke() {
        return stroke;
    }

    /** x, y of each body's centre (mm) and its angle (rad), [3 × bodies]; the solver's own array, do not keep. */
    public double[] pose() {
        return pose;
    }

    /** Change of the pose per unit of stroke, [3 × bodies]; the solver's own array. */
    public double[] velocity() {
        return velocity;
    }

    /** Largest distance by which a joint misses, mm. */
    public double closureError() {
        equations.at(pose);
        return equations.close(pose, stroke);
    }

    /** Sign of the determinant of the lever-augmented Jacobian: it changes at a dead point. */
    int determinantSign() {
        return determinantSign;
    }
}
