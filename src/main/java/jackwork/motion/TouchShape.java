package jackwork.motion;

import jackwork.geometry.Point;
import java.util.List;

/**
 * What touches: a polygon, counter-clockwise, with the corner radius by which it is thickened all
 * round, in its body's frame, from the centre of mass, mm. A disc is one point with its radius.
 */
final class TouchShape {

    final double[] x;
    final double[] y;
    final double radius;
    /** Whether a corner stands out: only those can touch first, [corners]. */
    final boolean[] standsOut;
    /** Farthest point from the body's centre, radius included, mm. */
    final double reach;

    private TouchShape(double[] x, double[] y, double radius) {
        this.x = x;
        this.y = y;
        this.radius = radius;
        this.standsOut = new boolean[x.length];
        double far = 0;
        for (int i = 0; i < x.length; i++) {
            int before = (i + x.length - 1) % x.length;
            int after = (i + 1) % x.length;
            double turn = (x[i] - x[before]) * (y[after] - y[i]) - (y[i] - y[before]) * (x[after] - x[i]);
            standsOut[i] = x.length == 1 || turn > 0;
            far = Math.max(far, Math.hypot(x[i], y[i]));
        }
        this.reach = far + radius;
    }

    static TouchShape disc(Point centre, double radius) {
        return new TouchShape(new double[] {centre.x()}, new double[] {centre.y()}, radius);
    }

    /** @param corners in either sense; the last is not the first again */
    static TouchShape outline(List<Point> corners) {
        double area = 0;
        for (int i = 0; i < corners.size(); i++) {
            area += corners.get(i).cross(corners.get((i + 1) % corners.size()));
        }
        double[] x = new double[corners.size()];
        double[] y = new double[corners.size()];
        for (int i = 0; i < x.length; i++) {
            Point corner = corners.get(area > 0 ? i : x.length - 1 - i);
            x[i] = corner.x();
            y[i] = corner.y();
        }
        return new TouchShape(x, y, 0);
    }

    boolean isDisc() {
        return x.length == 1;
    }
}
