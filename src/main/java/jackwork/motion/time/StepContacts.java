package jackwork.motion.time;

import jackwork.motion.model.Complementarity;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.ModelLimits;
import jackwork.motion.model.Rows;
import java.util.Arrays;

/**
 * Who takes part in the complementarity problem of a step: rows that push, joint rows that rub, axes of
 * friction, and the finger; their states from step to step, and how each one's motion answers to each one's
 * impulse with the joints kept. One per thread.
 */
final class StepContacts {

    private final Mechanism mechanism;
    private final Rows rows;
    private final JointProjector joints;
    /** The problem itself: members in the order added. */
    final Complementarity problem;
    /** Row, or rows.count + axis, of each member; beyond those the finger. */
    final int[] member;

    private final double[][] response;
    private final byte[] state;
    private final byte[] keptState;
    private final double[] arm;
    private final double[] impulse;
    private Finger acting = Finger.OFF;
    private int fingerMember;
    private double driveSense;

    StepContacts(Mechanism mechanism, Rows rows, JointProjector joints) {
        this.mechanism = mechanism;
        this.rows = rows;
        this.joints = joints;
        int capacity = rows.count + rows.axes + 1;
        this.problem = new Complementarity(capacity);
        this.member = new int[capacity];
        this.response = new double[capacity][mechanism.coordinates()];
        this.state = new byte[capacity];
        this.keptState = new byte[capacity];
        this.arm = new double[mechanism.coordinates()];
        this.impulse = new double[rows.count];
    }

    void forget() {
        Arrays.fill(state, (byte) 1);
    }

    void keep() {
        System.arraycopy(state, 0, keptState, 0, state.length);
    }

    void restore() {
        System.arraycopy(keptState, 0, state, 0, state.length);
    }

    void clear() {
        problem.size = 0;
        fingerMember = -1;
    }

    void addRow(int row, Complementarity.Kind kind) {
        add(row, kind, -1, 0, 0);
    }

    /** Adds an axis whose friction hangs on a member, when that takes part; or on a joint's reaction ({@code −1}). */
    void addAxis(int axis, int bearing) {
        add(rows.count + axis, Complementarity.Kind.LIMITED, bearing, rows.along[axis], rows.against[axis]);
    }

    /** Member that a row is, −1 for none. */
    int memberOf(int row) {
        for (int i = 0; i < problem.size; i++) {
            if (member[i] == row) {
                return i;
            }
        }
        return -1;
    }

    private void add(int what, Complementarity.Kind kind, int bearing, double high, double low) {
        int at = problem.size++;
        member[at] = what;
        problem.state[at] = state[what];
        problem.row(at, kind, bearing, high, low);
    }

    /** Adds the finger, last of all. */
    void addFinger(Finger finger, double h) {
        acting = finger;
        if (finger.kind() == Finger.Kind.OFF) {
            return;
        }
        fingerMember = problem.size;
        boolean drives = finger.kind() == Finger.Kind.DRIVES;
        add(
                rows.count + rows.axes,
                drives ? Complementarity.Kind.HOLD : Complementarity.Kind.LIMITED,
                -1,
                finger.force() * h,
                0);
        Mechanism.DriveData drive = mechanism.drive;
        Arrays.fill(arm, 0);
        arm[3 * drive.body()] = drive.fingerX();
        arm[3 * drive.body() + 1] = drive.fingerY();
        arm[3 * drive.body() + 2] = rows.fingerArm();
    }

    /** Works out the answers; the finger's first, it gives the drive's sense. */
    void respond() {
        int stride = problem.stride();
        for (int j = problem.size - 1; j >= 0; j--) {
            double[] v = response[j];
            Arrays.fill(v, 0);
            addImpulse(j, 1, v);
            joints.project(v, impulse);
            if (j == fingerMember) {
                // Signed so that the drive's own push moves it forward.
                driveSense = Math.copySign(ModelLimits.ARM, v[3 * mechanism.drive.body() + 2]);
            }
            for (int i = 0; i < problem.size; i++) {
                problem.matrix[i * stride + j] = rate(i, v);
            }
        }
    }

    /** Adds what an impulse of a member does to the velocity, joints not kept. */
    void addImpulse(int i, double size, double[] v) {
        if (i != fingerMember) {
            rows.addImpulse(member[i], size, v);
            return;
        }
        for (int c = 0; c < v.length; c++) {
            v[c] += size * rows.inverseMass[c] * arm[c];
        }
    }

    /** Adds what the members' present impulses do to the velocity, joints kept. */
    void addAnswers(double[] v) {
        for (int i = 0; i < problem.size; i++) {
            double p = problem.force[i];
            for (int c = 0; c < v.length && p != 0; c++) {
                v[c] += p * response[i][c];
            }
        }
    }

    /** A member's rate under a velocity. */
    double rate(int i, double[] v) {
        if (i != fingerMember) {
            return rows.rate(member[i], v);
        }
        return acting.kind() == Finger.Kind.DRIVES ? driveSense * v[3 * mechanism.drive.body() + 2] : pressSpeed(v);
    }

    /** Speed of the press point along the finger, mm/s. */
    double pressSpeed(double[] v) {
        double sum = 0;
        for (int c = 0; c < v.length; c++) {
            sum += arm[c] * v[c];
        }
        return sum;
    }

    /** What the finger's member is to reach. */
    double fingerTarget() {
        return acting.kind() == Finger.Kind.DRIVES
                ? driveSense * mechanism.drive.turn() * acting.speed()
                : acting.speed();
    }

    boolean isFinger(int i) {
        return i == fingerMember;
    }

    /** Impulse of the finger in the last answer. */
    double fingerImpulse() {
        return fingerMember < 0 ? 0 : problem.force[fingerMember];
    }

    /** Axis that a member is, −1 for a row or the finger. */
    int axis(int i) {
        return i == fingerMember ? -1 : Math.max(-1, member[i] - rows.count);
    }

    /** Remembers the states of the last answer. */
    void rememberStates() {
        for (int i = 0; i < problem.size; i++) {
            state[member[i]] = problem.state[i];
        }
    }
}
