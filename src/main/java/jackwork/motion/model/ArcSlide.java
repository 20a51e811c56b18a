package jackwork.motion.model;

import jackwork.geometry.Point;

/**
 * Holds a peg of body A on an arc of body B: {@code |p_A − c_B| − R = 0}. The arc's ends stop the peg.
 * Coulomb friction along the arc.
 */
final class ArcSlide extends Joint {

    private final int a;
    private final int b;
    private final double pegX;
    private final double pegY;
    private final double centreX;
    private final double centreY;
    private final double radius;
    private final double middle;
    private final double half;
    private final double friction;

    /**
     * @param centre of the arc in B
     * @param middle direction from the centre to the middle of the arc, in B as drawn, rad
     * @param half angle from the middle to either end, rad; π for a whole circle without ends
     */
    ArcSlide(
            String name,
            int a,
            int b,
            Point peg,
            Point centre,
            double radius,
            double middle,
            double half,
            double friction) {
        super(name);
        this.a = a;
        this.b = b;
        this.pegX = peg.x();
        this.pegY = peg.y();
        this.centreX = centre.x();
        this.centreY = centre.y();
        this.radius = radius;
        this.middle = middle;
        this.half = half;
        this.friction = friction;
    }

    @Override
    public int rows() {
        return half < Math.PI ? 3 : 1;
    }

    @Override
    public int axes() {
        return friction > 0 ? 1 : 0;
    }

    @Override
    public boolean pushesOnly(int row) {
        return row > 0;
    }

    @Override
    String what(int row) {
        return row == 0 ? name() : "the end of slot " + name();
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double px = rows.x(a) + rows.armX(a, pegX, pegY);
        double py = rows.y(a) + rows.armY(a, pegX, pegY);
        double fromX = px - rows.x(b) - rows.armX(b, centreX, centreY);
        double fromY = py - rows.y(b) - rows.armY(b, centreX, centreY);
        double distance = Math.hypot(fromX, fromY);
        double nx = fromX / distance;
        double ny = fromY / distance;
        rows.row(row, distance - radius);
        rows.between(row, a, b, nx, ny, px, py);
        // Counter-clockwise along the arc, from B's own frame so that B's turning is taken off.
        if (rows() == 3) {
            double ownX = rows.ownX(b, fromX, fromY);
            double ownY = rows.ownY(b, fromX, fromY);
            double turned = Math.IEEEremainder(Math.atan2(ownY, ownX) - middle, 2 * Math.PI);
            end(rows, row + 1, radius * (half + turned), -ny, nx, px, py);
            end(rows, row + 2, radius * (half - turned), ny, -nx, px, py);
        }
        if (friction > 0) {
            rows.axis(axis, friction, row, -1);
            rows.between(rows.count + axis, a, b, -ny, nx, px, py);
        }
    }

    private void end(Rows rows, int row, double way, double tx, double ty, double px, double py) {
        rows.row(row, way);
        rows.between(row, a, b, tx, ty, px, py);
    }
}
