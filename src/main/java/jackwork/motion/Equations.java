package jackwork.motion;

/**
 * The equations of a {@link Mechanism} at a pose: joint closure, its Jacobian, and the columns that
 * carry joint and finger forces to the bodies. Works on primitive arrays that it owns; one per thread.
 *
 * <p>With q the bodies' coordinates, u the stroke and R(θ) the rotation by θ:
 * <pre>
 *   pin    x_A + R(θ_A) a − x_B − R(θ_B) b = 0                    (two rows)
 *   slide  n·(x_A + R(θ_A) p − x_B − R(θ_B) l) = 0, n = R(θ_B) n_B
 *   lever  θ_L − turn · u = 0                                      (last row)
 * </pre>
 */
final class Equations {

    final Mechanism mechanism;
    final int n;
    /** Closure, mm (last row rad), [rows]. */
    final double[] closure;

    private final double[] cos;
    private final double[] sin;

    Equations(Mechanism mechanism) {
        this.mechanism = mechanism;
        this.n = mechanism.coordinates();
        this.closure = new double[mechanism.jointEquations() + 1];
        this.cos = new double[mechanism.bodyCount()];
        this.sin = new double[mechanism.bodyCount()];
    }

    /** Takes the sines and cosines of a pose; all other calls refer to the pose last given here. */
    void at(double[] q) {
        for (int i = 0; i < cos.length; i++) {
            double angle = q[3 * i + 2];
            cos[i] = Math.cos(angle);
            sin[i] = Math.sin(angle);
        }
    }

    /** Turned x of a point of a body (from its centre). */
    double armX(int body, double x, double y) {
        return body < 0 ? x : cos[body] * x - sin[body] * y;
    }

    /** Turned y of a point of a body (from its centre). */
    double armY(int body, double x, double y) {
        return body < 0 ? y : sin[body] * x + cos[body] * y;
    }

    static double x(double[] q, int body) {
        return body < 0 ? 0 : q[3 * body];
    }

    static double y(double[] q, int body) {
        return body < 0 ? 0 : q[3 * body + 1];
    }

    static double angle(double[] q, int body) {
        return body < 0 ? 0 : q[3 * body + 2];
    }

    /** Fills {@link #closure}; returns its largest absolute joint row, mm. */
    double close(double[] q, double u) {
        int r = 0;
        for (Mechanism.PinData pin : mechanism.pins) {
            closure[r++] = x(q, pin.a())
                    + armX(pin.a(), pin.ax(), pin.ay())
                    - x(q, pin.b())
                    - armX(pin.b(), pin.bx(), pin.by());
            closure[r++] = y(q, pin.a())
                    + armY(pin.a(), pin.ax(), pin.ay())
                    - y(q, pin.b())
                    - armY(pin.b(), pin.bx(), pin.by());
        }
        for (Mechanism.SlideData slide : mechanism.slides) {
            double dx = x(q, slide.a())
                    + armX(slide.a(), slide.pegX(), slide.pegY())
                    - x(q, slide.b())
                    - armX(slide.b(), slide.lineX(), slide.lineY());
            double dy = y(q, slide.a())
                    + armY(slide.a(), slide.pegX(), slide.pegY())
                    - y(q, slide.b())
                    - armY(slide.b(), slide.lineX(), slide.lineY());
            closure[r++] = dx * normalX(slide) + dy * normalY(slide);
        }
        double most = 0;
        for (int i = 0; i < r; i++) {
            most = Math.max(most, Math.abs(closure[i]));
        }
        Mechanism.DriveData drive = mechanism.drive;
        closure[r] = angle(q, drive.body()) - drive.turn() * u;
        // A rad counts as the mm it moves a point 100 mm away.
        return Math.max(most, 100 * Math.abs(closure[r]));
    }

    /** x of a slide's normal, in space. */
    double normalX(Mechanism.SlideData slide) {
        return armX(slide.b(), -slide.directionY(), slide.directionX());
    }

