package jackwork.geometry;

/** Where a body is: turned by {@code angle} radians about its own origin, which then stands at (x, y) mm. */
public record Pose(double x, double y, double angle) {

    public static final Pose REST = new Pose(0, 0, 0);

    /** Turned about another point than its origin. */
    public static Pose about(Point pivot, double angle) {
        Point shift = pivot.minus(pivot.turned(angle));
        return new Pose(shift.x(), shift.y(), angle);
    }

    public Point apply(Point local) {
        return local.turned(angle).plus(new Point(x, y));
    }
}
