package jackwork.motion;

import java.util.Arrays;

/**
 * The impulses of one step (or one blow) at the pose that the rows hold: joints directly, the rest as a
 * complementarity problem on the motion that the joints leave.
 */
final class StepForces {

    /** An axis that slides slower than this sticks unless its bound is passed, mm/s (rad/s × 100). */
    private static final double STILL = 1e-6;

    private static final int RESOLVES = 40;

    private final Mechanism mechanism;
    private final Rows rows;
    private final JointProjector joints;
    private final Complementarity contacts;
    private final int n;
    private final boolean[] rubbed;
    private final double[][] response;
    private final int[] member;
    private final byte[] state;
    private final byte[] keptState;
    private final double[] lambda;
    private final double[] joint;
    private final double[] before;
    private final double[] start;
    private final double[] arm;
    private final double[] pushed;
    private final double[] rowImpulse;
    private final double[] axisImpulse;
    private final boolean[] bearing;
    private final double[] bound;
    /** Size of the force that each following axis follows, [axes]. */
    private final double[] followed;

    private final double[] offset;
    private double step;
    private double fingerImpulse;
    private double fingerWork;
    private double keptWork;
    private double leastGap;
    private int fingerMember;
    private Finger acting = Finger.OFF;
    /** 100 mm, signed so that the drive's own push moves it forward. */
    private double driveSense;

    StepForces(Mechanism mechanism, Rows rows) {
        this.mechanism = mechanism;
        this.rows = rows;
        this.n = mechanism.coordinates();
        this.joints = new JointProjector(rows);
        int capacity = rows.count + rows.axes + 1;
        this.contacts = new Complementarity(capacity);
        this.response = new double[capacity][n];
        this.member = new int[capacity];
        this.state = new byte[capacity];
        this.keptState = new byte[capacity];
        this.lambda = new double[rows.count];
        this.joint = new double[rows.count];
        this.before = new double[n];
        this.start = new double[n];
        this.arm = new double[n];
        this.pushed = new double[n];
        this.rowImpulse = new double[rows.count];
        this.axisImpulse = new double[rows.axes];
        this.bearing = new boolean[rows.count];
        this.bound = new double[rows.axes];
        this.followed = new double[rows.axes];
        this.offset = new double[capacity];
        this.rubbed = rubbed(mechanism, rows);
        forget();
    }

    /** Scalar equality rows that bear on friction: those are solved with it, not before it. */
    private static boolean[] rubbed(Mechanism mechanism, Rows rows) {
        rows.at(mechanism.drawnPose());
        boolean[] rubbed = new boolean[rows.count];
        for (int a = 0; a < rows.axes; a++) {
            int row = rows.firstNormal[a];
            boolean rubs = rows.kind[a] == Rows.AxisKind.FRICTION && rows.secondNormal[a] < 0;
            rubbed[row] |= rubs && !mechanism.pushesOnly[row];
        }
        return rubbed;
    }

    void forget() {
        Arrays.fill(state, (byte) 1);
        Arrays.fill(bearing, false);
        Arrays.fill(rowImpulse, 0);
        Arrays.fill(axisImpulse, 0);
        fingerWork = 0;
        step = 1;
    }

    void keep() {
        System.arraycopy(state, 0, keptState, 0, state.length);
        keptWork = fingerWork;
    }

    void restore() {
        System.arraycopy(keptState, 0, state, 0, state.length);
        fingerWork = keptWork;
    }

    /**
     * One step: changes v to v⁺.
     *
     * @param load forces at the middle of the step, µN
     * @return miss of the complementarity as a share of its scale
     */
    double solve(double h, double[] load, double[] v, Finger finger) {
        step = h;
        System.arraycopy(v, 0, start, 0, n);
        for (int i = 0; i < n; i++) {
            v[i] += h * mechanism.inverseMass[i] * load[i];
        }
        gatherJoints();
        // J (v⁺ + v⁻) = 0
        for (int i = 0; i < joints.size(); i++) {
            lambda[i] = -rows.rate(joints.row(i), v) - rows.rate(joints.row(i), start);
        }
        joints.solve(lambda);
        joints.apply(lambda, v);
        System.arraycopy(v, 0, before, 0, n);
        int size = gatherPushes(h);
        size = gatherAxes(size, false);
        contacts.size = size;
        addFinger(finger, h);
        respond(finger);
        offsets(finger, h);
        double miss = resolve();
        finish(v);
        fingerWork += fingerMember < 0 ? 0 : fingerImpulse * 0.5 * (dot(arm, v) + dot(arm, start));
        return miss;
    }

