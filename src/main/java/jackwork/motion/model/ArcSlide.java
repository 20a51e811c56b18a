package jackwork.motion.model;

/**
 * Holds a peg of body A on an arc of body B: {@code |p_A − c_B| − R = 0}. The arc's ends stop the peg.
 * Coulomb friction along the arc.
 */
final class ArcSlide extends PegInSlot {

    private final double radius;
    private final double middle;
    private final double half;

    /**
     * @param b centre of the arc
     * @param middle direction from the centre to the middle of the arc, in B as drawn, rad
     * @param half angle from the middle to either end, rad; π for a whole circle without ends
     */
    ArcSlide(String name, Anchor a, Anchor b, double radius, double middle, double half, double friction) {
        super(name, a, b, friction);
        this.radius = radius;
        this.middle = middle;
        this.half = half;
    }

    @Override
    boolean ends() {
        return half < Math.PI;
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double px = a.x(rows);
        double py = a.y(rows);
        double fromX = px - rows.x(b.body()) - b.armX(rows);
        double fromY = py - rows.y(b.body()) - b.armY(rows);
        double distance = Math.hypot(fromX, fromY);
        double nx = fromX / distance;
        double ny = fromY / distance;
        hold(rows, row, distance - radius, nx, ny, px, py);
        // Counter-clockwise along the arc, from B's own frame so that B's turning is taken off.
        if (ends()) {
            double ownX = rows.ownX(b.body(), fromX, fromY);
            double ownY = rows.ownY(b.body(), fromX, fromY);
            double turned = Math.IEEEremainder(Math.atan2(ownY, ownX) - middle, 2 * Math.PI);
            hold(rows, row + 1, radius * (half + turned), -ny, nx, px, py);
            hold(rows, row + 2, radius * (half - turned), ny, -nx, px, py);
        }
        rub(rows, row, axis, -ny, nx, px, py);
    }
}
