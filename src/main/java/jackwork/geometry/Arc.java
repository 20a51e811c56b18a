package jackwork.geometry;

/** The arc through three points. */
public final class Arc {

    private Arc() {}

    /** Its centre; the points must not stand in line. */
    public static Point centre(Point from, Point via, Point to) {
        Point a = via.minus(from);
        Point b = to.minus(from);
        double twice = 2 * a.cross(b);
        double aa = a.dot(a);
        double bb = b.dot(b);
        return from.plus(new Point((b.y() * aa - a.y() * bb) / twice, (a.x() * bb - b.x() * aa) / twice));
    }

    /** Angle from its first to its last point through the middle one, rad, counter-clockwise positive. */
    public static double span(Point centre, Point from, Point via, Point to) {
        double start = angle(from.minus(centre));
        double toVia = turn(angle(via.minus(centre)) - start);
        double toEnd = turn(angle(to.minus(centre)) - start);
        return toVia <= toEnd ? toEnd : toEnd - 2 * Math.PI;
    }

    /** Direction of a vector, rad. */
    public static double angle(Point direction) {
        return Math.atan2(direction.y(), direction.x());
    }

    /** An angle taken into [0, 2π). */
    private static double turn(double angle) {
        double turned = angle % (2 * Math.PI);
        return turned < 0 ? turned + 2 * Math.PI : turned;
    }
}
