package jackwork.motion.model;

import jackwork.geometry.Point;
import java.util.Arrays;
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
    /** Unit vector of the side from each corner to the next, and its length, [corners]; a disc's points at itself. */
    final double[] alongX;

    final double[] alongY;
    final double[] length;
    final int chunks;
    /** Box about each chunk's sides, then one about all, [chunks + 1]. */
    private final double[] lowX;

    /** A circle about each chunk's sides, [chunks]. */
    final double[] middleX;

    final double[] middleY;
    final double[] around;
    private final double[] highX;
    private final double[] lowY;
    private final double[] highY;
    /** Farthest point from the body's centre, radius included, mm. */
    final double reach;
    /** How far out turning about the body's centre moves it, mm: nothing for a disc about that. */
    final double turningReach;

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
        int n = x.length;
        this.alongX = new double[n];
        this.alongY = new double[n];
        this.length = new double[n];
        this.chunks = (n + ModelLimits.CHUNK - 1) / ModelLimits.CHUNK;
        this.lowX = new double[chunks + 1];
        this.highX = new double[chunks + 1];
        this.lowY = new double[chunks + 1];
        this.highY = new double[chunks + 1];
        Arrays.fill(lowX, Double.POSITIVE_INFINITY);
        Arrays.fill(lowY, Double.POSITIVE_INFINITY);
        Arrays.fill(highX, Double.NEGATIVE_INFINITY);
        Arrays.fill(highY, Double.NEGATIVE_INFINITY);
        for (int j = 0; j < n; j++) {
            int k = (j + 1) % n;
            length[j] = Math.hypot(x[k] - x[j], y[k] - y[j]);
            alongX[j] = length[j] > 0 ? (x[k] - x[j]) / length[j] : 1;
            alongY[j] = length[j] > 0 ? (y[k] - y[j]) / length[j] : 0;
            for (int box : new int[] {j / ModelLimits.CHUNK, chunks}) {
                lowX[box] = Math.min(lowX[box], Math.min(x[j], x[k]));
                highX[box] = Math.max(highX[box], Math.max(x[j], x[k]));
                lowY[box] = Math.min(lowY[box], Math.min(y[j], y[k]));
                highY[box] = Math.max(highY[box], Math.max(y[j], y[k]));
            }
        }
        this.middleX = new double[chunks];
        this.middleY = new double[chunks];
        this.around = new double[chunks];
        for (int chunk = 0; chunk < chunks; chunk++) {
            middleX[chunk] = (lowX[chunk] + highX[chunk]) / 2;
            middleY[chunk] = (lowY[chunk] + highY[chunk]) / 2;
            around[chunk] = Math.hypot(highX[chunk] - lowX[chunk], highY[chunk] - lowY[chunk]) / 2;
        }
        this.reach = far + radius;
        this.turningReach = far;
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

    /** How far along side j, from its first corner, a point stands, mm. */
    double along(int j, double px, double py) {
        return (px - x[j]) * alongX[j] + (py - y[j]) * alongY[j];
    }

    /** How far out of side j's line a point stands, mm; negative inside. */
    double out(int j, double px, double py) {
        return (px - x[j]) * alongY[j] - (py - y[j]) * alongX[j];
    }

    /** Square of a point's distance from side j, mm². */
    double squareDistance(int j, double px, double py) {
        double along = along(j, px, py);
        double beyond = along < 0 ? along : Math.max(0, along - length[j]);
        double out = out(j, px, py);
        return beyond * beyond + out * out;
    }

    /** Whether a point may lie within {@code far} of a chunk's sides. */
    boolean isNear(int chunk, double px, double py, double far) {
        return px > lowX[chunk] - far && px < highX[chunk] + far && py > lowY[chunk] - far && py < highY[chunk] + far;
    }

    /** Whether a point may lie within {@code far} of it. */
    boolean isNear(double px, double py, double far) {
        if (!isNear(chunks, px, py, far)) {
            return false;
        }
        for (int chunk = 0; chunk < chunks; chunk++) {
            if (isNear(chunk, px, py, far)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a point lies inside the polygon, by the sides that a ray to the right crosses. */
    boolean contains(double px, double py) {
        boolean inside = false;
        for (int j = 0; j < x.length; j++) {
            int k = j + 1 < x.length ? j + 1 : 0;
            if (y[j] > py != y[k] > py && px < x[j] + (py - y[j]) / (y[k] - y[j]) * (x[k] - x[j])) {
                inside = !inside;
            }
        }
        return inside;
    }

    boolean isDisc() {
        return x.length == 1;
    }
}
