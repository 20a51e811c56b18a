package jackwork.motion.model;

/**
 * Solves for the forces p of rows that push only, rub, or are limited, given how their motion answers:
 * <pre>
 *   w = W p + b
 *   PUSH      p ≥ 0, w ≥ 0, p w = 0
 *   HOLD      w = 0
 *   LIMITED   −low ≤ p ≤ high; p = high where w &lt; 0, p = −low where w &gt; 0, else w = 0
 * </pre>
 * A LIMITED row's bounds are constants, or multiples of the force of another row: Coulomb friction.
 *
 * <p>States are guessed (those of the last solve first), one linear system is solved, rows whose
 * state is contradicted change it, all at once at first, then one at a time by least index (K. G. Murty,
 * "Note on a Bard-type scheme for solving the complementarity problem", 1974, named from memory). With friction that need not
 * end: a row may be contradicted in both of its states until another gives way, so none changes twice running while another is
 * contradicted. Should it still not end, projected sweeps over the rows do; the residual always tells. One per thread; allocates
 * nothing after construction.
 */
public final class Complementarity {

    /** What a row may do. */
    public enum Kind {
        PUSH,
        HOLD,
        LIMITED
    }

    static final byte OPEN = 0;
    static final byte HELD = 1;
    static final byte HIGH = 2;
    static final byte LOW = 3;
    /** Of a row of either sign that bears the other way round. */
    private static final byte TURNED = 4;

    private final int capacity;
    public int size;
    public final double[] matrix;
    public final double[] offset;
    public final Kind[] kind;
    /** Row whose force the bounds are multiples of, or −1 for constant bounds. */
    public final int[] bearing;

    public final double[] high;
    public final double[] low;
    /** Forces, [size]: the last answer on entry, the new one on return. */
    public final double[] force;
    /** W p + b, [size]. */
    final double[] motion;

    public final byte[] state;
    private final double[] swept;
    /** What the last look at swept states began with, in vain: they would end alike. */
    private final byte[] tried;

    private boolean triedSome;
    private final HeldRows system;
    private double residual;
    /** The row that changed its state alone in the last round; −1 for none. */
    private int changedLast;

    public Complementarity(int capacity) {
        this.capacity = capacity;
        this.matrix = new double[capacity * capacity];
        this.offset = new double[capacity];
        this.kind = new Kind[capacity];
        this.bearing = new int[capacity];
        this.high = new double[capacity];
        this.low = new double[capacity];
        this.force = new double[capacity];
        this.motion = new double[capacity];
        this.state = new byte[capacity];
        this.swept = new double[capacity];
        this.tried = new byte[capacity];
        this.system = new HeldRows(this, capacity);
    }

    public int stride() {
        return capacity;
    }

    /** Starts a row; state is kept from the last solve. */
    public void row(int i, Kind rowKind, int bearingRow, double highBound, double lowBound) {
        kind[i] = rowKind;
        bearing[i] = bearingRow;
        high[i] = highBound;
        low[i] = lowBound;
        if (rowKind == Kind.HOLD) {
            state[i] = HELD;
        } else if (rowKind == Kind.PUSH && state[i] > HELD) {
            state[i] = HELD;
        } else if (rowKind == Kind.LIMITED && state[i] == OPEN) {
            state[i] = HELD;
        }
    }

    /**
     * Makes limited rows a hair soft, so that several that hold the same motion share it in one way only and
     * the search over states cannot go round in circles.
     */
    private void soften() {
        for (int i = 0; i < size; i++) {
            if (kind[i] == Kind.LIMITED) {
                matrix[i * capacity + i] *= 1 + ModelLimits.YIELD;
            }
        }
    }

    /** @return whether the answer fits to working precision; if not, {@link #residual} says by how much it misses */
    public boolean solve() {
        if (size == 0) {
            residual = 0;
            return true;
        }
        soften();
        changedLast = -1;
        for (int round = 0; round < ModelLimits.ROUNDS; round++) {
            system.solve();
            move();
            if (!(round < ModelLimits.ROUNDS_AT_ONCE ? changeAll() : changeOne())) {
                measure();
                if (residual <= ModelLimits.FITS * scale()) {
                    return true;
                }
                break;
            }
        }
        sweep();
        return residual <= ModelLimits.FITS * scale();
    }

    double highOf(int i) {
        return bearing[i] < 0 ? high[i] : high[i] * bearingForce(i);
    }

    double lowOf(int i) {
        return bearing[i] < 0 ? low[i] : low[i] * bearingForce(i);
    }

    private double bearingForce(int i) {
        double f = force[bearing[i]];
        return kind[bearing[i]] == Kind.HOLD ? Math.abs(f) : Math.max(0, f);
    }

    private void move() {
        for (int i = 0; i < size; i++) {
            double sum = offset[i];
            for (int j = 0; j < size; j++) {
                sum += matrix[i * capacity + j] * force[j];
            }
            motion[i] = sum;
        }
    }

    private double scale() {
        double most = 1e-12;
        for (int i = 0; i < size; i++) {
            most = Math.max(most, Math.abs(offset[i]));
        }
        return most;
    }

    private double forceScale() {
        double most = 1e-12;
        for (int i = 0; i < size; i++) {
            most = Math.max(most, Math.abs(force[i]));
        }
        return most;
    }

    /** Changes all states that are contradicted; whether there were any. */
    private boolean changeAll() {
        double forceSlack = ModelLimits.SLACK * forceScale();
        double motionSlack = ModelLimits.SLACK * scale();
        boolean changed = false;
        for (int i = 0; i < size; i++) {
            byte next = next(i, forceSlack, motionSlack);
            changed |= next != state[i];
            state[i] = next;
        }
        return changed;
    }

