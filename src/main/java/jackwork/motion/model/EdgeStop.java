package jackwork.motion.model;

/**
 * The end of a turning body's way, where it meets an edge of what it turns against: a row that only pushes, square to that
 * edge. Friction along it is left out: what turns about a pivot hardly slides there, and where it might wedge no stop is
 * counted. The gap is reckoned from the angle: mm at the edge for what is left of the way, exact as the gap closes.
 */
final class EdgeStop extends Joint {

    private final int turning;
    private final Anchor edge;
    private final double outX;
    private final double outY;
    /** mm a rad, signed: what the gap loses when the body turns counter-clockwise. */
    private final double loses;

    private final double angle;
    private final double restitution;

    /**
     * @param edge where they meet, on the standing body
     * @param outX out of the standing body's wood there, unit, in its frame as drawn
     * @param loses mm the gap loses for each rad that the body turns counter-clockwise; negative where it opens
     * @param angle of the turning body against the other when they meet, rad, 0 as drawn
     */
    EdgeStop(
            String name,
            int turning,
            Anchor edge,
            double outX,
            double outY,
            double loses,
            double angle,
            double restitution) {
        super(name);
        this.turning = turning;
        this.edge = edge;
        this.outX = outX;
        this.outY = outY;
        this.loses = loses;
        this.angle = angle;
        this.restitution = restitution;
    }

    @Override
    public int rows() {
        return 1;
    }

    @Override
    public boolean pushesOnly(int row) {
        return true;
    }

    @Override
    public double restitution() {
        return restitution;
    }

    @Override
    String what(int row) {
        return "stop " + name();
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        int standing = edge.body();
        double x = edge.x(rows);
        double y = edge.y(rows);
        double nx = rows.armX(standing, outX, outY);
        double ny = rows.armY(standing, outX, outY);
        rows.row(row, loses * (angle - (rows.angle(turning) - rows.angle(standing))));
        rows.between(row, turning, standing, nx, ny, x, y);
    }
}
