package jackwork.motion.model;

import jackwork.geometry.Point;

/**
 * Holds point a of body A on point b of body B:
 * {@code x_A + R(θ_A) a − x_B − R(θ_B) b = 0}, two rows. Its friction is a moment of at most
 * µ r |R|, the friction circle (e.g. Beer and Johnston, Vector Mechanics for Engineers: Statics, ch. 8).
 */
public final class Pin extends Joint {

    public final int a;
    public final int b;
    final double ax;
    final double ay;
    final double bx;
    final double by;
    /** Of the rod, mm. */
    final double radius;
    /** Coefficient between rod and hole. */
    final double friction;

    Pin(String name, int a, int b, Point onA, Point onB, double radius, double friction) {
        super(name);
        this.a = a;
        this.b = b;
        this.ax = onA.x();
        this.ay = onA.y();
        this.bx = onB.x();
        this.by = onB.y();
        this.radius = radius;
        this.friction = friction;
    }

    @Override
    public int rows() {
        return 2;
    }

    @Override
    public int axes() {
        return radius * friction > 0 ? 1 : 0;
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double armAx = rows.armX(a, ax, ay);
        double armAy = rows.armY(a, ax, ay);
        double armBx = rows.armX(b, bx, by);
        double armBy = rows.armY(b, bx, by);
        rows.row(row, rows.x(a) + armAx - rows.x(b) - armBx);
        rows.block(row, a, 1, 0, -armAy);
        rows.block(row, b, -1, 0, armBy);
        rows.row(row + 1, rows.y(a) + armAy - rows.y(b) - armBy);
        rows.block(row + 1, a, 0, 1, armAx);
        rows.block(row + 1, b, 0, -1, -armBx);
        if (axes() > 0) {
            rows.axis(axis, radius * friction, row, row + 1);
            rows.block(rows.count + axis, a, 0, 0, 1);
            rows.block(rows.count + axis, b, 0, 0, -1);
        }
    }
}