    /** Changes one state that is contradicted, another than the last time where there are two; whether there was any. */
    private boolean changeOne() {
        double forceSlack = ModelLimits.SLACK * forceScale();
        double motionSlack = ModelLimits.SLACK * scale();
        int one = -1;
        for (int i = 0; i < size && (one < 0 || one == changedLast); i++) {
            if (next(i, forceSlack, motionSlack) != state[i]) {
                one = i;
            }
        }
        if (one < 0) {
            return false;
        }
        state[one] = next(one, forceSlack, motionSlack);
        changedLast = one;
        return true;
    }

    private byte next(int i, double forceSlack, double motionSlack) {
        if (kind[i] == Kind.HOLD) {
            return HELD;
        }
        if (kind[i] == Kind.PUSH) {
            if (state[i] == HELD) {
                return force[i] < -forceSlack ? OPEN : HELD;
            }
            return motion[i] < -motionSlack ? HELD : OPEN;
        }
        if (state[i] == HELD) {
            if (force[i] > highOf(i) + forceSlack) {
                return HIGH;
            }
            return force[i] < -lowOf(i) - forceSlack ? LOW : HELD;
        }
        if (state[i] == HIGH) {
            return motion[i] > motionSlack ? HELD : HIGH;
        }
        return motion[i] < -motionSlack ? HELD : LOW;
    }

    /**
     * Projected Gauss-Seidel from the present forces: always ends. It has the states long before it has the forces, so
     * now and then one linear system is solved with those.
     */
    private void sweep() {
        triedSome = false;
        for (int i = 0; i < size; i++) {
            force[i] = clamp(i, force[i]);
        }
        for (int sweep = 1; sweep <= ModelLimits.SWEEPS; sweep++) {
            boolean ends = sweepOnce() <= 1e-12 * scale() || sweep == ModelLimits.SWEEPS;
            if (ends || sweep % ModelLimits.LOOKS == 0) {
                if (fitsAsSwept()) {
                    return;
                }
                move();
                measure();
                if (ends || residual <= ModelLimits.SWEPT * scale()) {
                    return;
                }
            }
        }
    }

    /** Returns the greatest change, in units of motion. */
    private double sweepOnce() {
        double moved = 0;
        for (int i = 0; i < size; i++) {
            double sum = offset[i];
            for (int j = 0; j < size; j++) {
                sum += matrix[i * capacity + j] * force[j];
            }
            double own = matrix[i * capacity + i];
            if (own > 0) {
                double next = clamp(i, force[i] - sum / own);
                moved = Math.max(moved, Math.abs(next - force[i]) * own);
                force[i] = next;
            }
        }
        return moved;
    }

    /** Whether the states that the sweeps have come to, or a few near them, give forces that fit; if not, all is as swept. */
    private boolean fitsAsSwept() {
        for (int i = 0; i < size; i++) {
            state[i] = stateOf(i);
        }
        if (triedBefore()) {
            return false;
        }
        System.arraycopy(force, 0, swept, 0, size);
        changedLast = -1;
        for (int round = 0; round < ModelLimits.ROUNDS_AS_SWEPT; round++) {
            system.solve();
            move();
            measure();
            if (residual <= ModelLimits.FITS * scale()) {
                return true;
            }
            if (!changeOne()) {
                break;
            }
        }
        System.arraycopy(swept, 0, force, 0, size);
        for (int i = 0; i < size; i++) {
            state[i] = stateOf(i);
        }
        return false;
    }

    /** Whether the last look began with the same states, and the same signs where bounds hang on them: all that it goes by. */
    private boolean triedBefore() {
        boolean same = triedSome;
        for (int i = 0; i < size; i++) {
            byte begun = kind[i] == Kind.HOLD && force[i] < 0 ? TURNED : state[i];
            same &= begun == tried[i];
            tried[i] = begun;
        }
        triedSome = true;
        return same;
    }

    private byte stateOf(int i) {
        if (kind[i] == Kind.PUSH) {
            return force[i] > 0 ? HELD : OPEN;
        }
        if (kind[i] == Kind.LIMITED && force[i] >= highOf(i)) {
            return HIGH;
        }
        return kind[i] == Kind.LIMITED && force[i] <= -lowOf(i) ? LOW : HELD;
    }

    private double clamp(int i, double value) {
        return switch (kind[i]) {
            case HOLD -> value;
            case PUSH -> Math.max(0, value);
            case LIMITED -> Math.max(-lowOf(i), Math.min(highOf(i), value));
        };
    }

    /** Largest miss of the natural map, in units of motion. */
    private void measure() {
        residual = 0;
        for (int i = 0; i < size; i++) {
            double own = Math.max(matrix[i * capacity + i], 1e-300);
            double miss = Math.abs(force[i] - clamp(i, force[i] - motion[i] / own)) * own;
            residual = Math.max(residual, Double.isFinite(miss) ? miss : Double.POSITIVE_INFINITY);
        }
    }

    /** Whether a row keeps its motion at 0. */
    public boolean isHeld(int i) {
        return state[i] == HELD;
    }

    /** Whether a limited row bears all it can, against negative motion. */
    public boolean isAtHigh(int i) {
        return kind[i] == Kind.LIMITED && state[i] == HIGH;
    }

    public boolean isAtLow(int i) {
        return kind[i] == Kind.LIMITED && state[i] == LOW;
    }

    /** Largest miss of the last answer, in units of motion. */
    public double residual() {
        return residual;
    }
}
