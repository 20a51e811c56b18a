package jackwork.motion.model;

import java.util.Arrays;

/**
 * All joints of a {@link Mechanism} at one pose: gaps, gradients, friction axes, on primitive arrays.
 * One per thread; allocates nothing after construction.
 *
 * <p>A gradient is kept as blocks (body, ∂x, ∂y, ∂angle). Axes follow the rows in the same store.
 */
public final class Rows {

    /** How an axis gets its force from the rows that bear on it. */
    public enum AxisKind {
        /** Dry friction: against the sliding, up to the bound. */
        FRICTION,
        /** A force in proportion to the row's own, such as that which drives two gears apart. */
        FOLLOWS,
        /** Dry friction of a size of its own, µN or µN·mm, whatever any row bears. */
        DRAG
    }

    public final Mechanism mechanism;
    /** Number of rows. */
    public final int count;
    /** Number of axes. */
    public final int axes;
    /** Gap of each row, mm (or rad × the row's own arm), [rows]; infinite when nothing is near. */
    public final double[] gap;
    /** Axis force may be this many times the bearing force along the axis, and against it, [axes]. */
    public final double[] along;

    public final double[] against;
    /** Friction beyond that, the same both ways and whatever bears, µN or µN·mm, [axes]. */
    public final double[] own;
    /** Rows whose forces (as one vector) bear on the axis, −1 for none, [axes]. */
    public final int[] firstNormal;

    public final int[] secondNormal;
    /** Axis whose force adds to the bearing force, −1 for none, [axes]: the spans of a string. */
    public final int[] chained;

    public final AxisKind[] kind;
    /** For joints that look for a nearest feature: where they found it last, [rows]. */
    public final long[] feature;

    /** Wrap of a string on each guide, rad, on the post's side, as last found; NaN as long as nobody looked, [axes]. */
    final double[] wound;

    private final double[] keptWound;
    /** Whether strings are still wound as drawn. */
    private boolean asDrawn;

    final double[] parameter;
    /** Scratch of joints with curves: point and two derivatives. */
    final double[] scratch = new double[6];
    /** Scratch of joints that touch. */
    final TouchPlaces places = new TouchPlaces();
    /** What joints that touch keep, of A's corners and of B's, [joints]. */
    final TouchNear[] nearA;

    final TouchNear[] nearB;

    /** 1/mass, 1/mass, 1/inertia of each body at this pose, [3 × bodies]: a folded figure's changes with the lever. */
    public final double[] inverseMass;

    private final double[] cos;
    private final double[] sin;
    private final int[] start;
    private final int[] used;
    private final int[] body;
    private final double[] dx;
    private final double[] dy;
    private final double[] dAngle;
    private double[] pose;
    /** Pose at which everything was evaluated last. */
    private final double[] evaluated;

    public Rows(Mechanism mechanism) {
        this.mechanism = mechanism;
        this.count = mechanism.rowCount;
        this.axes = mechanism.axisCount;
        this.gap = new double[count];
        this.along = new double[axes];
        this.against = new double[axes];
        this.own = new double[axes];
        this.firstNormal = new int[axes];
        this.secondNormal = new int[axes];
        this.chained = new int[axes];
        this.kind = new AxisKind[axes];
        this.feature = new long[count];
        this.parameter = new double[count];
        this.wound = new double[axes];
        this.keptWound = new double[axes];
        this.inverseMass = mechanism.inverseMass.clone();
        this.cos = new double[mechanism.bodyCount()];
        this.sin = new double[mechanism.bodyCount()];
        this.start = new int[count + axes];
        this.used = new int[count + axes];
        this.pose = mechanism.drawnPose();
        this.evaluated = new double[pose.length];
        this.nearA = new TouchNear[mechanism.joints.length];
        this.nearB = new TouchNear[mechanism.joints.length];
        int capacity = 0;
        for (int j = 0; j < mechanism.joints.length; j++) {
            Joint joint = mechanism.joints[j];
            if (joint instanceof Touch touch) {
                nearA[j] = touch.nearA();
                nearB[j] = touch.nearB();
            }
            for (int r = 0; r < joint.rows(); r++) {
                start[mechanism.firstRow[j] + r] = capacity;
                capacity += joint.blocks();
            }
            for (int a = 0; a < joint.axes(); a++) {
                start[count + mechanism.firstAxis[j] + a] = capacity;
                capacity += joint.blocks();
            }
        }
        this.body = new int[capacity];
        this.dx = new double[capacity];
        this.dy = new double[capacity];
        this.dAngle = new double[capacity];
        Arrays.fill(kind, AxisKind.FRICTION);
        forget();
    }

    /** Forgets where nearest features were last found. */
    public void forget() {
        Arrays.fill(feature, -1);
        Arrays.fill(parameter, Double.NaN);
        Arrays.fill(wound, Double.NaN);
        asDrawn = true;
        Arrays.fill(evaluated, Double.POSITIVE_INFINITY);
    }

    /** Remembers how strings are wound, for a way that may have to be gone back. */
    public void keepWound() {
        System.arraycopy(wound, 0, keptWound, 0, axes);
    }