    double normalY(Mechanism.SlideData slide) {
        return armY(slide.b(), -slide.directionY(), slide.directionX());
    }

    /** Adds the closure's Jacobian, rows × coordinates, into {@code lu}, the lever's row last. */
    void addJacobian(double[] q, LuFactors lu) {
        addJoints(q, lu, false);
        lu.add(mechanism.jointEquations(), 3 * mechanism.drive.body() + 2, 1);
    }

    /**
     * Adds, column by column, what a unit of each joint force does to the bodies: the transposed
     * joint rows. Row = coordinate, column = joint equation; the last column is the finger's.
     */
    void addForceColumns(double[] q, LuFactors lu) {
        addJoints(q, lu, true);
        Mechanism.DriveData drive = mechanism.drive;
        int column = mechanism.jointEquations();
        int at = 3 * drive.body();
        lu.add(at, column, drive.fingerX());
        lu.add(at + 1, column, drive.fingerY());
        lu.add(at + 2, column, fingerArm());
    }

    /** Moment of a unit finger force about the lever's centre of mass, mm. */
    double fingerArm() {
        Mechanism.DriveData drive = mechanism.drive;
        double px = armX(drive.body(), drive.pressX(), drive.pressY());
        double py = armY(drive.body(), drive.pressX(), drive.pressY());
        return px * drive.fingerY() - py * drive.fingerX();
    }

    private void addJoints(double[] q, LuFactors lu, boolean transposed) {
        int r = 0;
        for (Mechanism.PinData pin : mechanism.pins) {
            double ax = armX(pin.a(), pin.ax(), pin.ay());
            double ay = armY(pin.a(), pin.ax(), pin.ay());
            double bx = armX(pin.b(), pin.bx(), pin.by());
            double by = armY(pin.b(), pin.bx(), pin.by());
            add(lu, transposed, r, pin.a(), 1, 0, -ay);
            add(lu, transposed, r++, pin.b(), -1, 0, by);
            add(lu, transposed, r, pin.a(), 0, 1, ax);
            add(lu, transposed, r++, pin.b(), 0, -1, -bx);
        }
        for (Mechanism.SlideData slide : mechanism.slides) {
            double nx = normalX(slide);
            double ny = normalY(slide);
            double px = armX(slide.a(), slide.pegX(), slide.pegY());
            double py = armY(slide.a(), slide.pegX(), slide.pegY());
            // The force on B acts where the peg is, not at the line's first point.
            double bx = x(q, slide.a()) + px - x(q, slide.b());
            double by = y(q, slide.a()) + py - y(q, slide.b());
            add(lu, transposed, r, slide.a(), nx, ny, px * ny - py * nx);
            add(lu, transposed, r++, slide.b(), -nx, -ny, -(bx * ny - by * nx));
        }
    }

    private static void add(LuFactors lu, boolean transposed, int row, int body, double dx, double dy, double dAngle) {
        if (body < 0) {
            return;
        }
        int c = 3 * body;
        if (transposed) {
            lu.add(c, row, dx);
            lu.add(c + 1, row, dy);
            lu.add(c + 2, row, dAngle);
        } else {
            lu.add(row, c, dx);
            lu.add(row, c + 1, dy);
            lu.add(row, c + 2, dAngle);
        }
    }

    /** Weights and constant loads on every coordinate, µN and µN·mm, into {@code force}. */
    void loads(double[] force) {
        for (int i = 0; i < mechanism.bodies.length; i++) {
            double mass = mechanism.bodies[i].mass();
            force[3 * i] = mass * mechanism.gravityX;
            force[3 * i + 1] = mass * mechanism.gravityY;
            force[3 * i + 2] = 0;
        }
        for (Mechanism.LoadData load : mechanism.loads) {
            int i = load.body();
            double px = armX(i, load.x(), load.y());
            double py = armY(i, load.x(), load.y());
            force[3 * i] += load.forceX();
            force[3 * i + 1] += load.forceY();
            force[3 * i + 2] += px * load.forceY() - py * load.forceX() + load.moment();
        }
    }
}
