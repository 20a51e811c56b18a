package jackwork.motion.time;

import jackwork.motion.model.Complementarity;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Rows;
import java.util.Arrays;

/**
 * The impulses of one step (or one blow) at the pose that the rows hold: joints directly, the rest as a
 * complementarity problem on the motion that the joints leave ({@link StepContacts}). Bounds that hang on
 * joint reactions, and forces that follow others, are solved again until they change by less than 0.1 % (in a blow,
 * which no next step mends, by a billionth), or by less than a millionth of the largest impulse. Where they swing, they
 * are led half way each time; where that does not settle them either, {@link #isSettled} says so, and nothing of the
 * step may be used.
 */
final class StepForces {

    private final Mechanism mechanism;
    private final Rows rows;
    private final JointProjector joints;
    private final StepContacts contacts;
    private final Complementarity problem;
    private final int n;
    private final boolean[] rubbed;
    private final double[] lambda;
    private final double[] joint;
    private final double[] before;
    private final double[] start;
    private final double[] pushed;
    private final double[] rowImpulse;
    private final double[] axisImpulse;
    private final boolean[] bearing;
    /** What rows stand for at start, middle and end of the step. */
    final StepPlaces places;

    /** Size of the joint reaction that bears on each axis, [axes]. */
    private final double[] bound;
    /** How many times the friction of what slides holds an axis at the start of the step, [axes]. */
    private final double[] held;
    /** Size of the force that each following axis follows, [axes]. */
    private final double[] followed;

    private final StepOffsets offsets;
    private final double[] offset;
    private double step;
    /** How long drags of their own act, s: the step, or not at all in a blow. */
    private double lasts;

    private double fingerImpulse;
    private double fingerWork;
    private double keptWork;
    private double leastGap;
    /** Whether bounds and following forces are led half way. */
    private boolean led;
    /** Change of a bound that counts as settled, as a share. */
    private double unchanged = TimeLimits.UNCHANGED;
    /** Change that counts for nothing in what has not settled soon, µN·s. */
    private double nothing;

    private boolean settled;

