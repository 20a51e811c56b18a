package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** An outline of very many points becomes one of few, and stays where it was drawn. */
class ManyPointsTest {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int POINTS = 20_000;
    /** What a file's rounded numbers add, mm. */
    private static final double WRITTEN = 1e-5;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void staysWithinAHundredthOfAMillimetre(long seed) {
        Random random = new Random(seed);
        List<Point> outer = wavy(random, 50 + 40 * random.nextDouble(), 120, POINTS);
        List<List<Point>> holes = new ArrayList<>();
        // Holes of a hundredth to some millimetres, far enough from each other and from the edge.
        for (int i = 0; i < 6; i++) {
            double angle = 2 * Math.PI * i / 6;
            List<Point> hole = wavy(random, 0.3 + 5 * random.nextDouble(), 0, 40 + random.nextInt(2000));
            holes.add(hole.stream()
                    .map(p -> p.plus(new Point(120 + 15 * Math.cos(angle), 120 + 15 * Math.sin(angle))))
                    .toList());
        }
        holes.add(List.of(new Point(120, 120), new Point(120.004, 120), new Point(120, 120.004)));
        outer = outer.stream().map(p -> p.plus(new Point(120, 120))).toList();
        Outline drawn = Outline.of(outer, holes);
        Outline read = read(outer, holes);
        assertThat(read.outer().size()).isLessThan(drawn.outer().size() / 4);
        assertThat(read.holes()).hasSameSizeAs(holes);
        assertThat(apart(drawn.outer(), read.outer())).isLessThanOrEqualTo(SvgReader.THINNED + WRITTEN);
        assertThat(Math.abs(read.area() - drawn.area())).isLessThanOrEqualTo(SvgReader.THINNED * drawn.cutLength());
        for (List<Point> hole : drawn.holes()) {
            List<Point> nearest = read.holes().stream()
                    .min(Comparator.comparingDouble(other -> other.get(0).distance(hole.get(0))))
                    .orElseThrow();
            assertThat(apart(hole, nearest)).isLessThanOrEqualTo(SvgReader.THINNED + WRITTEN);
        }
    }

    @Test
    void fewPointsAreTakenAsDrawn() {
        List<Point> outer = wavy(new Random(5), 40, 60, 1500).stream()
                .map(p -> p.plus(new Point(120, 120)))
                .toList();
        assertThat(read(outer, List.of()).outer()).hasSize(outer.size());
    }

    /** Round, with slow waves that matter and quick ones that no laser could follow. */
    private static List<Point> wavy(Random random, double radius, double slow, int points) {
        double[] phase = random.doubles(4, 0, 2 * Math.PI).toArray();
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double angle = 2 * Math.PI * i / points;
            double r = radius
                    + radius / 20 * Math.sin(3 * angle + phase[0])
                    + radius / 60 * Math.sin(11 * angle + phase[1])
                    + slow / 1000 * Math.sin(40 * angle + phase[2])
                    + 0.0005 * random.nextDouble();
            ring.add(new Point(r * Math.cos(angle), r * Math.sin(angle)));
        }
        return ring;
    }

    private static Outline read(List<Point> outer, List<List<Point>> holes) {
        StringBuilder path = new StringBuilder();
        ring(path, outer);
        holes.forEach(hole -> ring(path, hole));
        String svg =
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"240mm\" height=\"240mm\" viewBox=\"0 0 240 240\">"
                        + "<path id=\"part\" d=\"" + path + "\"/></svg>";
        return SvgReader.read("many.svg", svg.getBytes(StandardCharsets.UTF_8))
                .outline("part")
                .orElseThrow();
    }

    private static void ring(StringBuilder path, List<Point> points) {
        for (int i = 0; i < points.size(); i++) {
            path.append(i == 0 ? 'M' : 'L')
                    .append(String.format(
                            Locale.ROOT,
                            "%.6f,%.6f",
                            points.get(i).x(),
                            240 - points.get(i).y()));
        }
        path.append('Z');
    }

    /** Hausdorff's distance of two closed lines, either way; edges followed in steps of a quarter of them. */
    private static double apart(List<Point> one, List<Point> other) {
        return Math.max(farthest(one, other), farthest(other, one));
    }

    private static double farthest(List<Point> followed, List<Point> other) {
        IndexedFacetDistance line = new IndexedFacetDistance(closed(other));
        double farthest = 0;
        for (int i = 0; i < followed.size(); i++) {
            Point from = followed.get(i);
            Point to = followed.get((i + 1) % followed.size());
            for (int quarter = 0; quarter < 4; quarter++) {
                Point at = from.plus(to.minus(from).times(quarter / 4.0));
                farthest = Math.max(farthest, line.distance(FACTORY.createPoint(new Coordinate(at.x(), at.y()))));
            }
        }
        return farthest;
    }

    private static Geometry closed(List<Point> ring) {
        Coordinate[] coordinates = new Coordinate[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            coordinates[i] = new Coordinate(ring.get(i).x(), ring.get(i).y());
        }
        coordinates[ring.size()] = coordinates[0];
        LinearRing closed = FACTORY.createLinearRing(coordinates);
        return FACTORY.createLineString(closed.getCoordinates());
    }
}
