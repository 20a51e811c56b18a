package jackwork.motion.rest;

import jackwork.motion.model.Direction;
import jackwork.motion.model.Loads;
import jackwork.motion.model.LuFactors;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Rows;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Real forces at a pose: what pins and slots bear, and what the finger must push, with dry friction
 * against the direction of motion. At an end of the stroke, where links may stand so that a joint only just begins to
 * turn, that direction is the limit from within. One per thread; allocates nothing after construction, but once for
 * each end.
 *
 * <p>Unknowns λ: two forces a pin, one a slide, and the finger's force. With A the columns that
 * carry them to the bodies, g the weights, σ the sense of sliding:
 * <pre>
 *   A λ + f(λ) + g = 0
 *   pin    moment −σ µ r |λ_pin| on A, +… on B          (friction circle, radius µ r)
 *   slide  force −σ µ |λ_slide| along the slot on A, +… on B   (Coulomb)
 * </pre>
 * |λ| makes it nonlinear and its matrix nonsymmetric: one Newton iteration on the whole, from the
 * frictionless forces. The answer must hang together with those: the determinant keeps its sign all the
 * way from no friction to the full measure. Where it does not, friction is brought in step by step, and
 * the mechanism is locked at the share of it where the determinant reaches zero.
 * Friction circle: e.g. Beer and Johnston, Vector Mechanics for Engineers: Statics, ch. 8.
 */
public final class ForceSolver {

    private final Mechanism mechanism;
    private final Rows rows;
    private final Loads gravity;
    private final int n;
    private final int finger;
    private final int[] independent;
    /** Column of each row's force, −1 for rows that bear nothing here, [rows]. */
    private final int[] column;

    private final LuFactors factors;
    private final double[] loads;
    private final double[] force;
    private final double[] change;
    private final double[] kept;
    private final double[] sliding;
    /** Force of each axis as a share of its first row's, [axes]. */
    private final double[] share;

    /** Rates of the axes a little within either end of the stroke, [2][axes]; null until somebody asks. */
    private final double[] @Nullable [] within = new double[2][];

    private double lockShare;
    private double determinantShare;

    public ForceSolver(Mechanism mechanism) {
        this.mechanism = mechanism;
        this.rows = new Rows(mechanism);
        this.gravity = new Loads(mechanism);
        this.n = mechanism.coordinates();
        this.independent = mechanism.structure.independent();
        this.finger = independent.length;
        this.column = new int[mechanism.rowCount];
        Arrays.fill(column, -1);
        for (int i = 0; i < independent.length; i++) {
            column[independent[i]] = i;
        }
        this.factors = new LuFactors(n);
        this.loads = new double[n];
        this.force = new double[n];
        this.change = new double[n];
        this.kept = new double[n];
        this.sliding = new double[mechanism.axisCount];
        this.share = new double[mechanism.axisCount];
    }

    /**
     * Solves at the pose of {@code poses}.
     *
     * @param frictionScale 1 for the mechanism's own friction, 0 for none
     * @return false when it locks by friction: {@link #lockShare} then says at which share of it
     */
    public boolean solve(PoseSolver poses, Direction direction, double frictionScale) {
        double[] pose = poses.pose();
        rows.at(pose);
        gravity.force(rows, loads);
        senses(poses, direction);
        lockShare = Double.NaN;
        if (!newton(0)) {
            lockShare = 0;
            return false;
        }
        int freeSign = factors.determinantSign();
        double freeLog = factors.logAbsDeterminant();
        determinantShare = 1;
        if (frictionScale == 0) {
            return true;
        }
        if (newton(frictionScale) && factors.determinantSign() == freeSign && steady(frictionScale)) {
            determinantShare = Math.exp(factors.logAbsDeterminant() - freeLog);
            return true;
        }
        return followFriction(frictionScale, freeSign, freeLog);
    }

    /** Brings friction in step by step; the first share at which the determinant turns is the lock. */
    private boolean followFriction(double scale, int freeSign, double freeLog) {
        newton(0);
        double low = 0;
        double step = 1.0 / 16;
        while (low < 1) {
            double next = Math.min(1, low + step);
            System.arraycopy(force, 0, kept, 0, n);
            if (newton(next * scale) && factors.determinantSign() == freeSign) {
                low = next;
            } else {
                System.arraycopy(kept, 0, force, 0, n);
                step /= 2;
                if (step < 1e-9) {
                    lockShare = low;
                    determinantShare = 0;
                    return false;
                }
            }
        }
        determinantShare = Math.exp(factors.logAbsDeterminant() - freeLog);
        return true;
    }

    /**
     * Whether the determinant kept its sign all the way: with the reactions' directions as solved,
     * the matrix is linear in the friction scale, so its sign at a few shares between shows a pair
     * of turns that the end alone would hide.
     */
    private boolean steady(double scale) {
        int sign = factors.determinantSign();
        for (int k = 1; k < 4; k++) {
            assemble(scale * k / 4);
            if (!factors.factor() || factors.determinantSign() != sign) {
                return false;
            }
        }
        assemble(scale);
        return factors.factor();
    }

