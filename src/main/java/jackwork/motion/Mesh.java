package jackwork.motion;

/**
 * Two gears whose teeth mesh, on centres that other joints hold at the right distance. With ψ the
 * direction of the line of centres, from A to B,
 * <pre>
 *   external   r_A (θ_A − ψ) + r_B (θ_B − ψ) = 0
 *   internal   r_A (θ_A − ψ) − r_B (θ_B − ψ) = 0     (A runs inside B)
 * </pre>
 * all angles from the position drawn, and whole teeth passed over: the mesh repeats itself every
 * circular pitch. The row's force is the tangential tooth force at the pitch point; an axis carries
 * what drives the gears apart, tan(pressure angle) times as much (any text on gears). Tooth friction is
 * a moment between the gears of µ ρ |F|: with the mean loss π µ (1/z_A ± 1/z_B)/2 of the power passed
 * (e.g. Niemann and Winter, Maschinenelemente II, at a contact ratio near 1.5, from memory) ρ is
 * a quarter of the circular pitch.
 */
final class Mesh extends Joint {

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
    private final double spread;
    private final double friction;
    private final double drawn;

    /**
     * @param ax centre of gear A in its body
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
            double ax,
            double ay,
            double bx,
            double by,
            double radiusA,
            double radiusB,
            int teethA,
            double pressureAngle,
            double friction,
            double drawn) {
        super(name);
        this.a = a;
        this.b = b;
        this.ax = ax;
        this.ay = ay;
        this.bx = bx;
        this.by = by;
        this.radiusA = radiusA;
        this.radiusB = radiusB;
        this.pitch = 2 * Math.PI * radiusA / teethA;
        this.spread = Math.tan(pressureAngle);
        this.friction = friction;
        this.drawn = drawn;
    }

    @Override
    int rows() {
        return 1;
    }

    @Override
    int axes() {
        return friction > 0 ? 2 : 1;
    }

    @Override
    void evaluate(Rows rows, int row, int axis) {
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
        rows.push(row, a, tx, ty, atX, atY);
        rows.push(row, b, -tx, -ty, atX, atY);
        rows.axis(axis, Rows.AxisKind.FOLLOWS, spread, spread, row, -1, -1);
        rows.push(rows.count + axis, a, -side * ex, -side * ey, atX, atY);
        rows.push(rows.count + axis, b, side * ex, side * ey, atX, atY);
        if (friction > 0) {
            rows.axis(axis + 1, friction * pitch / 4, row, -1);
            rows.block(rows.count + axis + 1, a, 0, 0, 1);
            rows.block(rows.count + axis + 1, b, 0, 0, -1);
        }
    }
}
