package jackwork.motion.model;

import jackwork.geometry.Point;

/**
 * Two gears whose teeth mesh, on centres that other joints hold at the right distance. With ψ the
 * direction of the line of centres, from A to B,
 * <pre>
 *   external   r_A (θ_A − ψ) + r_B (θ_B − ψ) = 0
 *   internal   r_A (θ_A − ψ) − r_B (θ_B − ψ) = 0     (A runs inside B)
 * </pre>
 * all angles from the position drawn, and whole teeth passed over: the mesh repeats itself every
 * circular pitch. The row's force is the tangential tooth force at the pitch point; {@link ToothAxes} adds the rest.
 */
public final class Mesh extends Joint {

    private final int a;
    private final int b;
    private final double ax;
    private final double ay;
    private final double bx;
    private final double by;
    private final double radiusA;
    /** Negative for an internal gear. */
    private final double radiusB;

    private final double pitch;
    private final ToothAxes teeth;
    private final double drawn;

    /**
     * @param centreA centre of gear A in its body
     * @param radiusA operating pitch radius, mm
     * @param radiusB likewise, negative when A runs inside B
     * @param teethA number of teeth of A
     * @param pressureAngle operating, rad
     * @param drawn direction from A's centre to B's as drawn, rad
     */
    Mesh(
            String name,
            int a,
            int b,
            Point centreA,
            Point centreB,
            double radiusA,
            double radiusB,
            int teethA,
            double pressureAngle,
            double friction,
            double drawn) {
        super(name);
        this.a = a;
        this.b = b;
        this.ax = centreA.x();
        this.ay = centreA.y();
        this.bx = centreB.x();
        this.by = centreB.y();
        this.radiusA = radiusA;
        this.radiusB = radiusB;
        this.pitch = 2 * Math.PI * radiusA / teethA;
        this.teeth = new ToothAxes(a, b, pressureAngle, pitch, friction);
        this.drawn = drawn;
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
        double cax = rows.x(a) + rows.armX(a, ax, ay);
        double cay = rows.y(a) + rows.armY(a, ax, ay);
        double cbx = rows.x(b) + rows.armX(b, bx, by);
        double cby = rows.y(b) + rows.armY(b, bx, by);
        double distance = Math.hypot(cbx - cax, cby - cay);
        double ex = (cbx - cax) / distance;
        double ey = (cby - cay) / distance;
        double psi = Math.atan2(ey, ex) - drawn;
        double value = radiusA * (rows.angle(a) - psi) + radiusB * (rows.angle(b) - psi);
        rows.row(row, value - pitch * Math.rint(value / pitch));
        // The pitch point: outside between the centres, or beyond A's side away from B's centre.
        double side = radiusB > 0 ? 1 : -1;
        double atX = cax + side * radiusA * ex;
        double atY = cay + side * radiusA * ey;
        double tx = -side * ey;
        double ty = side * ex;
        rows.between(row, a, b, tx, ty, atX, atY);
        teeth.evaluate(rows, row, axis, -side * ex, -side * ey, atX, atY);
    }
}
