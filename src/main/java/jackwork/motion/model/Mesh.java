package jackwork.motion.model;

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

    private final Anchor a;
    private final Anchor b;
    private final double radiusA;
    /** Negative for an internal gear. */
    private final double radiusB;

    private final double pitch;
    private final ToothAxes teeth;
    private final double drawn;

    /**
     * @param a centre of gear A
     * @param b centre of gear B
     * @param radiusA operating pitch radius, mm
     * @param radiusB likewise, negative when A runs inside B
     * @param teethA number of teeth of A
     * @param pressureAngle operating, rad
     * @param drawn direction from A's centre to B's as drawn, rad
     */
    Mesh(
            String name,
            Anchor a,
            Anchor b,
            double radiusA,
            double radiusB,
            int teethA,
            double pressureAngle,
            double friction,
            double drawn) {
        super(name);
        this.a = a;
        this.b = b;
        this.radiusA = radiusA;
        this.radiusB = radiusB;
        this.pitch = 2 * Math.PI * radiusA / teethA;
        this.teeth = new ToothAxes(a.body(), b.body(), pressureAngle, pitch, friction);
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
        double cax = a.x(rows);
        double cay = a.y(rows);
        double cbx = b.x(rows);
        double cby = b.y(rows);
        double distance = Math.hypot(cbx - cax, cby - cay);
        double ex = (cbx - cax) / distance;
        double ey = (cby - cay) / distance;
        double psi = Math.atan2(ey, ex) - drawn;
        double value = radiusA * (rows.angle(a.body()) - psi) + radiusB * (rows.angle(b.body()) - psi);
        rows.row(row, value - pitch * Math.rint(value / pitch));
        // The pitch point: outside between the centres, or beyond A's side away from B's centre.
        double side = radiusB > 0 ? 1 : -1;
        double atX = cax + side * radiusA * ex;
        double atY = cay + side * radiusA * ey;
        double tx = -side * ey;
        double ty = side * ex;
        rows.between(row, a.body(), b.body(), tx, ty, atX, atY);
        teeth.evaluate(rows, row, axis, -side * ex, -side * ey, atX, atY);
    }
}
