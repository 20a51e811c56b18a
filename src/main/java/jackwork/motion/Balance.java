package jackwork.motion;

import java.util.Arrays;

/**
 * Where the coordinates that joints and lever leave free come to rest: the incremental minimum of
 * potential and friction from where they were, with strings, stops and touches as inequalities.
 *
 * <p>With Z the motions that joints and lever allow, one Newton step solves
 * <pre>
 *   H Δz = Zᵀ(F + Cᵀp + Tᵀφ),   gap + C Z Δz ≥ 0 ⟂ p ≥ 0,   φ against the sliding, within its bounds
 * </pre>
 * H is the stiffness along Z: of the springs, and of all forces as the pose turns them (by central
 * differences of the forces). One per thread; allocates nothing after construction.
 */
final class Balance {

    /** Forces beyond so many times the whole weight come of rows that contradict each other. */
    private static final double JAMMED = 1000;

    private static final int MOST_STEPS = 120;
    /** Rows with gaps wider than this cannot take hold within one step, mm. */
    private static final double NEAR = 25;
    /** Longest step of any coordinate, mm (rad × 100). */
    private static final double LONGEST = 2;

    /** Softer directions are taken as stiff as this, as a share of weight/100 mm: then steps stay within sight. */
    private static final double LEAST_STIFFNESS = 0.02;

    private static final double DIFFERENCE = 1e-4;
    /** Settled when a step moves no coordinate by more than this, mm (rad × 100). */
    private static final double SETTLED = 1e-10;

    private final Mechanism mechanism;
    private final Rows rows;
    private final Loads loads;
    private final int n;
    private final int f;
    private final int[] free;
    private final int[] independent;
    private final double[][] z;
    private final double[][] columns;
    private final double[] stiffness;
    private final double[] inverse;
    private final double[] force;
    private final double[] plus;
    private final double[] minus;
    private final double[] pull;
    private final double[] trial;
    private final double[] change;
    private final double[] lastChange;
    private final LuFactors bearing;
    private final Complementarity contacts;
    private final int[] member;
    private final byte[] lastState;
    private final double[] slip;
    /** Forces of push rows [rows] and axes [axes] after the last solve, µN. */
    final double[] push;

    final double[] rub;
    /** Forces of independent rows, the finger, and what is left along free coordinates, [coordinates]. */
    final double[] multiplier;

    private final double[] lastMultiplier;

    private double leastStiffness;
    private boolean unsettled;
    private String jam = "";

    Balance(Mechanism mechanism, Rows rows) {
        this.mechanism = mechanism;
        this.rows = rows;
        this.loads = new Loads(mechanism);
        this.n = mechanism.coordinates();
        this.free = mechanism.structure.free();
        this.independent = mechanism.structure.independent();
        this.f = free.length;
        this.z = new double[f][n];
        this.stiffness = new double[f * f];
        this.inverse = new double[f * f];
        this.force = new double[n];
        this.plus = new double[n];
        this.minus = new double[n];
        this.pull = new double[f];
        this.trial = new double[n];
        this.change = new double[n];
        this.lastChange = new double[n];
        this.bearing = new LuFactors(n);
        int capacity = rows.count + rows.axes;
        this.contacts = new Complementarity(capacity);
        this.columns = new double[capacity][f];
        this.member = new int[capacity];
        this.lastState = new byte[capacity];
        this.slip = new double[rows.axes];
        this.push = new double[rows.count];
        this.rub = new double[rows.axes];
        this.multiplier = new double[n];
        this.lastMultiplier = new double[n];
        forget();
    }

    void forget() {
        Arrays.fill(push, 0);
        Arrays.fill(rub, 0);
        Arrays.fill(lastState, (byte) 1);
        Arrays.fill(slip, 0);
    }

    /** Begins a new increment: friction acts against what slides from here on. */
    void begin() {
        Arrays.fill(slip, 0);
    }

    /** Adds the sliding of a move of all coordinates, before the move is made. */
    void slide(double[] move) {
        for (int a = 0; a < rows.axes; a++) {
            slip[a] += rows.rate(rows.count + a, move);
        }
    }

