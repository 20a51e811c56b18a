package jackwork.motion.rest;

import jackwork.motion.model.Loads;
import jackwork.motion.model.LuFactors;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Rows;
import java.util.Arrays;

/**
 * The real forces at rest of a mechanism with free parts: contact forces as found, the joints' and the finger's
 * from the equilibrium of every body. Friction of joints that slide belongs to that equilibrium, in proportion to
 * the joint's own force: one nonsymmetric system, solved by Newton as {@link ForceSolver} does. One per thread.
 */
final class RestForces {

    private final Mechanism mechanism;
    private final Rows rows;
    private final Loads loads;
    private final int[] independent;
    private final int[] free;
    /** Place of each equality row's force, −1 for one that repeats others, [rows]. */
    private final int[] column;

    private final LuFactors bearing;
    private final double[] force;
    /** Forces of push rows [rows] and along axes of friction [axes], µN. */
    final double[] push;

    final double[] rub;
    /** Friction of axes that slide on a joint, as a share of what bears on them, signed; 0 for all others. */
    final double[] sliding;

    private final double[] keptPush;
    private final double[] keptRub;
    private final double[] keptSliding;
    /** Forces of independent rows, then the finger's, then what is left along free coordinates, [coordinates]. */
    private final double[] joints;

    private final double[] lastJoints;
    private final double[] next;
    private boolean locked;

    RestForces(Mechanism mechanism, Rows rows) {
        this.mechanism = mechanism;
        this.rows = rows;
        this.loads = new Loads(mechanism);
        this.independent = mechanism.structure.independent();
        this.free = mechanism.structure.free();
        this.column = new int[rows.count];
        Arrays.fill(column, -1);
        for (int i = 0; i < independent.length; i++) {
            column[independent[i]] = i;
        }
        int n = mechanism.coordinates();
        this.bearing = new LuFactors(n);
        this.force = new double[n];
        this.push = new double[rows.count];
        this.rub = new double[rows.axes];
        this.sliding = new double[rows.axes];
        this.keptPush = new double[rows.count];
        this.keptRub = new double[rows.axes];
        this.keptSliding = new double[rows.axes];
        this.joints = new double[n];
        this.lastJoints = new double[n];
        this.next = new double[n];
    }

    void forget() {
        Arrays.fill(push, 0);
        Arrays.fill(rub, 0);
        Arrays.fill(sliding, 0);
    }

    void keep() {
        System.arraycopy(push, 0, keptPush, 0, push.length);
        System.arraycopy(rub, 0, keptRub, 0, rub.length);
        System.arraycopy(sliding, 0, keptSliding, 0, rub.length);
    }

    void giveBack() {
        System.arraycopy(keptPush, 0, push, 0, push.length);
        System.arraycopy(keptRub, 0, rub, 0, rub.length);
        System.arraycopy(keptSliding, 0, sliding, 0, rub.length);
    }

    /** @return false where the finger cannot hold the mechanism at all, or friction locks it ({@link #isLocked}) */
    boolean solve() {
        locked = false;
        loads.force(rows, force);
        addPushes(force);
        for (int a = 0; a < rows.axes; a++) {
            if (rub[a] != 0 && sliding[a] == 0) {
                rows.addForce(rows.count + a, rub[a], force);
            }
        }
        System.arraycopy(joints, 0, lastJoints, 0, joints.length);
        if (!balance(false)) {
            return false;
        }
        int sign = bearing.determinantSign();
        boolean rubs = false;
        for (int a = 0; a < rows.axes; a++) {
            rubs |= sliding[a] != 0 || rows.kind[a] == Rows.AxisKind.FOLLOWS;
        }
        if (rubs) {
            boolean solved = newton();
            locked = !solved || bearing.determinantSign() != sign;
        }
        for (int a = 0; a < rows.axes && !locked; a++) {
            if (sliding[a] != 0) {
                rub[a] = sliding[a] * bearingOn(a) + Math.signum(sliding[a]) * rows.own[a];
            }
        }
        return !locked;
    }

