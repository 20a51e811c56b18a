package jackwork.motion.rest;

import jackwork.geometry.Wanted;
import jackwork.motion.model.Closure;
import jackwork.motion.model.LuFactors;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.ModelLimits;
import jackwork.motion.model.Moves;
import jackwork.motion.model.Rows;

/**
 * Follows a mechanism's pose along the stroke: Newton's method on joint closure from a tangent
 * prediction, with the same factors giving the velocities; coordinates that joints and lever leave
 * free are then brought to rest by {@link Balance}. One per thread; where the lever decides
 * everything, nothing is allocated after construction.
 */
public final class PoseSolver {

    private final Mechanism mechanism;
    final Rows rows;
    private final Closure closure;
    private final Balance balance;
    private final LuFactors factors;
    private final int[] free;
    private final double[] pose;
    private final double[] velocity;
    private final double[] start;
    private final double[] startVelocity;
    private final double[] edge;
    private final double[] change;
    private final boolean[] held;
    private final boolean[] startHeld;
    private double stroke;
    private double residual;
    private int determinantSign;
    /** Logarithm of the determinant's size as drawn. */
    private double drawnDeterminant = Double.NaN;

    private Jump jump = Jump.NONE;
    private double jumpedAt;

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
        this.closure = new Closure(mechanism, rows);
        this.balance = new Balance(mechanism, rows);
        this.factors = new LuFactors(n);
        this.free = mechanism.structure.free();
        this.pose = mechanism.drawnPose();
        this.velocity = new double[n];
        this.start = new double[n];
        this.startVelocity = new double[n];
        this.edge = new double[n];
        this.change = new double[n];
        this.held = new boolean[rows.count];
        this.startHeld = new boolean[rows.count];
        reset();
    }

    /** Back to the pose as drawn, stroke 0; free parts come to rest from there. */
    public void reset() {
        System.arraycopy(mechanism.drawnPose(), 0, pose, 0, pose.length);
        rows.forget();
        balance.forget();
        stroke = 0;
        boolean onEdge = settle(0) && free.length > 0 && balance.standsOnEdge();
        jump = onEdge && tipsOver(0) ? Jump.FELL : Jump.NONE;
        note();
    }

    /**
     * Pushes what stands on its edge off it. Just past the edge the other rest may be as soft still, or not far enough
     * off to be told from it: then it is looked for a little farther on.
     *
     * @param farthest stroke to which it is looked for
     * @return whether it came to another rest, at the stroke where it now stands
     */
    private boolean tipsOver(double farthest) {
        System.arraycopy(pose, 0, edge, 0, pose.length);
        double from = stroke;
        double on = Math.copySign(RestLimits.CHANGE_LOCATED, farthest - from);
        do {
            System.arraycopy(edge, 0, pose, 0, pose.length);
            balance.begin();
            balance.tip(pose);
            if (settle(stroke) && !balance.standsOnEdge()) {
                return true;
            }
            on *= 2;
            stroke = Math.abs(farthest - from) < Math.abs(on) ? farthest : from + on;
        } while (Math.abs(on) < RestLimits.FARTHEST_EDGE && stroke != farthest);
        return false;
    }

    /** Whether joints and lever alone decide where every part is. */
    public boolean isDetermined() {
        return free.length == 0;
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
        double least = RestLimits.CHANGE_LOCATED / 10;
        while (stroke != wanted) {
            Wanted.goOn();
            double target = Math.abs(wanted - stroke) <= Math.abs(step) ? wanted : stroke + step;
            if (tryStep(target, wanted)) {
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

    private boolean tryStep(double target, double wanted) {
        double from = stroke;
        int signBefore = determinantSign;
        keep();
        for (int i = 0; i < pose.length; i++) {
            change[i] = velocity[i] * (target - from);
        }
        if (Moves.size(change) > mechanism.longestMove) {
            return false;
        }
        if (free.length > 0) {
            balance.begin();
            balance.slide(change);
        }
        for (int i = 0; i < pose.length; i++) {
            pose[i] += change[i];
        }
        boolean there = settle(target) && determinantSign == signBefore;
        boolean small = Math.abs(target - from) <= 2 * RestLimits.CHANGE_LOCATED;
        boolean onEdge = there && free.length > 0 && balance.standsOnEdge();
        if (onEdge && small) {
            jumpedAt = target;
            there = tipsOver(wanted);
        }
        boolean near = there && !onEdge && isNear(from, target);
        boolean same = free.length == 0 || sameHold();
        if (there && (near || (small && free.length > 0)) && (same || small)) {
            jumpedAt = onEdge ? jumpedAt : target;
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
        rows.keepWound();
        balance.forces.keep();
        System.arraycopy(held, 0, startHeld, 0, held.length);
    }

    private void giveBack(double from, int signBefore) {
        System.arraycopy(start, 0, pose, 0, pose.length);
        System.arraycopy(startVelocity, 0, velocity, 0, pose.length);
        balance.forces.giveBack();
        System.arraycopy(startHeld, 0, held, 0, held.length);
        rows.giveBackWound();
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
        for (int i = 0; i < pose.length; i++) {
            change[i] = startVelocity[i] * (target - from);
        }
        double way = Moves.size(change);
        for (int i = 0; i < pose.length; i++) {
            change[i] = pose[i] - start[i] - change[i];
        }
        double corrected = Moves.size(change);
        boolean kinked = free.length == 0 && corrected >= RestLimits.KINK * way && corrected >= RestLimits.LEAST_KINK;
        return corrected < RestLimits.MOST_CORRECTION && !kinked;
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
        if (free.length > 0 && !balance.settle(this)) {
            return false;
        }
        determinantSign = factors.determinantSign();
        if (free.length > 0) {
            follow(u - from);
            return true;
        }
        if (Double.isNaN(drawnDeterminant)) {
            drawnDeterminant = factors.logAbsDeterminant();
        } else if (factors.logAbsDeterminant() < drawnDeterminant + RestLimits.SINGULAR) {
            return false;
        }
        closure.velocity(factors, velocity);
        return true;
    }

    /** Free parts: the velocity is what the last step came to, but for a jump, or a step too small to tell. */
    private void follow(double step) {
        boolean tells = Math.abs(step) > 100 * RestLimits.CHANGE_LOCATED;
        for (int i = 0; i < pose.length && tells; i++) {
            velocity[i] = (pose[i] - start[i]) / step;
        }
        if (!tells) {
            closure.velocity(factors, velocity);
        }
    }

    /** Closes joints and lever at the present stroke with the free coordinates kept; leaves the factors fresh. */
    boolean close() {
        boolean closed = false;
        for (int k = 0; k < RestLimits.POSE_ITERATIONS; k++) {
            rows.at(pose);
            residual = closure.miss(pose, stroke);
            if (!Double.isFinite(residual)) {
                return false;
            }
            if (residual <= ModelLimits.CLOSED && closed) {
                return true;
            }
            closed = residual <= ModelLimits.CLOSED;
            closure.assemble(factors);
            if (!factors.factor()) {
                return false;
            }
            if (closed) {
                return true;
            }
            closure.residual(pose, stroke, change);
            factors.solve(change);
            if (free.length > 0) {
                balance.slide(change);
            }
            for (int i = 0; i < pose.length; i++) {
                pose[i] += change[i];
            }
        }
        return residual <= 10 * ModelLimits.CLOSED;
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
        double most = closure.miss(pose, stroke);
        for (int row : mechanism.structure.redundant()) {
            most = Math.max(most, Math.abs(rows.gap[row]));
        }
        return most;
    }

    Jump jump() {
        return jump;
    }

    /** Stroke at which the last jump happened; what tips over may come to rest a little farther on only. */
    double jumpedAt() {
        return jumpedAt;
    }

    /** Whether a row that only pushes bears at the present pose. */
    boolean isHeld(int row) {
        return held[row];
    }
}
