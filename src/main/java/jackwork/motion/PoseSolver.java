package jackwork.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Follows a mechanism's pose along the stroke: Newton's method on joint closure from a tangent
 * prediction, with the same factors giving the velocities; coordinates that joints and lever leave
 * free are then brought to rest by {@link Balance}. One per thread; where the lever decides
 * everything, nothing is allocated after construction.
 */
public final class PoseSolver {

    /** Closure that counts as closed, mm: two orders below what is promised (1e-9 mm). */
    static final double CLOSED = 1e-11;

    private static final int MOST_ITERATIONS = 12;
    /** A prediction corrected by more than this (mm, or rad × 100) has perhaps met another branch. */
    private static final double MOST_CORRECTION = 4.0;
    /** A determinant so far below the drawn one (natural logarithm) is none: links stand in line. */
    private static final double SINGULAR = Math.log(1e-5);
    /** Correction as a share of the way predicted; more, and the path has a kink there. */
    private static final double MOST_KINK = 0.2;
    /** Corrections smaller than this (mm, or rad × 100) are no kink. */
    private static final double LEAST_KINK = 1e-7;
    /** Stroke within which a change of what holds, or a jump, is placed. */
    private static final double LOCATED = 1e-6;

    private final Mechanism mechanism;
    final Rows rows;
    private final Balance balance;
    private final LuFactors factors;
    private final int[] independent;
    private final int[] free;
    private final double[] pose;
    private final double[] velocity;
    private final double[] start;
    private final double[] startVelocity;
    private final double[] change;
    private final boolean[] held;
    private final boolean[] startHeld;
    private final double[] startPush;
    private final double[] startRub;
    private double frictionScale = 1;
    private double stroke;
    private double residual;
    private int determinantSign;
    /** Logarithm of the determinant's size as drawn. */
    private double drawnDeterminant = Double.NaN;

    private Jump jump = Jump.NONE;

    /** What the last step met. */
    enum Jump {
        NONE,
        /** Free parts went over to another resting place. */
        FELL,
        /** Strings, stops or touches took hold or let go. */
        CHANGED
    }

    public PoseSolver(Mechanism mechanism) {
        this.mechanism = mechanism;
        int n = mechanism.coordinates();
        this.rows = new Rows(mechanism);
        this.balance = new Balance(mechanism, rows);
        this.factors = new LuFactors(n);
        this.independent = mechanism.structure.independent();
        this.free = mechanism.structure.free();
        this.pose = mechanism.drawnPose();
        this.velocity = new double[n];
        this.start = new double[n];
        this.startVelocity = new double[n];
        this.change = new double[n];
        this.held = new boolean[rows.count];
        this.startHeld = new boolean[rows.count];
        this.startPush = new double[rows.count];
        this.startRub = new double[rows.axes];
        reset();
    }

    /** Back to the pose as drawn, stroke 0; free parts come to rest from there. */
    public void reset() {
        System.arraycopy(mechanism.drawnPose(), 0, pose, 0, pose.length);
        rows.forget();
        balance.forget();
        stroke = 0;
        settle(0);
        note();
    }

    /** Whether joints and lever alone decide where every part is. */
    public boolean isDetermined() {
        return free.length == 0;
    }

    /** 0 for no friction on free parts, 1 for the mechanism's own. */
    void setFrictionScale(double scale) {
        frictionScale = scale;
    }

    /**
     * Moves to a stroke, in as many steps as that takes.
     *
     * @return false when it cannot get there: the pose then stands at the last stroke reached, and
     *     between that and the wanted one lies a dead point, a jam or an end of the mechanism's reach
     */
    public boolean moveTo(double wanted) {
        return moveTo(wanted, false);
    }

