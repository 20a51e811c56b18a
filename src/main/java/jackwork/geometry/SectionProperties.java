package jackwork.geometry;

import java.util.List;

/**
 * Area, centroid and polar second moment of a polygon by the boundary sums that follow from
 * Green's theorem (any text on section properties).
 *
 * @param area mm²
 * @param centroid mm
 * @param polarMoment second moment of area about the centroid, Ix + Iy, mm⁴
 */
public record SectionProperties(double area, Point centroid, double polarMoment) {

    public static SectionProperties of(Outline outline) {
        // Taken about a point of the outline itself, so that far-off drawings lose no digits.
        Point base = outline.outer().get(0);
        double[] sums = new double[4];
        add(outline.outer(), base, sums);
        outline.holes().forEach(hole -> add(hole, base, sums));
        double area = sums[0] / 2;
        double cx = sums[1] / (6 * area);
        double cy = sums[2] / (6 * area);
        double polar = sums[3] / 12 - area * (cx * cx + cy * cy);
        return new SectionProperties(area, new Point(base.x() + cx, base.y() + cy), polar);
    }

    /** Adds one ring's sums {2A, 6A·cx, 6A·cy, 12·(Ix + Iy)}; clockwise rings (holes) count negative. */
    private static void add(List<Point> ring, Point base, double[] sums) {
        for (int i = 0; i < ring.size(); i++) {
            Point p = ring.get(i).minus(base);
            Point q = ring.get((i + 1) % ring.size()).minus(base);
            double cross = p.cross(q);
            sums[0] += cross;
            sums[1] += (p.x() + q.x()) * cross;
            sums[2] += (p.y() + q.y()) * cross;
            sums[3] += (p.dot(p) + p.dot(q) + q.dot(q)) * cross;
        }
    }
}
