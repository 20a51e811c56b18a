package jackwork.motion.model;

/**
 * A straight spring between points of two bodies, {@code F = k (ℓ − ℓ₀)}; an elastic band when it
 * only pulls. k in µN/mm, ℓ in mm.
 */
public final class CoilSpring extends Spring {

    private final Anchor a;
    private final Anchor b;
    private final double stiffness;
    private final double free;
    private final boolean pullsOnly;

    /** @param free length at which it bears nothing, mm */
    CoilSpring(String name, Anchor a, Anchor b, double stiffness, double free, boolean pullsOnly) {
        super(name);
        this.a = a;
        this.b = b;
        this.stiffness = stiffness;
        this.free = free;
        this.pullsOnly = pullsOnly;
    }

    @Override
    void addForce(Rows rows, double[] force) {
        double armAx = a.armX(rows);
        double armAy = a.armY(rows);
        double armBx = b.armX(rows);
        double armBy = b.armY(rows);
        double dx = rows.x(b.body()) + armBx - rows.x(a.body()) - armAx;
        double dy = rows.y(b.body()) + armBy - rows.y(a.body()) - armAy;
        double length = Math.hypot(dx, dy);
        double stretch = length - free;
        if (length == 0 || (pullsOnly && stretch <= 0)) {
            return;
        }
        double fx = stiffness * stretch * dx / length;
        double fy = stiffness * stretch * dy / length;
        add(force, a.body(), fx, fy, armAx, armAy);
        add(force, b.body(), -fx, -fy, armBx, armBy);
    }

    private static void add(double[] force, int body, double fx, double fy, double armX, double armY) {
        if (body >= 0) {
            force[3 * body] += fx;
            force[3 * body + 1] += fy;
            force[3 * body + 2] += armX * fy - armY * fx;
        }
    }

    @Override
    double energy(Rows rows) {
        double dx = b.x(rows) - rows.x(a.body()) - a.armX(rows);
        double dy = b.y(rows) - rows.y(a.body()) - a.armY(rows);
        double stretch = Math.hypot(dx, dy) - free;
        return pullsOnly && stretch <= 0 ? 0 : 0.5 * stiffness * stretch * stretch;
    }
}
