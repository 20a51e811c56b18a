package jackwork.motion.model;

import jackwork.geometry.Point;

/**
 * A straight spring between points of two bodies, {@code F = k (ℓ − ℓ₀)}; an elastic band when it
 * only pulls. k in µN/mm, ℓ in mm.
 */
public final class CoilSpring extends Spring {

    private final int a;
    private final int b;
    private final double ax;
    private final double ay;
    private final double bx;
    private final double by;
    private final double stiffness;
    private final double free;
    private final boolean pullsOnly;

    /** @param free length at which it bears nothing, mm */
    CoilSpring(String name, int a, int b, Point onA, Point onB, double stiffness, double free, boolean pullsOnly) {
        super(name);
        this.a = a;
        this.b = b;
        this.ax = onA.x();
        this.ay = onA.y();
        this.bx = onB.x();
        this.by = onB.y();
        this.stiffness = stiffness;
        this.free = free;
        this.pullsOnly = pullsOnly;
    }

    @Override
    void addForce(Rows rows, double[] force) {
        double armAx = rows.armX(a, ax, ay);
        double armAy = rows.armY(a, ax, ay);
        double armBx = rows.armX(b, bx, by);
        double armBy = rows.armY(b, bx, by);
        double dx = rows.x(b) + armBx - rows.x(a) - armAx;
        double dy = rows.y(b) + armBy - rows.y(a) - armAy;
        double length = Math.hypot(dx, dy);
        double stretch = length - free;
        if (length == 0 || (pullsOnly && stretch <= 0)) {
            return;
        }
        double fx = stiffness * stretch * dx / length;
        double fy = stiffness * stretch * dy / length;
        add(force, a, fx, fy, armAx, armAy);
        add(force, b, -fx, -fy, armBx, armBy);
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
        double dx = rows.x(b) + rows.armX(b, bx, by) - rows.x(a) - rows.armX(a, ax, ay);
        double dy = rows.y(b) + rows.armY(b, bx, by) - rows.y(a) - rows.armY(a, ax, ay);
        double stretch = Math.hypot(dx, dy) - free;
        return pullsOnly && stretch <= 0 ? 0 : 0.5 * stiffness * stretch * stretch;
    }
}