    /** @param toChange ends as well at the first change of what holds, or jump: {@link #jump} tells */
    boolean moveTo(double wanted, boolean toChange) {
        jump = Jump.NONE;
        double step = wanted - stroke;
        double least = LOCATED / 10;
        while (stroke != wanted) {
            double target = Math.abs(wanted - stroke) <= Math.abs(step) ? wanted : stroke + step;
            if (tryStep(target)) {
                if (toChange && jump != Jump.NONE) {
                    return true;
                }
                step *= 2;
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
        keep();
        for (int i = 0; i < pose.length; i++) {
            change[i] = velocity[i] * (target - from);
        }
        if (free.length > 0) {
            balance.begin();
            balance.slide(change);
        }
        for (int i = 0; i < pose.length; i++) {
            pose[i] += change[i];
        }
        boolean there = settle(target) && determinantSign == signBefore;
        boolean small = Math.abs(target - from) <= 2 * LOCATED;
        boolean near = there && isNear(from, target);
        boolean same = free.length == 0 || sameHold();
        if (there && (near || (small && free.length > 0)) && (same || small)) {
            jump = !near ? Jump.FELL : !same ? Jump.CHANGED : Jump.NONE;
            note();
            return true;
        }
        giveBack(from, signBefore);
        return false;
    }

    private void keep() {
        System.arraycopy(pose, 0, start, 0, pose.length);
        System.arraycopy(velocity, 0, startVelocity, 0, pose.length);
        System.arraycopy(balance.push, 0, startPush, 0, startPush.length);
        System.arraycopy(balance.rub, 0, startRub, 0, startRub.length);
        System.arraycopy(held, 0, startHeld, 0, held.length);
    }

    private void giveBack(double from, int signBefore) {
        System.arraycopy(start, 0, pose, 0, pose.length);
        System.arraycopy(startVelocity, 0, velocity, 0, pose.length);
        System.arraycopy(startPush, 0, balance.push, 0, startPush.length);
        System.arraycopy(startRub, 0, balance.rub, 0, startRub.length);
        System.arraycopy(startHeld, 0, held, 0, held.length);
        rows.at(pose);
        stroke = from;
        determinantSign = signBefore;
    }

    private boolean sameHold() {
        for (int r = 0; r < held.length; r++) {
            if (held[r] != balance.bears(r)) {
                return false;
            }
        }
        return true;
    }

    private void note() {
        for (int r = 0; r < held.length; r++) {
            held[r] = balance.bears(r);
        }
    }

    /**
     * Whether the result is the prediction's own branch. Along one branch the correction shrinks with the square
     * of the step; where another branch is met it stays a fixed share of the way, however short the step.
     */
    private boolean isNear(double from, double target) {
        double corrected = corrected(from, target);
        if (corrected >= MOST_CORRECTION) {
            return false;
        }
        double way = 0;
        for (int i = 0; i < pose.length; i++) {
            way = Math.max(way, Math.abs(startVelocity[i] * (target - from)) * (i % 3 == 2 ? 100 : 1));
        }
        return free.length > 0 || corrected < MOST_KINK * way || corrected < LEAST_KINK;
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
        double from = stroke;
        stroke = u;
        if (!close()) {
            return false;
        }
        // Taken here already: free parts that find no rest at first may find it further on.
        determinantSign = factors.determinantSign();
        if (free.length > 0 && !balance.settle(this, frictionScale)) {
            return false;
        }
        determinantSign = factors.determinantSign();
        if (free.length > 0) {
            return follow(u - from);
        }
        if (Double.isNaN(drawnDeterminant)) {
            drawnDeterminant = factors.logAbsDeterminant();
        } else if (factors.logAbsDeterminant() < drawnDeterminant + SINGULAR) {
            return false;
        }
        Arrays.fill(velocity, 0);
        velocity[independent.length] = mechanism.drive.turn();
        factors.solve(velocity);
        return true;
    }

    /** Free parts: the velocity is what the last step came to, but for a jump, or a step too small to tell. */
    private boolean follow(double step) {
        boolean tells = Math.abs(step) > 100 * LOCATED;
        Arrays.fill(velocity, 0);
        if (tells) {
            for (int i = 0; i < pose.length; i++) {
                velocity[i] = (pose[i] - start[i]) / step;
            }
        } else {
            velocity[independent.length] = mechanism.drive.turn();
            factors.solve(velocity);
        }
        return true;
    }

    /** Closes joints and lever at the present stroke with the free coordinates kept; leaves the factors fresh. */
    boolean close() {
        boolean closed = false;
        for (int k = 0; k < MOST_ITERATIONS; k++) {
            rows.at(pose);
            residual = miss();
            if (!Double.isFinite(residual)) {
                return false;
            }
            if (residual <= CLOSED && closed) {
                return true;
            }
            closed = residual <= CLOSED;
            assemble();
            if (!factors.factor()) {
                return false;
            }
            if (closed) {
                return true;
            }
            Arrays.fill(change, 0);
            for (int i = 0; i < independent.length; i++) {
                change[i] = -rows.gap[independent[i]];
            }
            change[independent.length] = -leverMiss();
            factors.solve(change);
            if (free.length > 0) {
                balance.slide(change);
            }
            for (int i = 0; i < pose.length; i++) {
                pose[i] += change[i];
            }
        }
        return residual <= 10 * CLOSED;
    }

    private double leverMiss() {
        return pose[3 * mechanism.drive.body() + 2] - mechanism.drive.turn() * stroke;
    }

    /** Largest miss of an independent row or the lever, mm (a rad counts as the mm it moves a point 100 mm away). */
    private double miss() {
        double most = 100 * Math.abs(leverMiss());
        for (int row : independent) {
            most = Math.max(most, Math.abs(rows.gap[row]));
        }
        return most;
    }

    private void assemble() {
        factors.clear();
        for (int i = 0; i < independent.length; i++) {
            rows.addRow(independent[i], factors, i);
        }
        factors.add(independent.length, 3 * mechanism.drive.body() + 2, 1);
        for (int j = 0; j < free.length; j++) {
            factors.add(independent.length + 1 + j, free[j], 1);
        }
    }

    /**
     * Poses that lead on at a stroke just past one where links stand in line (a change point), from the
     * present pose just before it: straight on, and to either side along what is loose there.
     *
     * @return none, one or two; the solver stays where it is
     */
    List<double[]> branchesAt(double target) {
        double from = stroke;
        int sign = determinantSign;
        keep();
        double[] loose = new double[pose.length];
        for (int i = 0; i < loose.length; i++) {
            loose[i] = 1 + 0.1 * i;
        }
        // The factors are those of a nearly singular matrix: what comes out is mostly the loose motion.
        factors.solve(loose);
        double size = 0;
        for (int i = 0; i < loose.length; i++) {
            size = Math.max(size, Math.abs(loose[i]) * (i % 3 == 2 ? 100 : 1));
        }
        List<double[]> found = new ArrayList<>();
        double way = Math.max(0.5, 0.5 * MOST_CORRECTION);
        for (double aside : new double[] {0, way, -way, 4 * way, -4 * way}) {
            for (int i = 0; i < pose.length; i++) {
                pose[i] = start[i] + startVelocity[i] * (target - from) + aside * loose[i] / size;
            }
            stroke = target;
            if (close() && found.stream().noneMatch(known -> same(known, pose)) && nearStart(target - from)) {
                found.add(pose.clone());
            }
        }
        giveBack(from, sign);
        close();
        return found;
    }

    private static boolean same(double[] a, double[] b) {
        for (int i = 0; i < a.length; i++) {
            if (Math.abs(a[i] - b[i]) * (i % 3 == 2 ? 100 : 1) > 1e-4) {
                return false;
            }
        }
        return true;
    }

    private boolean nearStart(double step) {
        double most = 0;
        for (int i = 0; i < pose.length; i++) {
            most = Math.max(most, Math.abs(pose[i] - start[i]) * (i % 3 == 2 ? 100 : 1));
        }
        return most < 100 * MOST_CORRECTION * Math.max(Math.abs(step), 0.02);
    }

    LuFactors factors() {
        return factors;
    }

    Balance balance() {
        return balance;
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

    /** Largest distance by which a joint misses, joints that repeat others included, mm. */
    public double closureError() {
        rows.at(pose);
        double most = miss();
        for (int row : mechanism.structure.redundant()) {
            most = Math.max(most, Math.abs(rows.gap[row]));
        }
        return most;
    }

    /** Sign of the determinant of the lever-augmented Jacobian: it changes at a dead point. */
    int determinantSign() {
        return determinantSign;
    }

    Jump jump() {
        return jump;
    }

    /** Whether a row that only pushes bears at the present pose. */
    boolean isHeld(int row) {
        return held[row];
    }
}
