package jackwork.motion.rest;

import jackwork.geometry.Wanted;
import jackwork.motion.model.Complementarity;
import jackwork.motion.model.LuFactors;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Moves;
import jackwork.motion.model.Rows;
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

    private final Mechanism mechanism;
    private final Rows rows;
    private final int f;
    private final int firstFree;
    /** Forces at the last pose that was settled. */
    final RestForces forces;

    private final Stiffness stiffness;
    private final Complementarity contacts;
    private final double[][] z;
    private final double[][] columns;
    private final double[] pull;
    private final double[] pulled;
    private final double[] change;
    private final double[] lastChange;
    private final int[] member;
    private final byte[] lastState;
    private final double[] slip;
    private final double[][] heldColumns;
    private final double[] softest;
    private double leastStiffness;
    private boolean unsettled;
    private boolean locked;
    private String jam = "";

    Balance(Mechanism mechanism, Rows rows) {
        this.mechanism = mechanism;
        this.rows = rows;
        this.f = mechanism.structure.free().length;
        this.firstFree = mechanism.structure.independent().length + 1;
        this.forces = new RestForces(mechanism, rows);
        this.stiffness = new Stiffness(mechanism, rows, forces);
        int n = mechanism.coordinates();
        int capacity = rows.count + rows.axes;
        this.contacts = new Complementarity(capacity);
        this.z = new double[f][n];
        this.columns = new double[capacity][f];
        this.heldColumns = new double[capacity][f];
        this.softest = new double[f];
        this.pull = new double[f];
        this.pulled = new double[f];
        this.change = new double[n];
        this.lastChange = new double[n];
        this.member = new int[capacity];
        this.lastState = new byte[capacity];
        this.slip = new double[rows.axes];
        forget();
    }

    void forget() {
        forces.forget();
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
     * @return false when nothing balances here: jammed, falling or locked
     */
    boolean settle(PoseSolver poses) {
        double[] pose = poses.pose();
        unsettled = true;
        jam = "";
        locked = false;
        int locks = 0;
        double damping = 0;
        double last = Double.POSITIVE_INFINITY;
        for (int k = 0; k < RestLimits.BALANCE_STEPS; k++) {
            Wanted.goOn();
            if (!poses.close() || !(forces.solve() || release(++locks))) {
                return false;
            }
            directions(poses.factors());
            stiffness.at(pose, z, damping);
            double[] driving = forces.driving();
            for (int j = 0; j < f; j++) {
                pull[j] = dot(z[j], driving);
            }
            gather();
            boolean fits = contacts.solve();
            scatter();
            noteJam();
            double moved = step(pose);
            if (!fits && contacts.residual() > 1e-9) {
                return false;
            }
            if (moved * (1 + damping) < RestLimits.SETTLED
                    && fits
                    && k > 1
                    && forces.areAsBefore(k < RestLimits.PATIENT ? RestLimits.ALIKE : RestLimits.LESS_ALIKE)) {
                unsettled = false;
                leastStiffness = least();
                return poses.close() && forces.solve();
            }
            // A step back and forth that does not shrink is damped: two states take turns.
            boolean turnsBack = dot(change, lastChange) < 0 && moved > 0.5 * last;
            damping = k > 8 && turnsBack ? Math.max(1, 2 * damping) : damping / 2;
            System.arraycopy(change, 0, lastChange, 0, change.length);
            last = moved;
        }
        return false;
    }

    /** Signs of sliding that lock may be wrong ones still: tried again without friction in the joints, a few times. */
    private boolean release(int locks) {
        locked = forces.isLocked();
        if (!locked || locks > RestLimits.MOST_LOCKS) {
            return false;
        }
        Arrays.fill(forces.sliding, 0);
        return forces.solve();
    }

    private void directions(LuFactors closure) {
        for (int j = 0; j < f; j++) {
            Arrays.fill(z[j], 0);
            z[j][firstFree + j] = 1;
            closure.solve(z[j]);
        }
    }

    /** Collects the rows that can take part, their answer to each other, and their bounds. */
    private void gather() {
        int size = 0;
        for (int r = 0; r < rows.count; r++) {
            if (mechanism.pushesOnly[r] && rows.gap[r] < RestLimits.NEAR) {
                member[size] = r;
                contacts.state[size] = lastState[r];
                contacts.row(size, Complementarity.Kind.PUSH, -1, 0, 0);
                contacts.force[size] = forces.push[r];
                size++;
            }
        }
        int pushes = size;
        for (int a = 0; a < rows.axes; a++) {
            if (rows.kind[a] == Rows.AxisKind.FRICTION && rows.along[a] > 0) {
                member[size] = rows.count + a;
                contacts.state[size] = lastState[rows.count + a];
                if (bound(size, a, pushes)) {
                    contacts.force[size] = forces.rub[a];
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
            contacts.offset[i] = start + stiffness.product(columns[i], pull);
            for (int j = 0; j < size; j++) {
                contacts.matrix[i * stride + j] = stiffness.product(columns[i], columns[j]);
            }
        }
    }

    /** Sets an axis's bounds; false when the contact that bears on it takes no part. */
    private boolean bound(int at, int a, int pushes) {
        int normal = rows.firstNormal[a];
        if (!mechanism.pushesOnly[normal]) {
            double size = forces.bearingOn(a);
            contacts.row(
                    at,
                    Complementarity.Kind.LIMITED,
                    -1,
                    rows.along[a] * size + rows.own[a],
                    rows.against[a] * size + rows.own[a]);
            return true;
        }
        for (int i = 0; i < pushes; i++) {
            if (member[i] == normal) {
                double share = rows.chainShare(a, forces.push, forces.rub);
                contacts.row(at, Complementarity.Kind.LIMITED, i, rows.along[a] * share, rows.against[a] * share);
                return true;
            }
        }
        return false;
    }

    private void scatter() {
        forces.forget();
        for (int i = 0; i < contacts.size; i++) {
            lastState[member[i]] = contacts.state[i];
            if (member[i] < rows.count) {
                forces.push[member[i]] = contacts.force[i];
            } else {
                int a = member[i] - rows.count;
                forces.rub[a] = contacts.force[i];
                if (!mechanism.pushesOnly[rows.firstNormal[a]]) {
                    forces.sliding[a] =
                            contacts.isAtHigh(i) ? rows.along[a] : contacts.isAtLow(i) ? -rows.against[a] : 0;
                }
            }
        }
    }

    /** Rows that press beyond all measure stand against each other: they cannot all hold here. */
    private void noteJam() {
        StringBuilder names = new StringBuilder();
        double beyond = RestLimits.JAMMED * mechanism.weight();
        for (int r = 0; r < rows.count; r++) {
            String what = forces.push[r] > beyond ? mechanism.what(r) : "";
            if (!what.isEmpty() && names.indexOf(what) < 0) {
                names.append(names.length() == 0 ? "" : MotionEvent.AGAINST).append(what);
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
        for (int j = 0; j < f; j++) {
            pulled[j] = pull[j];
            for (int k = 0; k < contacts.size; k++) {
                pulled[j] += columns[k][j] * contacts.force[k];
            }
        }
        Arrays.fill(change, 0);
        for (int i = 0; i < f; i++) {
            double along = stiffness.answer(i, pulled);
            for (int c = 0; c < change.length; c++) {
                change[c] += along * z[i][c];
            }
        }
        double most = Moves.size(change);
        double share = most > RestLimits.LONGEST ? RestLimits.LONGEST / most : 1;
        for (int c = 0; c < change.length; c++) {
            change[c] *= share;
        }
        slide(change);
        for (int c = 0; c < change.length; c++) {
            pose[c] += change[c];
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
        return forces.push[row] > 0;
    }

    /** The body that moved most in the last step, and how. */
    String restless() {
        int most = 0;
        for (int b = 1; b < mechanism.bodyCount(); b++) {
            most = moved(b) > moved(most) ? b : most;
        }
        double slid = Math.hypot(change[3 * most], change[3 * most + 1]);
        boolean tips = Moves.size(change, 3 * most + 2) > slid;
        return mechanism.bodyName(most) + (tips ? " tips over" : " slides away");
    }

    private double moved(int body) {
        double turned = Moves.size(change, 3 * body + 2);
        return Math.max(Math.hypot(change[3 * body], change[3 * body + 1]), turned);
    }

    /** Whether the last settling failed because friction alone holds the mechanism, whatever the finger's force. */
    boolean isLocked() {
        return locked && unsettled;
    }

    private double least() {
        int count = 0;
        for (int i = 0; i < contacts.size; i++) {
            if (contacts.isHeld(i)) {
                System.arraycopy(columns[i], 0, heldColumns[count++], 0, f);
            }
        }
        return stiffness.least(z, heldColumns, count, softest);
    }

    /** Whether what came to rest last stands on its edge: the least push tips it. */
    boolean standsOnEdge() {
        return !unsettled && leastStiffness < RestLimits.ON_EDGE;
    }

    /** Pushes what stands on its edge off it, to the side that its softest motion happens to point to. */
    void tip(double[] pose) {
        Arrays.fill(change, 0);
        for (int j = 0; j < f; j++) {
            for (int c = 0; c < change.length; c++) {
                change[c] += softest[j] * z[j][c];
            }
        }
        double share = RestLimits.TIPPED / Math.max(Moves.size(change), 1e-12);
        for (int c = 0; c < change.length; c++) {
            change[c] *= share;
            pose[c] += change[c];
        }
    }

    /** Whether the last settling ended before it came to rest. */
    boolean isUnsettled() {
        return unsettled;
    }
}
