package jackwork.motion.model;

import jackwork.geometry.Point;

/**
 * Gear A rolls on the straight pitch line of rack B: with e from the gear's centre square to the
 * line and t = e turned left by a right angle (both fixed in B),
 * {@code r (θ_A − θ_B) + t·(c_A − l_B) = 0}, whole teeth passed over. Forces as in {@link Mesh}.
 */
public final class Rack extends Joint {

    private final Anchor a;
    private final Anchor b;
    private final double ex;
    private final double ey;
    private final double radius;
    private final double pitch;
    private final ToothAxes teeth;

    /**
     * @param a centre of the gear
     * @param b the point of the pitch line that the gear touches as drawn
     * @param towards in B, unit vector from the gear's centre towards the line as drawn
     * @param radius pitch radius, mm
     */
    Rack(
            String name,
            Anchor a,
            Anchor b,
            Point towards,
            double radius,
            int teeth,
            double pressureAngle,
            double friction) {
        super(name);
        this.a = a;
        this.b = b;
        this.ex = towards.x();
        this.ey = towards.y();
        this.radius = radius;
        this.pitch = 2 * Math.PI * radius / teeth;
        this.teeth = new ToothAxes(a.body(), b.body(), pressureAngle, pitch, friction);
    }

    @Override
    public int rows() {
        return 1;
    }

    @Override
    public int axes() {
        return teeth.count();
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double towardX = rows.armX(b.body(), ex, ey);
        double towardY = rows.armY(b.body(), ex, ey);
        double tx = -towardY;
        double ty = towardX;
        double cx = a.x(rows);
        double cy = a.y(rows);
        double fromX = cx - rows.x(b.body()) - b.armX(rows);
        double fromY = cy - rows.y(b.body()) - b.armY(rows);
        double value = radius * (rows.angle(a.body()) - rows.angle(b.body())) + tx * fromX + ty * fromY;
        rows.row(row, value - pitch * Math.rint(value / pitch));
        double atX = cx + radius * towardX;
        double atY = cy + radius * towardY;
        rows.between(row, a.body(), b.body(), tx, ty, atX, atY);
        teeth.evaluate(rows, row, axis, -towardX, -towardY, atX, atY);
    }
}