    /** Newton at one measure of friction, from the present forces; leaves the last matrix factored. */
    private boolean newton(double scale) {
        for (int k = 0; k < RestLimits.FORCE_ITERATIONS; k++) {
            assemble(scale);
            if (!factors.factor()) {
                return false;
            }
            // f is of degree one in λ, but for drags that hang on nothing: Newton's step is simply matrix · λ_new = −g.
            double size = 0;
            for (int i = 0; i < n; i++) {
                change[i] = -loads[i];
            }
            addDrags(scale);
            factors.solve(change);
            double moved = 0;
            for (int i = 0; i < n; i++) {
                moved = Math.max(moved, Math.abs(change[i] - force[i]));
                size = Math.max(size, Math.abs(change[i]));
                force[i] = change[i];
            }
            if (!Double.isFinite(size)) {
                return false;
            }
            if ((scale == 0 && k > 0) || moved <= 1e-14 * size) {
                return true;
            }
            if (k > 12 && moved <= 1e-12 * size) {
                return true;
            }
        }
        return false;
    }

    private void assemble(double scale) {
        factors.clear();
        for (int i = 0; i < independent.length; i++) {
            rows.addColumn(independent[i], factors, i, 1);
        }
        rows.addFingerColumn(factors, finger);
        // Coordinates that the lever leaves free take up what does not balance along them.
        for (int j = finger + 1; j < n; j++) {
            factors.add(mechanism.structure.free()[j - finger - 1], j, 1);
        }
        for (int a = 0; a < rows.axes; a++) {
            addAxis(a, scale);
        }
    }

    /** What rubs whatever it bears is a load against its sliding. */
    private void addDrags(double scale) {
        for (int a = 0; a < rows.axes; a++) {
            if (rows.own[a] > 0 && sliding[a] != 0) {
                rows.addForce(rows.count + a, scale * rows.own[a] * Math.signum(sliding[a]), change);
            }
        }
    }

    /** Adds an axis's force, in proportion to the rows that bear on it. */
    private void addAxis(int a, double scale) {
        int first = column[rows.firstNormal[a]];
        share[a] = 0;
        if (first < 0) {
            return;
        }
        int axis = rows.count + a;
        int second = rows.secondNormal[a] < 0 ? -1 : column[rows.secondNormal[a]];
        double fx = force[first];
        if (rows.kind[a] == Rows.AxisKind.FOLLOWS) {
            rows.addColumn(axis, factors, first, rows.along[a] * Math.signum(fx));
            return;
        }
        double coefficient = scale * (sliding[a] > 0 ? -rows.against[a] : sliding[a] < 0 ? rows.along[a] : 0);
        if (coefficient == 0) {
            return;
        }
        if (second >= 0) {
            double fy = force[second];
            double size = Math.hypot(fx, fy);
            if (size > 0) {
                rows.addColumn(axis, factors, first, coefficient * fx / size);
                rows.addColumn(axis, factors, second, coefficient * fy / size);
            }
            return;
        }
        double before = 1;
        for (int c = rows.chained[a]; c >= 0; c = rows.chained[c]) {
            before += share[c];
        }
        share[a] = coefficient * before;
        rows.addColumn(axis, factors, first, share[a] * Math.signum(fx));
    }

    /** The sense in which each axis slides. */
    private void senses(PoseSolver poses, Direction direction) {
        for (int a = 0; a < rows.axes; a++) {
            double speed = rows.rate(rows.count + a, poses.velocity());
            boolean atEnd = poses.stroke() == 0 || poses.stroke() == 1;
            if (atEnd && Math.abs(speed) < RestLimits.STILL) {
                speed = within(poses.stroke())[a];
            }
            sliding[a] = Math.abs(speed) < RestLimits.STILL ? 0 : direction.sign() * Math.signum(speed);
        }
    }

    /** Rates of the axes a little within an end of the stroke; all 0 where there is no way in. */
    private double[] within(double end) {
        int which = (int) end;
        double[] rates = within[which];
        if (rates == null) {
            rates = new double[rows.axes];
            PoseSolver inside = new PoseSolver(mechanism);
            boolean there = inside.moveTo(end == 0 ? RestLimits.WITHIN : 1 - RestLimits.WITHIN);
            for (int a = 0; a < rows.axes && there; a++) {
                rates[a] = inside.rows.rate(inside.rows.count + a, inside.velocity());
            }
            within[which] = rates;
        }
        return rates;
    }

    /** What the finger pushes along its direction, µN; negative when it would have to hold back. */
    public double fingerForce() {
        return force[finger];
    }

    /** x of the force that body B puts on body A at a pin, µN. */
    public double pinForceX(int pin) {
        return rowForce(mechanism.firstRow[pin]);
    }

    /** y of the force that body B puts on body A at a pin, µN. */
    public double pinForceY(int pin) {
        return rowForce(mechanism.firstRow[pin] + 1);
    }

    /** Force of a row, µN; 0 for one that bears nothing, or repeats others. */
    double rowForce(int row) {
        return column[row] < 0 ? 0 : force[column[row]];
    }

    /** Share of its friction at which the mechanism locks here; NaN when it does not. */
    public double lockShare() {
        return lockShare;
    }

    /**
     * What friction leaves of the determinant: 1 without friction, 0 where the mechanism locks.
     * The finger's force grows without bound as it falls to 0.
     */
    public double determinantShare() {
        return determinantShare;
    }
}
