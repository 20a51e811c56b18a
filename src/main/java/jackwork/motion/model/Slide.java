package jackwork.motion.model;

import jackwork.geometry.Point;

/**
 * Holds a peg of body A on a straight line of body B: {@code n·(p_A − l_B) = 0}, n turning with B. The
 * line's ends stop the peg when its length is finite. Coulomb friction along the line.
 */
final class Slide extends PegInSlot {

    private final double directionX;
    private final double directionY;
    private final double length;

    /**
     * @param b first point of the line
     * @param direction unit vector of the line in B as drawn
     * @param length of the line, from its first point, mm
     */
    Slide(String name, Anchor a, Anchor b, Point direction, double length, double friction) {
        super(name, a, b, friction);
        this.directionX = direction.x();
        this.directionY = direction.y();
        this.length = length;
    }

    @Override
    boolean ends() {
        return Double.isFinite(length);
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double tx = rows.armX(b.body(), directionX, directionY);
        double ty = rows.armY(b.body(), directionX, directionY);
        double px = a.x(rows);
        double py = a.y(rows);
        double fromX = px - rows.x(b.body()) - b.armX(rows);
        double fromY = py - rows.y(b.body()) - b.armY(rows);
        // The force on B acts where the peg is, not at the line's first point.
        hold(rows, row, -fromX * ty + fromY * tx, -ty, tx, px, py);
        if (ends()) {
            double way = fromX * tx + fromY * ty;
            hold(rows, row + 1, way, tx, ty, px, py);
            hold(rows, row + 2, length - way, -tx, -ty, px, py);
        }
        rub(rows, row, axis, tx, ty, px, py);
    }
}
