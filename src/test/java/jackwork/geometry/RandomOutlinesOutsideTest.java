package jackwork.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * 1,000 random outlines, notched and with openings, held against what is not the library beneath {@link Outline}: unions and
 * areas against the JDK's {@link Area}; offsets against the distance to every edge, point by point. All with fixed seeds.
 */
@Tag("outside")
@Tag("quick")
class RandomOutlinesOutsideTest {

    private static final int COUNT = 1000;

    /** Corners at random distances around a middle; every third has an opening. */
    static Outline outline(SplittableRandom random) {
        int corners = random.nextInt(3, 24);
        double x = random.nextDouble(-20, 20);
        double y = random.nextDouble(-20, 20);
        List<Point> outer = star(random, corners, x, y, 10, 40);
        return random.nextInt(3) == 0
                ? Outline.of(outer, List.of(star(random, random.nextInt(3, 9), x, y, 1, 3)))
                : Outline.of(outer);
    }

    private static List<Point> star(
            SplittableRandom random, int corners, double x, double y, double least, double most) {
        List<Point> ring = new ArrayList<>();
        for (int k = 0; k < corners; k++) {
            // No gap between neighbours may reach half a turn, or the middle falls outside.
            double angle = 2 * Math.PI * (k + random.nextDouble(0.1, 0.4)) / corners;
            double away = random.nextDouble(least, most);
            ring.add(new Point(x + away * Math.cos(angle), y + away * Math.sin(angle)));
        }
        return ring;
    }

    private static Area area(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        rings(outline).forEach(ring -> {
            path.moveTo(ring.get(0).x(), ring.get(0).y());
            ring.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
            path.closePath();
        });
        return new Area(path);
    }

    private static List<List<Point>> rings(Outline outline) {
        List<List<Point>> rings = new ArrayList<>(outline.holes());
        rings.add(outline.outer());
        return rings;
    }

    /** The JDK's region by the sum over its edges; its openings run the other way round. */
    private static double size(Area area) {
        double twice = 0;
        double[] to = new double[6];
        double startX = 0;
        double startY = 0;
        double x = 0;
        double y = 0;
        for (PathIterator edges = area.getPathIterator(null); !edges.isDone(); edges.next()) {
            switch (edges.currentSegment(to)) {
                case PathIterator.SEG_MOVETO -> {
                    startX = to[0];
                    startY = to[1];
                    x = startX;
                    y = startY;
                }
                case PathIterator.SEG_LINETO -> {
                    twice += x * to[1] - to[0] * y;
                    x = to[0];
                    y = to[1];
                }
                default -> {
                    twice += x * startY - startX * y;
                    x = startX;
                    y = startY;
                }
            }
        }
        return Math.abs(twice) / 2;
    }

    @Test
    void areasUnionsAndSharesAgreeWithTheJdk() {
        SplittableRandom random = new SplittableRandom(3);
        int met = 0;
        for (int k = 0; k < COUNT; k++) {
            Outline one = outline(random);
            Outline other = outline(random);
            assertThat(one.area()).as("outline %d", k).isCloseTo(size(area(one)), within(1e-6));
            Area both = area(one);
            both.intersect(area(other));
            double shared = size(both);
            assertThat(one.sharedArea(other)).as("shared %d", k).isCloseTo(shared, within(1e-6));
            Area union = area(one);
            union.add(area(other));
            if (shared > 1e-3) {
                met++;
                assertThat(one.with(other).area()).as("union %d", k).isCloseTo(size(union), within(1e-6));
            }
            Area rest = area(one);
            rest.subtract(area(other));
            assertThat(one.area() - shared).as("rest %d", k).isCloseTo(size(rest), within(1e-6));
        }
        assertThat(met).isGreaterThan(COUNT / 2);
    }

    /** From a point to the nearest edge, by the formula alone. */
    private static double distance(Outline outline, Point point) {
        double least = Double.POSITIVE_INFINITY;
        for (List<Point> ring : rings(outline)) {
            for (int k = 0; k < ring.size(); k++) {
                Point a = ring.get(k);
                Point along = ring.get((k + 1) % ring.size()).minus(a);
                double share = Math.max(0, Math.min(1, point.minus(a).dot(along) / along.dot(along)));
                least = Math.min(least, point.distance(a.plus(along.times(share))));
            }
        }
        return least;
    }

    /**
     * Of a grown region: whatever lies nearer than the distance is in it, whatever lies farther than a blunted corner reaches
     * is not, and straight edges stand off by the distance itself. The library beneath straightens notches flatter than a
     * hundredth of the distance; that is the tolerance.
     */
    @Test
    void offsetsStandOffAsFarAsTheyShould() {
        SplittableRandom random = new SplittableRandom(5);
        int inside = 0;
        int edges = 0;
        for (int k = 0; k < COUNT; k++) {
            Outline outline = outline(random);
            double by = random.nextDouble(0.05, 2);
            double off = 0.01 * by;
            Area region = area(outline);
            Outline grown = outline.offset(by);
            for (List<Point> ring : rings(grown)) {
                for (Point corner : ring) {
                    assertThat(distance(outline, corner)).as("corner %d", k).isBetween(by - off, 2.2 * by);
                    assertThat(region.contains(corner.x(), corner.y())).isFalse();
                }
            }
            Bounds bounds = grown.bounds();
            for (int trial = 0; trial < 20; trial++) {
                Point point = new Point(
                        random.nextDouble(bounds.minX() - 1, bounds.maxX() + 1),
                        random.nextDouble(bounds.minY() - 1, bounds.maxY() + 1));
                boolean within = region.contains(point.x(), point.y());
                double away = within ? 0 : distance(outline, point);
                if (away < by - off) {
                    assertThat(grown.contains(point)).as("near %d", k).isTrue();
                    inside++;
                } else if (away > 2.2 * by) {
                    assertThat(grown.contains(point)).as("far %d", k).isFalse();
                }
            }
            edges += edgesStandOff(outline, grown, by, off);
        }
        assertThat(inside).isGreaterThan(COUNT);
        assertThat(edges).isGreaterThan(5 * COUNT);
    }

    /** From the middle of each edge straight out, where nothing else is as near. */
    private static int edgesStandOff(Outline outline, Outline grown, double by, double off) {
        int seen = 0;
        List<Point> ring = outline.outer();
        for (int k = 0; k < ring.size(); k++) {
            Point a = ring.get(k);
            Point b = ring.get((k + 1) % ring.size());
            Point along = b.minus(a).times(1 / a.distance(b));
            Point out = new Point(along.y(), -along.x());
            Point there = a.plus(b).times(0.5).plus(out.times(by));
            if (a.distance(b) > 4 * by && Math.abs(distance(outline, there) - by) < 1e-9) {
                assertThat(distance(grown, there)).isLessThan(off);
                seen++;
            }
        }
        return seen;
    }
}
