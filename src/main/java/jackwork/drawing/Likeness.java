package jackwork.drawing;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import java.util.List;

/**
 * How much one outline is another one drawn again. What tells: the ratio of their areas, the share of their common area
 * once one is laid on the other, and how far it lies from where it was. Ours, no source; 0 the same, 1 nothing alike.
 *
 * @param cost 0 to 1
 * @param move what carries the old one onto the new one: turned about its centroid, then shifted
 * @param overlap share of the common area then, 0 to 1
 */
record Likeness(double cost, Move move, double overlap) {

    /**
     * @param shift of the centroid, mm
     * @param angle rad, counter-clockwise
     */
    record Move(Point shift, double angle) {

        static final Move NONE = new Move(Point.ORIGIN, 0);
    }

    /** Above this two outlines are not the same part. */
    static final double MOST = 0.45;

    private static final double OF_AREA = 0.25;
    private static final double OF_SHAPE = 0.45;
    private static final double OF_PLACE = 0.3;

    /** Areas more different than this are not looked at any closer. */
    private static final double LEAST_AREA = 0.4;

    /** A turned part must overlap better than an unturned one by this much. */
    private static final double TURNED = 0.05;

    /** Longer than it is wide by less than this, no direction can be told. */
    private static final double LENGTHY = 1.2;

    static Likeness of(Outline old, Outline now) {
        double area = Math.min(old.area(), now.area()) / Math.max(old.area(), now.area());
        if (area < LEAST_AREA) {
            return new Likeness(1, Move.NONE, 0);
        }
        Point from = old.centroid();
        Point by = now.centroid().minus(from);
        // What was only reshaped has not moved, though its centroid has.
        Likeness best = laid(old, now, area, Move.NONE, by);
        Likeness moved = laid(old, now, area, new Move(by, 0), by);
        if (moved.overlap > best.overlap + 0.01) {
            best = moved;
        }
        if (best.overlap < 0.8) {
            for (double angle : angles(old, now)) {
                Likeness turned = laid(old, now, area, new Move(by, angle), by);
                if (turned.overlap > best.overlap + TURNED) {
                    best = turned;
                }
            }
        }
        return best;
    }

    private static Likeness laid(Outline old, Outline now, double area, Move move, Point by) {
        double shared = moved(old, move).sharedArea(now);
        double overlap = shared / (old.area() + now.area() - shared);
        double size = Math.sqrt(old.area());
        double far = by.length() / (size + by.length());
        return new Likeness(OF_AREA * (1 - area) + OF_SHAPE * (1 - overlap) + OF_PLACE * far, move, overlap);
    }

    static Outline moved(Outline outline, Move move) {
        return outline.moved(pose(outline.centroid(), move));
    }

    /** What carries a point of the old outline along. */
    static Point carried(Point point, Point centroid, Move move) {
        return point.turnedAbout(centroid, move.angle()).plus(move.shift());
    }

    private static Pose pose(Point about, Move move) {
        Point to = carried(Point.ORIGIN, about, move);
        return new Pose(to.x(), to.y(), move.angle());
    }

    /** By how much the long direction of one must turn to be that of the other; an axis has two ends. */
    private static List<Double> angles(Outline old, Outline now) {
        double[] first = axis(old);
        double[] second = axis(now);
        if (first[1] < LENGTHY || second[1] < LENGTHY) {
            return List.of();
        }
        double turn = Math.IEEEremainder(second[0] - first[0], Math.PI);
        return List.of(turn, turn > 0 ? turn - Math.PI : turn + Math.PI);
    }

    /** Direction of the long axis, rad, and length over width, from the second moments of the outline's corners' fan. */
    private static double[] axis(Outline outline) {
        Point middle = outline.centroid();
        double xx = 0;
        double yy = 0;
        double xy = 0;
        List<Point> ring = outline.outer();
        for (int i = 0; i < ring.size(); i++) {
            Point p = ring.get(i).minus(middle);
            Point q = ring.get((i + 1) % ring.size()).minus(middle);
            // Triangle (0, p, q): ∫x² = cross/12·(px² + px·qx + qx²), likewise the others.
            double twice = p.cross(q);
            xx += twice * (p.x() * p.x() + p.x() * q.x() + q.x() * q.x());
            yy += twice * (p.y() * p.y() + p.y() * q.y() + q.y() * q.y());
            xy += twice * (2 * p.x() * p.y() + p.x() * q.y() + q.x() * p.y() + 2 * q.x() * q.y()) / 2;
        }
        double mean = (xx + yy) / 2;
        double spread = Math.hypot((xx - yy) / 2, xy);
        double narrow = Math.max(mean - spread, 1e-12 * mean);
        return new double[] {Math.atan2(2 * xy, xx - yy) / 2, Math.sqrt((mean + spread) / narrow)};
    }
}
