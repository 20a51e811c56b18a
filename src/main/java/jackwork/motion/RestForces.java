package jackwork.motion;

import java.util.Arrays;

/**
 * The real forces at rest of a mechanism with free parts: contact and friction forces as found, the
 * joints' and the finger's from the equilibrium of every body. One per thread.
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
    /** Forces of independent rows, then the finger's, then what is left along free coordinates, [coordinates]. */
    private final double[] joints;

    private final double[] lastJoints;

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
        this.joints = new double[n];
        this.lastJoints = new double[n];
    }

    void forget() {
        Arrays.fill(push, 0);
        Arrays.fill(rub, 0);
    }

    /** @return false where the finger cannot hold the mechanism at all */
    boolean solve() {
        loads.force(rows, force);
        addPushes(force);
        addFollowing(force);
        for (int a = 0; a < rows.axes; a++) {
            if (rub[a] != 0) {
                rows.addForce(rows.count + a, rub[a], force);
            }
        }
        bearing.clear();
        for (int i = 0; i < independent.length; i++) {
            rows.addColumn(independent[i], bearing, i, 1);
        }
        rows.addFingerColumn(bearing, independent.length);
        for (int j = 0; j < free.length; j++) {
            bearing.add(free[j], independent.length + 1 + j, 1);
        }
        if (!bearing.factor()) {
            return false;
        }
        System.arraycopy(joints, 0, lastJoints, 0, joints.length);
        for (int i = 0; i < joints.length; i++) {
            joints[i] = -force[i];
        }
        bearing.solve(joints);
        return true;
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
