package jackwork.geometry;

/** A point or vector in the plane, mm. */
public record Point(double x, double y) {

    public static final Point ORIGIN = new Point(0, 0);

    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    public double dot(Point other) {
        return x * other.x + y * other.y;
    }

    /** z component of the cross product: positive when {@code other} lies counter-clockwise of this. */
    public double cross(Point other) {
        return x * other.y - y * other.x;
    }

    public double length() {
        return Math.hypot(x, y);
    }

    public double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** This vector turned counter-clockwise by {@code angle} radians about the origin. */
    public Point turned(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Point(x * cos - y * sin, x * sin + y * cos);
    }

    /** This point turned counter-clockwise by {@code angle} radians about {@code centre}. */
    public Point turnedAbout(Point centre, double angle) {
        return minus(centre).turned(angle).plus(centre);
    }

    public boolean isFinite() {
        return Double.isFinite(x) && Double.isFinite(y);
    }
}