    /**
     * One blow: changes v to v⁺ with {@code C v⁺ ≥ −e C v⁻} on all closed rows.
     *
     * @param restitution share of the approach that comes back, times each joint's own
     */
    double strike(double[] v, double restitution, Finger finger) {
        System.arraycopy(v, 0, start, 0, n);
        gatherJoints();
        joints.project(v, lambda);
        System.arraycopy(v, 0, before, 0, n);
        int size = 0;
        for (int r = 0; r < rows.count; r++) {
            if (mechanism.pushesOnly[r] && rows.gap[r] <= TimeStepper.CLOSED) {
                size = addRow(size, r, Complementarity.Kind.PUSH);
            } else if (rubbed[r]) {
                size = addRow(size, r, Complementarity.Kind.HOLD);
            }
        }
        size = gatherAxes(size, true);
        contacts.size = size;
        // A finger is soft and gives way in a blow; a drive does not.
        addFinger(finger.kind() == Finger.Kind.DRIVES ? finger : Finger.OFF, 1);
        respond(finger);
        for (int i = 0; i < contacts.size; i++) {
            if (i == fingerMember) {
                contacts.offset[i] = rate(i, before, finger) - driveSense * mechanism.drive.turn() * finger.speed();
                continue;
            }
            double rate = rows.rate(member[i], before);
            boolean push = contacts.kind[i] == Complementarity.Kind.PUSH;
            double back = push ? restitution * mechanism.joints[mechanism.jointOfRow[member[i]]].restitution() : 0;
            contacts.offset[i] = rate + back * Math.min(0, rows.rate(member[i], start));
        }
        double miss = resolve();
        finish(v);
        return miss;
    }

    private void gatherJoints() {
        joints.clear();
        for (int r = 0; r < rows.count; r++) {
            if (!mechanism.pushesOnly[r] && !rubbed[r]) {
                joints.add(r);
            }
        }
        joints.factor();
    }

    private int gatherPushes(double h) {
        int size = 0;
        leastGap = Double.POSITIVE_INFINITY;
        for (int r = 0; r < rows.count; r++) {
            if (rubbed[r]) {
                size = addRow(size, r, Complementarity.Kind.HOLD);
            } else if (mechanism.pushesOnly[r] && rows.gap[r] < Double.POSITIVE_INFINITY) {
                double gapAtStart = rows.gap[r] - 0.5 * h * rows.rate(r, start);
                if (gapAtStart <= TimeStepper.CLOSED) {
                    size = addRow(size, r, Complementarity.Kind.PUSH);
                } else {
                    leastGap = Math.min(leastGap, gapAtStart);
                }
            }
        }
        return size;
    }

    private int addRow(int size, int row, Complementarity.Kind kind) {
        member[size] = row;
        contacts.state[size] = state[row];
        contacts.row(size, kind, -1, 0, 0);
        return size + 1;
    }

