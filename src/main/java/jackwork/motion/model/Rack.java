package jackwork.motion.model;

import jackwork.geometry.Point;

/**
 * Gear A rolls on the straight pitch line of rack B: with e from the gear's centre square to the
 * line and t = e turned left by a right angle (both fixed in B),
 * {@code r (θ_A − θ_B) + t·(c_A − l_B) = 0}, whole teeth passed over. Forces as in {@link Mesh}.
 */
public final class Rack extends Joint {

    private final int a;
    private final int b;
    private final double ax;
    private final double ay;
    private final double lineX;
    private final double lineY;
    private final double ex;
    private final double ey;
    private final double radius;
    private final double pitch;
    private final ToothAxes teeth;

    /**
     * @param centre centre of the gear in its body
     * @param line in B, the point of the pitch line that the gear touches as drawn
     * @param towards in B, unit vector from the gear's centre towards the line as drawn
     * @param radius pitch radius, mm
     */
    Rack(
            String name,
            int a,
            int b,
            Point centre,
            Point line,
            Point towards,
            double radius,
            int teeth,
            double pressureAngle,
            double friction) {
        super(name);
        this.a = a;
        this.b = b;
        this.ax = centre.x();
        this.ay = centre.y();
        this.lineX = line.x();
        this.lineY = line.y();
        this.ex = towards.x();
        this.ey = towards.y();
        this.radius = radius;
        this.pitch = 2 * Math.PI * radius / teeth;
        this.teeth = new ToothAxes(a, b, pressureAngle, pitch, friction);
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
        double towardX = rows.armX(b, ex, ey);
        double towardY = rows.armY(b, ex, ey);
        double tx = -towardY;
        double ty = towardX;
        double cx = rows.x(a) + rows.armX(a, ax, ay);
        double cy = rows.y(a) + rows.armY(a, ax, ay);
        double fromX = cx - rows.x(b) - rows.armX(b, lineX, lineY);
        double fromY = cy - rows.y(b) - rows.armY(b, lineX, lineY);
        double value = radius * (rows.angle(a) - rows.angle(b)) + tx * fromX + ty * fromY;
        rows.row(row, value - pitch * Math.rint(value / pitch));
        double atX = cx + radius * towardX;
        double atY = cy + radius * towardY;
        rows.between(row, a, b, tx, ty, atX, atY);
        teeth.evaluate(rows, row, axis, -towardX, -towardY, atX, atY);
    }
}