    /** Winds strings as they were when that was last remembered; the next pose must be near the one of then. */
    public void giveBackWound() {
        if (!Arrays.equals(keptWound, wound)) {
            System.arraycopy(keptWound, 0, wound, 0, axes);
            Arrays.fill(evaluated, Double.POSITIVE_INFINITY);
        }
    }

    /** Evaluates every joint at a pose; all other calls refer to the pose last given here. */
    public void at(double[] q) {
        pose = q;
        int n = evaluated.length;
        if (Arrays.equals(q, 0, n, evaluated, 0, n)) {
            return;
        }
        System.arraycopy(q, 0, evaluated, 0, n);
        if (asDrawn) {
            asDrawn = false;
            wind(q);
            pose = q;
        }
        turn();
        Joint[] joints = mechanism.joints;
        for (int j = 0; j < joints.length; j++) {
            joints[j].evaluate(this, mechanism.firstRow[j], mechanism.firstAxis[j]);
        }
        if (mechanism.folded != null) {
            setInertia(mechanism.folded.inertia(angle(mechanism.drive.body())));
        }
    }

    private void turn() {
        for (int i = 0; i < cos.length; i++) {
            double angle = pose[3 * i + 2];
            cos[i] = Math.cos(angle);
            sin[i] = Math.sin(angle);
        }
    }

    /**
     * Winds strings from how they are drawn to how they are at a pose that was not come to step by step: each body is
     * turned there about the pole of its whole displacement, for one that is pinned to the box that is its pin.
     */
    private void wind(double[] q) {
        boolean any = false;
        for (Joint joint : mechanism.joints) {
            any |= joint instanceof Cord cord && cord.winds();
        }
        if (!any) {
            return;
        }
        double[] from = mechanism.drawnPose();
        double[] between = new double[q.length];
        double way = Moves.between(from, Arrays.copyOf(q, from.length));
        int steps = (int) Math.min(ModelLimits.MOST_WINDING, Math.ceil(way / ModelLimits.WINDING));
        for (int k = 0; k < steps; k++) {
            double share = (double) k / steps;
            for (int b = 0; b < cos.length; b++) {
                Moves.along(from, q, 3 * b, share, between);
            }
            pose = between;
            turn();
            for (int j = 0; j < mechanism.joints.length; j++) {
                if (mechanism.joints[j] instanceof Cord cord) {
                    cord.evaluate(this, mechanism.firstRow[j], mechanism.firstAxis[j]);
                }
            }
        }
    }

    private void setInertia(double more) {
        int lever = mechanism.drive.body();
        inverseMass[3 * lever + 2] = 1 / (mechanism.bodies[lever].inertia() + more);
    }

    /**
     * Makes a folded figure's inertia that of a whole step, at whose middle the rows are. With the lever's speed ω and
     * the inertia J over its angle, {@code J dω/dt + J' ω²/2} is taken as {@code J (ω⁺ − ω⁻)/h + J' ω⁻ ω⁺/2}: of second
     * order, and linear in ω⁺.
     *
     * @param velocity at the start
     * @param load gets the part that does not hang on ω⁺
     */
    public void stepInertia(double h, double[] velocity, double[] load) {
        if (mechanism.folded == null) {
            return;
        }
        int turning = 3 * mechanism.drive.body() + 2;
        double angle = pose[turning];
        double half = 0.5 * mechanism.folded.inertiaSlope(angle) * velocity[turning];
        load[turning] -= half * velocity[turning];
        setInertia(mechanism.folded.inertia(angle) + half * h);
    }

    // What joints read.

    public double x(int b) {
        return b < 0 ? 0 : pose[3 * b];
    }

    public double y(int b) {
        return b < 0 ? 0 : pose[3 * b + 1];
    }

    public double angle(int b) {
        return b < 0 ? 0 : pose[3 * b + 2];
    }

    /** Turned x of a point or direction of a body. */
    double armX(int b, double px, double py) {
        return b < 0 ? px : cos[b] * px - sin[b] * py;
    }

    double armY(int b, double px, double py) {
        return b < 0 ? py : sin[b] * px + cos[b] * py;
    }

    /** x in the body's own frame of a direction in space. */
    double ownX(int b, double px, double py) {
        return b < 0 ? px : cos[b] * px + sin[b] * py;
    }

    double ownY(int b, double px, double py) {
        return b < 0 ? py : -sin[b] * px + cos[b] * py;
    }

    // What joints write.

    /** Takes a row's gradient back to nothing and sets its gap. */
    public void row(int row, double value) {
        used[row] = 0;
        gap[row] = value;
    }

    /** An axis of dry friction with the same bound both ways. */
    public void axis(int axis, double coefficient, int normal, int secondNormalRow) {
        axis(axis, AxisKind.FRICTION, coefficient, coefficient, normal, secondNormalRow, -1);
    }

    /** The same, with a bound that is more than that by a size of its own, µN or µN·mm. */
    public void axis(int axis, double coefficient, double ownSize, int normal, int secondNormalRow) {
        axis(axis, coefficient, normal, secondNormalRow);
        own[axis] = ownSize;
    }