    StepForces(Mechanism mechanism, Rows rows) {
        this.mechanism = mechanism;
        this.rows = rows;
        this.n = mechanism.coordinates();
        this.joints = new JointProjector(rows);
        this.contacts = new StepContacts(mechanism, rows, joints);
        this.problem = contacts.problem;
        this.lambda = new double[rows.count];
        this.joint = new double[rows.count];
        this.before = new double[n];
        this.start = new double[n];
        this.pushed = new double[n];
        this.rowImpulse = new double[rows.count];
        this.axisImpulse = new double[rows.axes];
        this.bearing = new boolean[rows.count];
        this.places = new StepPlaces(mechanism, rows, bearing);
        this.offsets = new StepOffsets(rows, contacts, places);
        this.bound = new double[rows.axes];
        this.held = new double[rows.axes];
        this.followed = new double[rows.axes];
        this.offset = new double[rows.count + rows.axes + 1];
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
            if (rubs && !mechanism.pushesOnly[row]) {
                rubbed[row] = true;
            }
        }
        return rubbed;
    }

    /** Everything of the last run, so that the next is the same whatever came before. */
    void forget() {
        contacts.forget();
        Arrays.fill(bearing, false);
        Arrays.fill(rowImpulse, 0);
        Arrays.fill(axisImpulse, 0);
        Arrays.fill(bound, 0);
        Arrays.fill(followed, 0);
        fingerWork = 0;
        fingerImpulse = 0;
        step = 1;
    }

    void keep() {
        contacts.keep();
        keptWork = fingerWork;
    }

    void restore() {
        contacts.restore();
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
            v[i] += h * rows.inverseMass[i] * load[i];
        }
        gatherJoints();
        // J (v⁺ + v⁻) = 0
        for (int i = 0; i < joints.size(); i++) {
            lambda[i] = -rows.rate(joints.row(i), v) - rows.rate(joints.row(i), start);
        }
        joints.solve(lambda);
        joints.apply(lambda, v);
        System.arraycopy(v, 0, before, 0, n);
        contacts.clear();
        gatherPushes(h);
        gatherAxes(false);
        contacts.addFinger(finger, h);
        contacts.respond();
        offsets.fill(h, start, before);
        double miss = resolve(TimeLimits.UNCHANGED);
        finish(v);
        addFingerWork(v);
        return miss;
    }

    /**
     * One blow: changes v to v⁺ with {@code C v⁺ ≥ −e C v⁻} on all closed rows.
     *
     * @param restitution share of the approach that comes back, times each joint's own
     * @return miss of the complementarity as a share of its scale
     */
    double strike(double[] v, double restitution, Finger finger) {
        System.arraycopy(v, 0, start, 0, n);
        gatherJoints();
        joints.project(v, lambda);
        System.arraycopy(v, 0, before, 0, n);
        contacts.clear();
        for (int r = 0; r < rows.count; r++) {
            if (mechanism.pushesOnly[r] && rows.gap[r] <= TimeLimits.CLOSED) {
                contacts.addRow(r, Complementarity.Kind.PUSH);
            } else if (rubbed[r]) {
                contacts.addRow(r, Complementarity.Kind.HOLD);
            }
        }
        gatherAxes(true);
        // A finger is soft and gives way in a blow; a drive does not.
        contacts.addFinger(finger.kind() == Finger.Kind.DRIVES ? finger : Finger.OFF, 1);
        contacts.respond();
        for (int i = 0; i < problem.size; i++) {
            double rate = contacts.rate(i, before);
            if (contacts.isFinger(i)) {
                problem.offset[i] = rate - contacts.fingerTarget();
                continue;
            }
            boolean push = problem.kind[i] == Complementarity.Kind.PUSH;
            double back = push ? restitution * mechanism.restitution(contacts.member[i]) : 0;
            problem.offset[i] = rate + back * Math.min(0, contacts.rate(i, start));
        }
        double miss = resolve(TimeLimits.BLOW_UNCHANGED);
        finish(v);
        addFingerWork(v);
        return miss;
    }

    private void addFingerWork(double[] v) {
        fingerWork += contacts.fingerImpulse() * 0.5 * (contacts.pressSpeed(v) + contacts.pressSpeed(start));
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

    private void gatherPushes(double h) {
        leastGap = Double.POSITIVE_INFINITY;
        places.noteMiddle();
        for (int r = 0; r < rows.count; r++) {
            if (rubbed[r]) {
                contacts.addRow(r, Complementarity.Kind.HOLD);
            } else if (mechanism.pushesOnly[r] && rows.gap[r] < Double.POSITIVE_INFINITY) {
                double gap = places.gapAtStart(r, h, start);
                if (gap <= TimeLimits.CLOSED) {
                    places.noteClosed(r);
                    contacts.addRow(r, Complementarity.Kind.PUSH);
                } else {
                    leastGap = Math.min(leastGap, gap);
                }
            }
        }
    }

    private void gatherAxes(boolean blow) {
        lasts = blow ? 0 : step;
        for (int a = 0; a < rows.axes; a++) {
            boolean rests = !blow && Math.abs(rows.rate(rows.count + a, start)) < TimeLimits.STILL;
            held[a] = rests ? mechanism.stiction : 1;
            if (rows.kind[a] == Rows.AxisKind.DRAG) {
                bound[a] = lasts;
                contacts.addAxis(a, -1);
                continue;
            }
            if (rows.kind[a] != Rows.AxisKind.FRICTION || rows.along[a] == 0) {
                continue;
            }
            int normal = rows.firstNormal[a];
            if (mechanism.pushesOnly[normal] || rubbed[normal]) {
                int member = contacts.memberOf(normal);
                if (member >= 0) {
                    contacts.addAxis(a, member);
                }
            } else {
                bound[a] = blow ? 0 : bound[a];
                contacts.addAxis(a, -1);
            }
        }
    }

    /** @param closely change that counts as settled, as a share, as long as nothing swings */
    private double resolve(double closely) {
        System.arraycopy(problem.offset, 0, offset, 0, problem.size);
        double scale = 1e-9;
        for (int i = 0; i < problem.size; i++) {
            scale = Math.max(scale, Math.abs(offset[i]));
        }
        led = false;
        settled = false;
        for (int k = 0; k < TimeLimits.RESOLVES + TimeLimits.LED && !settled; k++) {
            led = k >= TimeLimits.RESOLVES;
            unchanged = led ? TimeLimits.UNCHANGED : closely;
            setBounds();
            follow();
            problem.solve();
            settled = !take();
        }
        return problem.size == 0 ? 0 : problem.residual() / scale;
    }

    private void setBounds() {
        for (int i = 0; i < problem.size; i++) {
            int a = contacts.axis(i);
            if (a < 0) {
                continue;
            }
            double size = problem.bearing[i] < 0 ? bound[a] : rows.chainShare(a, rowImpulse, axisImpulse);
            boolean half = led && problem.bearing[i] >= 0;
            double own = rows.own[a] * lasts;
            problem.high[i] = led(half, problem.high[i], held[a] * (rows.along[a] * size + own));
            problem.low[i] = led(half, problem.low[i], held[a] * (rows.against[a] * size + own));
        }
    }

    /** Adds what the forces that follow others do to the motion of the rest. */
    private void follow() {
        System.arraycopy(offset, 0, problem.offset, 0, problem.size);
        Arrays.fill(pushed, 0);
        if (addFollowing(pushed)) {
            joints.project(pushed, joint);
            for (int i = 0; i < problem.size; i++) {
                problem.offset[i] += contacts.rate(i, pushed);
            }
        }
    }

    private boolean addFollowing(double[] v) {
        boolean any = false;
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] == Rows.AxisKind.FOLLOWS && followed[a] != 0) {
                rows.addImpulse(rows.count + a, rows.along[a] * followed[a], v);
                any = true;
            }
        }
        return any;
    }

    /** Takes the impulses in and works out the joints'; whether anything that hangs on them has moved. */
    private boolean take() {
        double largest = 0;
        for (int i = 0; i < problem.size; i++) {
            largest = Math.max(largest, Math.abs(problem.force[i]));
            int a = contacts.axis(i);
            if (a >= 0) {
                axisImpulse[a] = problem.force[i];
            } else if (!contacts.isFinger(i)) {
                rowImpulse[contacts.member[i]] = problem.force[i];
            }
        }
        fingerImpulse = contacts.fingerImpulse();
        reactions();
        nothing = led ? TimeLimits.NO_IMPULSE * Math.max(largest, largestReaction()) : 0;
        boolean moved = false;
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] == Rows.AxisKind.FOLLOWS) {
                double next = Math.abs(rowImpulse[rows.firstNormal[a]]);
                moved |= Math.abs(next - followed[a]) > unchanged * next + nothing;
                followed[a] = led(led, followed[a], next);
            }
        }
        for (int i = 0; i < problem.size; i++) {
            moved |= contacts.axis(i) >= 0 && boundMoved(i, contacts.axis(i), largest);
        }
        return moved;
    }

    private boolean boundMoved(int i, int a, double largest) {
        if (problem.bearing[i] >= 0) {
            return Math.abs(held[a] * rows.along[a] * rows.chainShare(a, rowImpulse, axisImpulse) - problem.high[i])
                    > TimeLimits.CHAIN_UNCHANGED * Math.abs(problem.high[i]) + nothing;
        }
        if (rows.kind[a] == Rows.AxisKind.DRAG) {
            return false;
        }
        double x = rowImpulse[rows.firstNormal[a]];
        double y = rows.secondNormal[a] < 0 ? 0 : rowImpulse[rows.secondNormal[a]];
        double next = Math.hypot(x, y);
        boolean moved = Math.abs(next - bound[a]) > unchanged * next + 1e-12 * largest + nothing;
        bound[a] = led(led, bound[a], next);
        return moved;
    }

    private static double led(boolean half, double before, double next) {
        return half ? (before + next) / 2 : next;
    }

    private double largestReaction() {
        double largest = 0;
        for (int i = 0; i < joints.size(); i++) {
            largest = Math.max(largest, Math.abs(rowImpulse[joints.row(i)]));
        }
        return largest;
    }

    /** Impulses of the joint rows: of the step without contacts, and of what contacts add. */
    private void reactions() {
        Arrays.fill(pushed, 0);
        for (int i = 0; i < problem.size; i++) {
            if (problem.force[i] != 0) {
                contacts.addImpulse(i, problem.force[i], pushed);
            }
        }
        addFollowing(pushed);
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
        contacts.rememberStates();
        contacts.addAnswers(v);
        for (int i = 0; i < problem.size; i++) {
            if (problem.kind[i] == Complementarity.Kind.PUSH) {
                bearing[contacts.member[i]] = problem.force[i] > 0;
            }
        }
        Arrays.fill(pushed, 0);
        if (addFollowing(pushed)) {
            joints.project(pushed, joint);
            for (int c = 0; c < n; c++) {
                v[c] += pushed[c];
            }
        }
        for (int r = 0; r < rows.count; r++) {
            if (mechanism.pushesOnly[r] && !bearing[r]) {
                rowImpulse[r] = 0;
            }
        }
    }

    /** Whether everything that hangs on the impulses of the last step or blow has come to agree with them. */
    boolean isSettled() {
        return settled;
    }

    boolean bears(int row) {
        return bearing[row];
    }

    /** Force of a row over the last step, µN. */
    double rowForce(int row) {
        return rowImpulse[row] / step;
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