    /** From the forces without friction; f is of degree one in the forces, so each step is one solve. */
    private boolean newton() {
        for (int k = 0; k < RestLimits.FORCE_ITERATIONS; k++) {
            System.arraycopy(joints, 0, next, 0, next.length);
            if (!balance(true)) {
                return false;
            }
            double moved = 0;
            double size = 0;
            for (int i = 0; i < next.length; i++) {
                moved = Math.max(moved, Math.abs(joints[i] - next[i]));
                size = Math.max(size, Math.abs(joints[i]));
            }
            if (!Double.isFinite(size)) {
                return false;
            }
            if (moved <= (k > 12 ? 1e-12 : 1e-14) * size) {
                return true;
            }
        }
        return false;
    }

    /** One solve, with friction in the directions of the present forces or without. */
    private boolean balance(boolean rubbing) {
        bearing.clear();
        for (int i = 0; i < independent.length; i++) {
            rows.addColumn(independent[i], bearing, i, 1);
        }
        rows.addFingerColumn(bearing, independent.length);
        for (int j = 0; j < free.length; j++) {
            bearing.add(free[j], independent.length + 1 + j, 1);
        }
        for (int a = 0; a < rows.axes && rubbing; a++) {
            addAxis(a);
        }
        if (!bearing.factor()) {
            return false;
        }
        for (int i = 0; i < joints.length; i++) {
            joints[i] = -force[i];
        }
        for (int a = 0; a < rows.axes && rubbing; a++) {
            if (sliding[a] != 0 && rows.own[a] > 0) {
                rows.addForce(rows.count + a, -Math.signum(sliding[a]) * rows.own[a], joints);
            }
        }
        bearing.solve(joints);
        return true;
    }

    private void addAxis(int a) {
        int first = column[rows.firstNormal[a]];
        if (first < 0) {
            return;
        }
        int axis = rows.count + a;
        double fx = next[first];
        if (rows.kind[a] == Rows.AxisKind.FOLLOWS) {
            rows.addColumn(axis, bearing, first, rows.along[a] * Math.signum(fx));
        } else if (sliding[a] != 0) {
            int second = rows.secondNormal[a] < 0 ? -1 : column[rows.secondNormal[a]];
            double fy = second < 0 ? 0 : next[second];
            double size = Math.hypot(fx, fy);
            if (size > 0) {
                rows.addColumn(axis, bearing, first, sliding[a] * fx / size);
            }
            if (size > 0 && second >= 0) {
                rows.addColumn(axis, bearing, second, sliding[a] * fy / size);
            }
        }
    }

    /** Whether friction alone held it in the last solve, whatever the finger's force. */
    boolean isLocked() {
        return locked;
    }

    /** Loads and what follows other rows, without joints, contacts and friction. */
    double[] driving() {
        loads.force(rows, force);
        addFollowing(force);
        return force;
    }

    /** All but friction, with every force at its present size, at the pose that the rows hold. */
    void turned(double[] into) {
        loads.force(rows, into);
        for (int i = 0; i < independent.length; i++) {
            rows.addForce(independent[i], joints[i], into);
        }
        addPushes(into);
    }

    private void addPushes(double[] into) {
        for (int r = 0; r < rows.count; r++) {
            if (push[r] != 0 && Double.isFinite(rows.gap[r])) {
                rows.addForce(r, push[r], into);
            }
        }
    }

    private void addFollowing(double[] into) {
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] == Rows.AxisKind.FOLLOWS) {
                rows.addForce(rows.count + a, rows.along[a] * Math.abs(of(rows.firstNormal[a])), into);
            }
        }
    }

    /**
     * Whether the joints' forces came out as the last time: friction hangs on them.
     *
     * @param share of the greatest force that a change may be
     */
    boolean areAsBefore(double share) {
        double change = 0;
        double largest = 0;
        for (int i = 0; i < joints.length; i++) {
            change = Math.max(change, Math.abs(joints[i] - lastJoints[i]));
            largest = Math.max(largest, Math.abs(joints[i]));
        }
        return change <= share * largest;
    }

    /** Force of any row, µN; 0 for an equality row that repeats others. */
    double of(int row) {
        if (mechanism.pushesOnly[row]) {
            return push[row];
        }
        return column[row] < 0 ? 0 : joints[column[row]];
    }

    /** Size of the force that bears on an axis of friction, where it is not a contact's, µN. */
    double bearingOn(int axis) {
        double size = Math.abs(of(rows.firstNormal[axis]));
        return rows.secondNormal[axis] < 0 ? size : Math.hypot(size, of(rows.secondNormal[axis]));
    }

    double finger() {
        return joints[independent.length];
    }
}
