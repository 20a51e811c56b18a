package jackwork.motion.model;

import jackwork.geometry.Point;

/**
 * Holds a peg of body A on a straight line of body B: {@code n·(p_A − l_B) = 0}, n turning with B. The
 * line's ends stop the peg when its length is finite. Coulomb friction along the line.
 */
final class Slide extends Joint {

    final int a;
    final int b;
    private final double pegX;
    private final double pegY;
    private final double lineX;
    private final double lineY;
    private final double directionX;
    private final double directionY;
    private final double length;
    private final double friction;

    /**
     * @param line first point of the line in B
     * @param direction unit vector of the line in B as drawn
     * @param length of the line, from its first point, mm
     */
    Slide(String name, int a, int b, Point peg, Point line, Point direction, double length, double friction) {
        super(name);
        this.a = a;
        this.b = b;
        this.pegX = peg.x();
        this.pegY = peg.y();
        this.lineX = line.x();
        this.lineY = line.y();
        this.directionX = direction.x();
        this.directionY = direction.y();
        this.length = length;
        this.friction = friction;
    }

    @Override
    public int rows() {
        return Double.isFinite(length) ? 3 : 1;
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
        double tx = rows.armX(b, directionX, directionY);
        double ty = rows.armY(b, directionX, directionY);
        double px = rows.x(a) + rows.armX(a, pegX, pegY);
        double py = rows.y(a) + rows.armY(a, pegX, pegY);
        double fromX = px - rows.x(b) - rows.armX(b, lineX, lineY);
        double fromY = py - rows.y(b) - rows.armY(b, lineX, lineY);
        // The force on B acts where the peg is, not at the line's first point.
        rows.row(row, -fromX * ty + fromY * tx);
        rows.between(row, a, b, -ty, tx, px, py);
        if (rows() == 3) {
            double way = fromX * tx + fromY * ty;
            rows.row(row + 1, way);
            rows.between(row + 1, a, b, tx, ty, px, py);
            rows.row(row + 2, length - way);
            rows.between(row + 2, a, b, -tx, -ty, px, py);
        }
        if (friction > 0) {
            rows.axis(axis, friction, row, -1);
            rows.between(rows.count + axis, a, b, tx, ty, px, py);
        }
    }
}
