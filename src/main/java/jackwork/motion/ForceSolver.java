package jackwork.motion;

/**
 * Real forces at a pose: what pins and slots bear, and what the finger must push, with dry friction
 * against the direction of motion. One per thread; allocates nothing after construction.
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

    private static final int MOST_ITERATIONS = 40;
    /** A joint that turns or slides less than this per unit of stroke (rad, mm) has no sense of sliding. */
    private static final double STILL = 1e-9;

    private final Mechanism mechanism;
    private final Equations equations;
    private final int n;
    private final LuFactors factors;
    private final double[] loads;
    private final double[] force;
    private final double[] change;
    private final double[] kept;
    private final double[] sliding;
    private double lockShare;
    private double determinantShare;

    public ForceSolver(Mechanism mechanism) {
        this.mechanism = mechanism;
        this.equations = new Equations(mechanism);
        this.n = mechanism.coordinates();
        this.factors = new LuFactors(n);
        this.loads = new double[n];
        this.force = new double[n];
        this.change = new double[n];
        this.kept = new double[n];
        this.sliding = new double[mechanism.pins.length + mechanism.slides.length];
    }

    /**
     * Solves at the pose of {@code poses}.
     *
     * @param frictionScale 1 for the mechanism's own friction, 0 for none
     * @return false when it locks by friction: {@link #lockShare} then says at which share of it
     */
    public boolean solve(PoseSolver poses, Direction direction, double frictionScale) {
        double[] pose = poses.pose();
        equations.at(pose);
        equations.loads(loads);
        senses(pose, poses.velocity(), direction);
        lockShare = Double.NaN;
        if (!newton(pose, 0)) {
            lockShare = 0;
            return false;
        }
        int freeSign = factors.determinantSign();
        double freeLog = factors.logAbsDeterminant();
        determinantShare = 1;
        if (frictionScale == 0) {
            return true;
        }
        if (newton(pose, frictionScale) && factors.determinantSign() == freeSign && steady(pose, frictionScale)) {
            determinantShare = Math.exp(factors.logAbsDeterminant() - freeLog);
            return true;
        }
        return followFriction(pose, frictionScale, freeSign, freeLog);
    }

    /** Brings friction in step by step; the first share at which the determinant turns is the lock. */
    private boolean followFriction(double[] pose, double scale, int freeSign, double freeLog) {
        newton(pose, 0);
        double low = 0;
        double step = 1.0 / 16;
        while (low < 1) {
            double next = Math.min(1, low + step);
            System.arraycopy(force, 0, kept, 0, n);
            if (newton(pose, next * scale) && factors.determinantSign() == freeSign) {
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
    private boolean steady(double[] pose, double scale) {
        int sign = factors.determinantSign();
        for (int k = 1; k < 4; k++) {
            assemble(pose, scale * k / 4);
            if (!factors.factor() || factors.determinantSign() != sign) {
                return false;
            }
        }
        assemble(pose, scale);
        return factors.factor();
    }

    /** Newton at one measure of friction, from the present forces; leaves the last matrix factored. */
    private boolean newton(double[] pose, double scale) {
        for (int k = 0; k < MOST_ITERATIONS; k++) {
            assemble(pose, scale);
            if (!factors.factor()) {
                return false;
            }
            // f is of degree one in λ, so Newton's step is simply: matrix · λ_new = −g.
            double size = 0;
            for (int i = 0; i < n; i++) {
                change[i] = -loads[i];
            }
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
            if (scale == 0 || moved <= 1e-14 * size) {
                return true;
            }
            if (k > 12 && moved <= 1e-12 * size) {
                return true;
            }
        }
        return false;
    }

    private void assemble(double[] pose, double scale) {
        factors.clear();
        equations.addForceColumns(pose, factors);
        if (scale == 0) {
            return;
        }
        for (int p = 0; p < mechanism.pins.length; p++) {
            Mechanism.PinData pin = mechanism.pins[p];
            double fx = force[2 * p];
            double fy = force[2 * p + 1];
            double size = Math.hypot(fx, fy);
            if (size == 0 || sliding[p] == 0) {
                continue;
            }
            double moment = -sliding[p] * scale * pin.friction() * pin.radius() / size;
            addMoment(pin.a(), 2 * p, moment * fx, moment * fy);
            addMoment(pin.b(), 2 * p, -moment * fx, -moment * fy);
        }
        for (int s = 0; s < mechanism.slides.length; s++) {
            addSlideFriction(pose, s, scale);
        }
    }

    private void addMoment(int body, int column, double dx, double dy) {
        if (body >= 0) {
            factors.add(3 * body + 2, column, dx);
            factors.add(3 * body + 2, column + 1, dy);
        }
    }

    private void addSlideFriction(double[] pose, int s, double scale) {
        Mechanism.SlideData slide = mechanism.slides[s];
        int column = 2 * mechanism.pins.length + s;
        double sense = sliding[mechanism.pins.length + s];
        double normal = Math.signum(force[column]);
        if (sense == 0 || normal == 0) {
            return;
        }
        double size = -sense * scale * slide.friction() * normal;
        double tx = equations.armX(slide.b(), slide.directionX(), slide.directionY()) * size;
        double ty = equations.armY(slide.b(), slide.directionX(), slide.directionY()) * size;
        double px = equations.armX(slide.a(), slide.pegX(), slide.pegY());
        double py = equations.armY(slide.a(), slide.pegX(), slide.pegY());
        addForce(slide.a(), column, tx, ty, px, py);
        double bx = Equations.x(pose, slide.a()) + px - Equations.x(pose, slide.b());
        double by = Equations.y(pose, slide.a()) + py - Equations.y(pose, slide.b());
        addForce(slide.b(), column, -tx, -ty, bx, by);
    }

    private void addForce(int body, int column, double fx, double fy, double armX, double armY) {
        if (body >= 0) {
            factors.add(3 * body, column, fx);
            factors.add(3 * body + 1, column, fy);
            factors.add(3 * body + 2, column, armX * fy - armY * fx);
        }
    }

    /** The sense in which each pin turns (A against B) and each peg slides along its slot. */
    private void senses(double[] pose, double[] velocity, Direction direction) {
        for (int p = 0; p < mechanism.pins.length; p++) {
            Mechanism.PinData pin = mechanism.pins[p];
            double turning = Equations.angle(velocity, pin.a()) - Equations.angle(velocity, pin.b());
            sliding[p] = Math.abs(turning) < STILL ? 0 : direction.sign() * Math.signum(turning);
        }
        for (int s = 0; s < mechanism.slides.length; s++) {
            double speed = slidingSpeed(pose, velocity, mechanism.slides[s]);
            sliding[mechanism.pins.length + s] = Math.abs(speed) < STILL ? 0 : direction.sign() * Math.signum(speed);
        }
    }

    private double slidingSpeed(double[] pose, double[] velocity, Mechanism.SlideData slide) {
        double tx = equations.armX(slide.b(), slide.directionX(), slide.directionY());
        double ty = equations.armY(slide.b(), slide.directionX(), slide.directionY());
        double px = equations.armX(slide.a(), slide.pegX(), slide.pegY());
        double py = equations.armY(slide.a(), slide.pegX(), slide.pegY());
        double bx = Equations.x(pose, slide.a()) + px - Equations.x(pose, slide.b());
        double by = Equations.y(pose, slide.a()) + py - Equations.y(pose, slide.b());
        double turnA = Equations.angle(velocity, slide.a());
        double turnB = Equations.angle(velocity, slide.b());
        double vx = Equations.x(velocity, slide.a()) - turnA * py - Equations.x(velocity, slide.b()) + turnB * by;
        double vy = Equations.y(velocity, slide.a()) + turnA * px - Equations.y(velocity, slide.b()) - turnB * bx;
        return vx * tx + vy * ty;
    }

    /** What the finger pushes along its direction, µN; negative when it would have to hold back. */
    public double fingerForce() {
        return force[n - 1];
    }

    /** x of the force that body B puts on body A at a pin, µN. */
    public double pinForceX(int pin) {
        return force[2 * pin];
    }

    /** y of the force that body B puts on body A at a pin, µN. */
    public double pinForceY(int pin) {
        return force[2 * pin + 1];
    }

    /** Force across the slot on the peg's body, µN, positive along the slot's left-hand normal. */
    public double slideForce(int slide) {
        return force[2 * mechanism.pins.length + slide];
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