    private int gatherAxes(int pushes, boolean blow) {
        int size = pushes;
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] != Rows.AxisKind.FRICTION || rows.along[a] == 0) {
                continue;
            }
            int normal = rows.firstNormal[a];
            if (mechanism.pushesOnly[normal] || rubbed[normal]) {
                for (int i = 0; i < pushes; i++) {
                    if (member[i] == normal) {
                        size = addAxis(size, a, i);
                    }
                }
            } else {
                bound[a] = blow ? 0 : bound[a];
                size = addAxis(size, a, -1);
            }
        }
        return size;
    }

    private int addAxis(int size, int a, int bearingMember) {
        member[size] = rows.count + a;
        contacts.state[size] = state[rows.count + a];
        contacts.row(size, Complementarity.Kind.LIMITED, bearingMember, rows.along[a], rows.against[a]);
        return size + 1;
    }

    private void addFinger(Finger finger, double h) {
        fingerMember = -1;
        if (finger.kind() == Finger.Kind.OFF) {
            return;
        }
        fingerMember = contacts.size++;
        int last = rows.count + rows.axes;
        member[fingerMember] = last;
        contacts.state[fingerMember] = state[last];
        boolean drives = finger.kind() == Finger.Kind.DRIVES;
        contacts.row(
                fingerMember,
                drives ? Complementarity.Kind.HOLD : Complementarity.Kind.LIMITED,
                -1,
                finger.force() * h,
                0);
        Mechanism.DriveData drive = mechanism.drive;
        Arrays.fill(arm, 0);
        arm[3 * drive.body()] = drive.fingerX();
        arm[3 * drive.body() + 1] = drive.fingerY();
        arm[3 * drive.body() + 2] = ForceSolver.fingerArm(rows, drive);
    }

    /** How every member's motion answers to every member's impulse; the finger first, it gives the drive's sense. */
    private void respond(Finger finger) {
        acting = finger;
        int stride = contacts.stride();
        for (int j = contacts.size - 1; j >= 0; j--) {
            double[] v = response[j];
            Arrays.fill(v, 0);
            if (j == fingerMember) {
                for (int i = 0; i < n; i++) {
                    v[i] = mechanism.inverseMass[i] * arm[i];
                }
            } else {
                rows.addImpulse(member[j], 1, v);
            }
            joints.project(v, joint);
            if (j == fingerMember) {
                driveSense = Math.copySign(100, v[3 * mechanism.drive.body() + 2]);
            }
            for (int i = 0; i < contacts.size; i++) {
                contacts.matrix[i * stride + j] = rate(i, v, finger);
            }
        }
    }

    private double rate(int i, double[] v, Finger finger) {
        if (i != fingerMember) {
            return rows.rate(member[i], v);
        }
        return finger.kind() == Finger.Kind.DRIVES ? driveSense * v[3 * mechanism.drive.body() + 2] : dot(arm, v);
    }

    private void offsets(Finger finger, double h) {
        for (int i = 0; i < contacts.size; i++) {
            double end = rate(i, before, finger);
            double begin = rate(i, start, finger);
            if (i == fingerMember) {
                boolean drives = finger.kind() == Finger.Kind.DRIVES;
                contacts.offset[i] =
                        end - (drives ? driveSense * mechanism.drive.turn() * finger.speed() : finger.speed());
            } else if (contacts.kind[i] == Complementarity.Kind.PUSH) {
                double gapAtStart = rows.gap[member[i]] - 0.5 * h * begin;
                contacts.offset[i] = end + begin + 2 * Math.max(0, gapAtStart) / h;
            } else if (contacts.kind[i] == Complementarity.Kind.HOLD || Math.abs(begin) < STILL) {
                contacts.offset[i] = end + begin;
            } else {
                contacts.offset[i] = end;
            }
        }
    }

    /** Solves until the bounds that hang on joint reactions hold still. */
    private double resolve() {
        System.arraycopy(contacts.offset, 0, offset, 0, contacts.size);
        double scale = 1e-9;
        for (int i = 0; i < contacts.size; i++) {
            scale = Math.max(scale, Math.abs(contacts.offset[i]));
        }
        for (int k = 0; k < RESOLVES; k++) {
            setBounds();
            follow();
            contacts.solve();
            if (!boundsMoved()) {
                break;
            }
        }
        return contacts.size == 0 ? 0 : contacts.residual() / scale;
    }

    /** Adds what the forces that follow others do to the motion of the rest. */
    private void follow() {
        System.arraycopy(offset, 0, contacts.offset, 0, contacts.size);
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] != Rows.AxisKind.FOLLOWS) {
                continue;
            }
            Arrays.fill(pushed, 0);
            rows.addImpulse(rows.count + a, rows.along[a] * followed[a], pushed);
            joints.project(pushed, joint);
            for (int i = 0; i < contacts.size; i++) {
                contacts.offset[i] += rate(i, pushed, acting);
            }
        }
    }

    private void setBounds() {
        for (int i = 0; i < contacts.size; i++) {
            int a = member[i] - rows.count;
            if (a < 0 || i == fingerMember) {
                continue;
            }
            if (contacts.bearing[i] < 0) {
                contacts.high[i] = rows.along[a] * bound[a];
                contacts.low[i] = rows.against[a] * bound[a];
            } else if (rows.chained[a] >= 0) {
                double share = 1;
                double first = rowImpulse[rows.firstNormal[a]];
                for (int c = rows.chained[a]; c >= 0 && first > 0; c = rows.chained[c]) {
                    share += axisImpulse[c] / first;
                }
                contacts.high[i] = rows.along[a] * share;
                contacts.low[i] = rows.against[a] * share;
            }
        }
    }

    /** Takes the impulses in, works out the joints', and whether any bound on them changed by 1 % or more. */
    private boolean boundsMoved() {
        boolean moved = false;
        for (int i = 0; i < contacts.size; i++) {
            take(i, contacts.force[i]);
        }
        reactions();
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] == Rows.AxisKind.FOLLOWS) {
                double next = Math.abs(rowImpulse[rows.firstNormal[a]]);
                moved |= Math.abs(next - followed[a]) > 1e-3 * next;
                followed[a] = next;
            }
        }
        double largest = 0;
        for (int i = 0; i < contacts.size; i++) {
            largest = Math.max(largest, Math.abs(contacts.force[i]));
        }
        for (int i = 0; i < contacts.size; i++) {
            int a = member[i] - rows.count;
            if (a < 0 || i == fingerMember) {
                continue;
            }
            if (contacts.bearing[i] < 0) {
                double x = rowImpulse[rows.firstNormal[a]];
                double y = rows.secondNormal[a] < 0 ? 0 : rowImpulse[rows.secondNormal[a]];
                double next = Math.hypot(x, y);
                moved |= Math.abs(next - bound[a]) > 1e-3 * next + 1e-12 * largest;
                bound[a] = next;
            } else if (rows.chained[a] >= 0) {
                double was = contacts.high[i];
                setBounds();
                moved |= Math.abs(contacts.high[i] - was) > 1e-6 * Math.abs(was);
            }
        }
        return moved;
    }

    private void take(int i, double impulse) {
        if (i == fingerMember) {
            fingerImpulse = impulse;
        } else if (member[i] < rows.count) {
            rowImpulse[member[i]] = impulse;
        } else {
            axisImpulse[member[i] - rows.count] = impulse;
        }
    }

    /** Impulses of the joint rows: of the step without contacts, and of what contacts add. */
    private void reactions() {
        Arrays.fill(pushed, 0);
        for (int i = 0; i < contacts.size; i++) {
            double p = contacts.force[i];
            if (p == 0) {
                continue;
            }
            if (i == fingerMember) {
                for (int c = 0; c < n; c++) {
                    pushed[c] += p * mechanism.inverseMass[c] * arm[c];
                }
            } else {
                rows.addImpulse(member[i], p, pushed);
            }
        }
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] == Rows.AxisKind.FOLLOWS) {
                rows.addImpulse(rows.count + a, rows.along[a] * followed[a], pushed);
            }
        }
        for (int i = 0; i < joints.size(); i++) {
            joint[i] = -rows.rate(joints.row(i), pushed);
        }
        joints.solve(joint);
        for (int i = 0; i < joints.size(); i++) {
            rowImpulse[joints.row(i)] = lambda[i] + joint[i];
        }
    }

    private void finish(double[] v) {
        Arrays.fill(bearing, false);
        for (int i = 0; i < contacts.size; i++) {
            double p = contacts.force[i];
            state[member[i]] = contacts.state[i];
            take(i, p);
            if (contacts.kind[i] == Complementarity.Kind.PUSH) {
                bearing[member[i]] = p > 0;
            }
            for (int c = 0; c < n && p != 0; c++) {
                v[c] += p * response[i][c];
            }
        }
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] == Rows.AxisKind.FOLLOWS && followed[a] != 0) {
                Arrays.fill(pushed, 0);
                rows.addImpulse(rows.count + a, rows.along[a] * followed[a], pushed);
                joints.project(pushed, joint);
                for (int c = 0; c < n; c++) {
                    v[c] += pushed[c];
                }
            }
        }
        clearAbsent();
    }

    private void clearAbsent() {
        for (int r = 0; r < rows.count; r++) {
            if (mechanism.pushesOnly[r] && !bearing[r]) {
                rowImpulse[r] = 0;
            }
        }
        fingerImpulse = fingerMember < 0 ? 0 : fingerImpulse;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int c = 0; c < a.length; c++) {
            sum += a[c] * b[c];
        }
        return sum;
    }

    boolean bears(int row) {
        return bearing[row];
    }

    /** Force of a row over the last step, µN. */
    double rowForce(int row) {
        return rowImpulse[row] / step;
    }

    /** Force along an axis over the last step, µN. */
    double axisForce(int axis) {
        return axisImpulse[axis] / step;
    }

    double fingerForce() {
        return fingerImpulse / step;
    }

    double fingerWork() {
        return fingerWork;
    }

    /** Least gap of the rows that were open at the start of the step, mm. */
    double leastGapAtStart() {
        return leastGap;
    }

    boolean sharesLoads() {
        return joints.rank() < joints.size();
    }
}