    public void axis(
            int axis, AxisKind axisKind, double most, double least, int normal, int secondNormalRow, int chainedAxis) {
        used[count + axis] = 0;
        kind[axis] = axisKind;
        along[axis] = most;
        against[axis] = least;
        firstNormal[axis] = normal;
        secondNormal[axis] = secondNormalRow;
        chained[axis] = chainedAxis;
    }

    /** Adds a block to a row (or to axis a as row {@code count + a}). */
    public void block(int row, int b, double ofX, double ofY, double ofAngle) {
        if (b < 0) {
            return;
        }
        int at = start[row] + used[row]++;
        body[at] = b;
        dx[at] = ofX;
        dy[at] = ofY;
        dAngle[at] = ofAngle;
    }

    /** Adds a unit push along (nx, ny) at a point of space. */
    void push(int row, int b, double nx, double ny, double atX, double atY) {
        if (b >= 0) {
            block(row, b, nx, ny, (atX - x(b)) * ny - (atY - y(b)) * nx);
        }
    }

    /** Adds a unit push on body a along (nx, ny) and its counterpart on body b, both at a point of space. */
    void between(int row, int a, int b, double nx, double ny, double atX, double atY) {
        push(row, a, nx, ny, atX, atY);
        push(row, b, -nx, -ny, atX, atY);
    }

    // What solvers read.

    /** Rate of a row (or axis) under a velocity. */
    public double rate(int row, double[] velocity) {
        double sum = 0;
        for (int k = start[row], end = k + used[row]; k < end; k++) {
            int c = 3 * body[k];
            sum += dx[k] * velocity[c] + dy[k] * velocity[c + 1] + dAngle[k] * velocity[c + 2];
        }
        return sum;
    }

    /** Greatest speed (mm/s, or rad/s) of any body that a row holds. */
    public double fastest(int row, double[] velocity) {
        double most = 0;
        for (int k = start[row], end = k + used[row]; k < end; k++) {
            for (int c = 3 * body[k]; c < 3 * body[k] + 3; c++) {
                most = Math.max(most, Math.abs(velocity[c]));
            }
        }
        return most;
    }

    /** Adds a row's (or axis's) force on all bodies. */
    public void addForce(int row, double size, double[] force) {
        for (int k = start[row], end = k + used[row]; k < end; k++) {
            int c = 3 * body[k];
            force[c] += size * dx[k];
            force[c + 1] += size * dy[k];
            force[c + 2] += size * dAngle[k];
        }
    }

    /** Adds {@code inverse mass × gradient × size}: the velocity that an impulse gives. */
    public void addImpulse(int row, double size, double[] velocity) {
        double[] inverse = inverseMass;
        for (int k = start[row], end = k + used[row]; k < end; k++) {
            int c = 3 * body[k];
            velocity[c] += size * inverse[c] * dx[k];
            velocity[c + 1] += size * inverse[c + 1] * dy[k];
            velocity[c + 2] += size * inverse[c + 2] * dAngle[k];
        }
    }

    /** Adds a gradient as row {@code i} of a matrix. */
    public void addRow(int row, LuFactors lu, int i) {
        for (int k = start[row], end = k + used[row]; k < end; k++) {
            int c = 3 * body[k];
            lu.add(i, c, dx[k]);
            lu.add(i, c + 1, dy[k]);
            lu.add(i, c + 2, dAngle[k]);
        }
    }

    /** Adds a gradient, scaled, as column {@code j} of a matrix: what the row's force does to the bodies. */
    public void addColumn(int row, LuFactors lu, int j, double scale) {
        for (int k = start[row], end = k + used[row]; k < end; k++) {
            int c = 3 * body[k];
            lu.add(c, j, scale * dx[k]);
            lu.add(c + 1, j, scale * dy[k]);
            lu.add(c + 2, j, scale * dAngle[k]);
        }
    }

    /**
     * Tension before a guide of a string as a share of its first span's; 1 for an axis of anything else.
     *
     * @param rowForce [rows]
     * @param axisForce [axes]
     */
    public double chainShare(int axis, double[] rowForce, double[] axisForce) {
        double first = rowForce[firstNormal[axis]];
        double share = 1;
        for (int c = chained[axis]; c >= 0 && first > 0; c = chained[c]) {
            share += axisForce[c] / first;
        }
        return share;
    }

    /** Adds a unit force of the finger as column {@code j} of a matrix. */
    public void addFingerColumn(LuFactors lu, int j) {
        Mechanism.DriveData drive = mechanism.drive;
        int at = 3 * drive.body();
        lu.add(at, j, drive.fingerX());
        lu.add(at + 1, j, drive.fingerY());
        lu.add(at + 2, j, fingerArm());
    }

    /** Moment of a unit finger force about the lever's centre of mass, mm. */
    public double fingerArm() {
        Mechanism.DriveData drive = mechanism.drive;
        double px = armX(drive.body(), drive.pressX(), drive.pressY());
        double py = armY(drive.body(), drive.pressX(), drive.pressY());
        return px * drive.fingerY() - py * drive.fingerX();
    }
}