    /**
     * Settles the free coordinates with joints and lever kept closed by {@code poses}.
     *
     * @param frictionScale 1 for the mechanism's own friction, 0 for none
     * @return false when nothing balances here: jammed, falling or locked
     */
    boolean settle(PoseSolver poses, double frictionScale) {
        double[] pose = poses.pose();
        unsettled = true;
        jam = "";
        double damping = 0;
        double last = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MOST_STEPS; k++) {
            if (!poses.close()) {
                return false;
            }
            if (!bear()) {
                return false;
            }
            directions(poses.factors());
            stiffen(pose, damping);
            gather(frictionScale);
            boolean fits = contacts.solve();
            scatter();
            noteJam();
            double moved = step(pose);
            if (!fits && contacts.residual() > 1e-9) {
                return false;
            }
            if (moved * (1 + damping) < SETTLED && fits && k > 1 && borneAlike(k < 40 ? 1e-10 : 1e-6)) {
                unsettled = false;
                return poses.close() && bear();
            }
            // A step back and forth that does not shrink is damped: two states take turns.
            boolean turnsBack = dot(change, lastChange) < 0 && moved > 0.5 * last;
            damping = k > 8 && turnsBack ? Math.max(1, 2 * damping) : damping / 2;
            System.arraycopy(change, 0, lastChange, 0, n);
            last = moved;
        }
        return false;
    }

    /** Real forces of the joints with the finger's at the press, at the present contact forces. */
    private boolean bear() {
        loads.force(rows, force);
        for (int r = 0; r < rows.count; r++) {
            if (push[r] != 0) {
                rows.addForce(r, push[r], force);
            }
        }
        for (int a = 0; a < rows.axes; a++) {
            double size = rows.kind[a] == Rows.AxisKind.FOLLOWS
                    ? rows.along[a] * Math.abs(rowForce(rows.firstNormal[a]))
                    : rub[a];
            if (size != 0) {
                rows.addForce(rows.count + a, size, force);
            }
        }
        bearing.clear();
        for (int i = 0; i < independent.length; i++) {
            rows.addColumn(independent[i], bearing, i, 1);
        }
        Mechanism.DriveData drive = mechanism.drive;
        int at = 3 * drive.body();
        bearing.add(at, independent.length, drive.fingerX());
        bearing.add(at + 1, independent.length, drive.fingerY());
        bearing.add(at + 2, independent.length, ForceSolver.fingerArm(rows, drive));
        for (int j = 0; j < f; j++) {
            bearing.add(free[j], independent.length + 1 + j, 1);
        }
        if (!bearing.factor()) {
            return false;
        }
        System.arraycopy(multiplier, 0, lastMultiplier, 0, n);
        for (int i = 0; i < n; i++) {
            multiplier[i] = -force[i];
        }
        bearing.solve(multiplier);
        return true;
    }

    /** Whether the joints' forces came out as in the last step: friction hangs on them.
     *
     * @param share of the greatest force that a change may be
     */
    private boolean borneAlike(double share) {
        double change = 0;
        double largest = 0;
        for (int i = 0; i < n; i++) {
            change = Math.max(change, Math.abs(multiplier[i] - lastMultiplier[i]));
            largest = Math.max(largest, Math.abs(multiplier[i]));
        }
        return change <= share * largest;
    }

    /** Force of any row, µN: of an equality row that repeats others 0. */
    double rowForce(int row) {
        if (mechanism.pushesOnly[row]) {
            return push[row];
        }
        for (int i = 0; i < independent.length; i++) {
            if (independent[i] == row) {
                return multiplier[i];
            }
        }
        return 0;
    }

    double fingerForce() {
        return multiplier[independent.length];
    }

    private void directions(LuFactors closure) {
        for (int j = 0; j < f; j++) {
            Arrays.fill(z[j], 0);
            z[j][independent.length + 1 + j] = 1;
            closure.solve(z[j]);
        }
    }

    private void stiffen(double[] pose, double damping) {
        for (int j = 0; j < f; j++) {
            double size = size(z[j]);
            double step = DIFFERENCE / Math.max(size, 1e-12);
            difference(pose, z[j], step, plus);
            difference(pose, z[j], -step, minus);
            for (int i = 0; i < f; i++) {
                double sum = 0;
                for (int c = 0; c < n; c++) {
                    sum -= z[i][c] * (plus[c] - minus[c]);
                }
                stiffness[i * f + j] = sum / (2 * step);
            }
        }
        rows.at(pose);
        for (int j = 0; j < f; j++) {
            pull[j] = dot(z[j], forceWithoutContacts());
        }
        regularise(damping);
    }

    /** Forces of loads alone, and of what follows other rows. */
    private double[] forceWithoutContacts() {
        loads.force(rows, force);
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] == Rows.AxisKind.FOLLOWS) {
                rows.addForce(rows.count + a, rows.along[a] * Math.abs(rowForce(rows.firstNormal[a])), force);
            }
        }
        return force;
    }

    private void difference(double[] pose, double[] along, double step, double[] into) {
        for (int c = 0; c < n; c++) {
            trial[c] = pose[c] + step * along[c];
        }
        rows.at(trial);
        loads.force(rows, into);
        for (int i = 0; i < independent.length; i++) {
            rows.addForce(independent[i], multiplier[i], into);
        }
        for (int r = 0; r < rows.count; r++) {
            if (push[r] != 0 && Double.isFinite(rows.gap[r])) {
                rows.addForce(r, push[r], into);
            }
        }
    }

    /** Makes H positive: symmetric part, its small and negative eigenvalues turned up; then its inverse. */
    private void regularise(double damping) {
        double scale = mechanism.weight() / 100;
        SmallEigen eigen = new SmallEigen(stiffness, f);
        double least = Double.POSITIVE_INFINITY;
        Arrays.fill(inverse, 0);
        for (int k = 0; k < f; k++) {
            double own = 0;
            for (int j = 0; j < f; j++) {
                own += Math.abs(eigen.vector(k, j)) * size(z[j]);
            }
            double unit = scale * Math.max(own * own, 1e-12);
            double value = eigen.value(k);
            least = Math.min(least, value / unit);
            double used = Math.max(Math.abs(value), LEAST_STIFFNESS * unit) + damping * unit;
            for (int i = 0; i < f; i++) {
                for (int j = 0; j < f; j++) {
                    inverse[i * f + j] += eigen.vector(k, i) * eigen.vector(k, j) / used;
                }
            }
        }
        leastStiffness = least;
    }

    /** Collects the rows that can take part, their answer to each other, and their bounds. */
    private void gather(double frictionScale) {
        int size = 0;
        for (int r = 0; r < rows.count; r++) {
            if (mechanism.pushesOnly[r] && rows.gap[r] < NEAR) {
                member[size] = r;
                contacts.state[size] = lastState[r];
                contacts.row(size, Complementarity.Kind.PUSH, -1, 0, 0);
                contacts.force[size] = push[r];
                size++;
            }
        }
        int pushes = size;
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] == Rows.AxisKind.FRICTION && frictionScale * rows.along[a] > 0) {
                member[size] = rows.count + a;
                contacts.state[size] = lastState[rows.count + a];
                if (bound(size, a, frictionScale, pushes)) {
                    contacts.force[size] = rub[a];
                    size++;
                }
            }
        }
        contacts.size = size;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < f; j++) {
                columns[i][j] = rows.rate(member[i], z[j]);
            }
        }
        int stride = contacts.stride();
        for (int i = 0; i < size; i++) {
            double start = member[i] < rows.count ? rows.gap[member[i]] : slip[member[i] - rows.count];
            contacts.offset[i] = start + product(columns[i], pull);
            for (int j = 0; j < size; j++) {
                contacts.matrix[i * stride + j] = product(columns[i], columns[j]);
            }
        }
    }

    private boolean bound(int at, int a, double frictionScale, int pushes) {
        int normal = rows.firstNormal[a];
        double high = frictionScale * rows.along[a];
        double low = frictionScale * rows.against[a];
        if (mechanism.pushesOnly[normal]) {
            double share = 1;
            for (int c = rows.chained[a]; c >= 0; c = rows.chained[c]) {
                share += push[normal] > 0 ? rub[c] / push[normal] : 0;
            }
            for (int i = 0; i < pushes; i++) {
                if (member[i] == normal) {
                    contacts.row(at, Complementarity.Kind.LIMITED, i, high * share, low * share);
                    return true;
                }
            }
            return false;
        }
        double size = Math.abs(rowForce(normal));
        if (rows.secondNormal[a] >= 0) {
            size = Math.hypot(size, rowForce(rows.secondNormal[a]));
        }
        contacts.row(at, Complementarity.Kind.LIMITED, -1, high * size, low * size);
        return true;
    }

    /** aᵀ H⁻¹ b. */
    private double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < f; i++) {
            for (int j = 0; j < f; j++) {
                sum += a[i] * inverse[i * f + j] * b[j];
            }
        }
        return sum;
    }

    private void scatter() {
        Arrays.fill(push, 0);
        Arrays.fill(rub, 0);
        for (int i = 0; i < contacts.size; i++) {
            lastState[member[i]] = contacts.state[i];
            if (member[i] < rows.count) {
                push[member[i]] = contacts.force[i];
            } else {
                rub[member[i] - rows.count] = contacts.force[i];
            }
        }
    }

    /** Rows that press beyond all measure stand against each other: they cannot all hold here. */
    private void noteJam() {
        StringBuilder names = new StringBuilder();
        double beyond = JAMMED * mechanism.weight();
        for (int r = 0; r < rows.count; r++) {
            String what = push[r] > beyond ? mechanism.what(r) : "";
            if (!what.isEmpty() && names.indexOf(what) < 0) {
                names.append(names.length() == 0 ? "" : " against ").append(what);
            }
        }
        if (names.length() > 0) {
            jam = names.toString();
        }
    }

    /** What stood against each other when the last settling failed; empty when nothing did. */
    String jam() {
        return jam;
    }

    /** Moves the pose by one step; returns the largest change of a coordinate, mm (rad × 100). */
    private double step(double[] pose) {
        Arrays.fill(change, 0);
        for (int i = 0; i < f; i++) {
            double sum = 0;
            for (int j = 0; j < f; j++) {
                double pulled = pull[j];
                for (int k = 0; k < contacts.size; k++) {
                    pulled += columns[k][j] * contacts.force[k];
                }
                sum += inverse[i * f + j] * pulled;
            }
            for (int c = 0; c < n; c++) {
                change[c] += sum * z[i][c];
            }
        }
        double most = size(change);
        double share = most > LONGEST ? LONGEST / most : 1;
        for (int c = 0; c < n; c++) {
            change[c] *= share;
        }
        slide(change);
        for (int c = 0; c < n; c++) {
            pose[c] += change[c];
        }
        return most;
    }

    private static double size(double[] move) {
        double most = 0;
        for (int c = 0; c < move.length; c++) {
            most = Math.max(most, Math.abs(move[c]) * (c % 3 == 2 ? 100 : 1));
        }
        return most;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int c = 0; c < a.length; c++) {
            sum += a[c] * b[c];
        }
        return sum;
    }

    /** Whether a push row bears after the last solve. */
    boolean bears(int row) {
        return push[row] > 0;
    }

    /** Smallest stiffness of the free coordinates, as a share of weight/100 mm, contacts not counted. */
    double leastStiffness() {
        return leastStiffness;
    }

    /** The body that moved most in the last step, and how. */
    String restless() {
        int most = 0;
        for (int c = 0; c < n; c++) {
            int own = 3 * most;
            double moved = Math.max(Math.hypot(change[own], change[own + 1]), 100 * Math.abs(change[own + 2]));
            if (Math.abs(change[c]) * (c % 3 == 2 ? 100 : 1) > moved) {
                most = c / 3;
            }
        }
        double slid = Math.hypot(change[3 * most], change[3 * most + 1]);
        boolean tips = 100 * Math.abs(change[3 * most + 2]) > slid;
        return mechanism.bodyName(most) + (tips ? " tips over" : " slides away");
    }

    /** Whether the last settling ended before it came to rest. */
    boolean isUnsettled() {
        return unsettled;
    }
}
