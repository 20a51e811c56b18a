package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * One subpath, flattened: page mm, y down from the page's upper left corner.
 *
 * @param points no two neighbours alike, the first not repeated at the end of a closed one
 * @param curved made of arcs and curves alone, so that it may be a circle
 */
record Contour(List<Point> points, boolean closed, boolean curved) {

    /**
     * The circle that this is, if it is one: all points within the flattening tolerance of it, or within
     * what four Bézier curves differ from a circle (2.73e-4 of the radius), and once round.
     */
    Optional<Circle> circle() {
        if (!closed || !curved || points.size() < 6) {
            return Optional.empty();
        }
        Circle fit = fit();
        double tolerance = Trace.TOLERANCE + 3e-4 * fit.radius();
        boolean near = points.stream().allMatch(p -> Math.abs(p.distance(fit.centre()) - fit.radius()) <= tolerance);
        double turns = Math.abs(area()) / (Math.PI * fit.radius() * fit.radius());
        return near && turns > 0.7 && turns < 1.3 ? Optional.of(fit) : Optional.empty();
    }

    /** Signed area, mm². */
    double area() {
        return area(points);
    }

    /** Signed area of a closed line, the square of its unit; positive counter-clockwise with y up. */
    static double area(List<Point> points) {
        Point base = points.get(0);
        double twice = 0;
        for (int i = 2; i < points.size(); i++) {
            twice += points.get(i - 1).minus(base).cross(points.get(i).minus(base));
        }
        return twice / 2;
    }

    /**
     * Least squares of x² + y² + 2px + 2qy + s over the points (Kåsa's circle fit), taken about their
     * mean, where it falls into two equations: [Suu Suv; Suv Svv](u, v) = ½(Suuu + Suvv, Svvv + Suuv).
     */
    private Circle fit() {
        Point sum = points.stream().reduce(Point.ORIGIN, Point::plus);
        Point mean = sum.times(1.0 / points.size());
        double uu = 0;
        double uv = 0;
        double vv = 0;
        double right = 0;
        double up = 0;
        for (Point point : points) {
            Point w = point.minus(mean);
            uu += w.x() * w.x();
            uv += w.x() * w.y();
            vv += w.y() * w.y();
            right += w.x() * w.dot(w) / 2;
            up += w.y() * w.dot(w) / 2;
        }
        double det = uu * vv - uv * uv;
        Point centre = det == 0 ? Point.ORIGIN : new Point((right * vv - up * uv) / det, (up * uu - right * uv) / det);
        double radius = Math.sqrt(centre.dot(centre) + (uu + vv) / points.size());
        return new Circle(centre.plus(mean), radius);
    }
}
