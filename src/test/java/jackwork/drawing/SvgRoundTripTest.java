package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What our writer writes our reader reads: two programs of ours that share no code but these numbers. */
@Tag("quick")
class SvgRoundTripTest {

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void anyOutlineComesBackAsItWas(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            double width = grid(100 + 900 * random.nextDouble());
            double height = grid(100 + 900 * random.nextDouble());
            Point middle = new Point(grid(width / 2), grid(height / 2));
            List<Point> outer = star(random, middle, 20, 49);
            List<Point> hole = star(random, middle, 5, 19);
            Circle round = new Circle(new Point(grid(7 * random.nextDouble()), 3), grid(0.1 + random.nextDouble()));
            List<Point> line = List.of(outer.get(0), middle, outer.get(1));

            Drawing drawing = SvgReader.read(
                    "sheet.svg",
                    SvgWriter.write(new CutSheet(
                            "Heron & <co> \"7\"",
                            width,
                            height,
                            List.of(
                                    new CutPath(CutKind.OUTSIDE, new CutShape.Ring(outer), "body"),
                                    new CutPath(CutKind.INSIDE, new CutShape.Ring(hole), "body's \"<hole>\" & 1"),
                                    new CutPath(CutKind.INSIDE, new CutShape.Round(round), "pivot"),
                                    new CutPath(CutKind.ENGRAVE, new CutShape.Line(line), "neck line"),
                                    new CutPath(CutKind.MARK, new CutShape.Ring(outer), "")),
                            List.of())));

            assertThat(drawing.width()).isCloseTo(width, within(1e-6));
            assertThat(drawing.height()).isCloseTo(height, within(1e-6));
            assertThat(drawing.outlines()).containsOnlyKeys("body", "body's \"<hole>\" & 1");
            assertSameRing(drawing.outlines().get("body"), outer);
            assertSameRing(drawing.outlines().get("body's \"<hole>\" & 1"), hole);
            assertSame(drawing.lines().get("neck line"), line);
            Circle pivot = drawing.circle("pivot").orElseThrow();
            assertThat(pivot.centre().distance(round.centre())).isLessThan(1e-6);
            assertThat(pivot.radius()).isCloseTo(round.radius(), within(1e-6));
        }
    }

    /** Points between {@code least} and {@code most} mm from the middle, once round it, on the file's grid. */
    private static List<Point> star(Random random, Point middle, double least, double most) {
        int count = 3 + random.nextInt(60);
        double[] angles = new double[count];
        for (int i = 0; i < count; i++) {
            angles[i] = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / count;
        }
        List<Point> points = new ArrayList<>();
        for (double angle : angles) {
            Point out = new Point(least + (most - least) * random.nextDouble(), 0).turned(angle);
            points.add(new Point(grid(middle.x() + out.x()), grid(middle.y() + out.y())));
        }
        return points;
    }

    /** The nearest number that four decimals can hold: the writer's own step. */
    private static double grid(double value) {
        return Math.round(value * 10_000) / 10_000.0;
    }

    /** A ring may begin anywhere and run either way. */
    private static void assertSameRing(Outline outline, List<Point> expected) {
        List<Point> same = new ArrayList<>(Outline.of(expected).outer());
        List<Point> got = new ArrayList<>(outline.outer());
        assertThat(outline.holes()).isEmpty();
        assertSame(fromFirst(got), fromFirst(same));
    }

    private static List<Point> fromFirst(List<Point> ring) {
        Point first = ring.stream()
                .min(Comparator.comparingDouble((Point p) -> grid(p.x())).thenComparingDouble(p -> grid(p.y())))
                .orElseThrow();
        int at = ring.indexOf(first);
        List<Point> turned = new ArrayList<>(ring.subList(at, ring.size()));
        turned.addAll(ring.subList(0, at));
        return turned;
    }

    private static void assertSame(List<Point> got, List<Point> expected) {
        assertThat(got).hasSameSizeAs(expected);
        for (int i = 0; i < got.size(); i++) {
            assertThat(got.get(i).distance(expected.get(i))).isLessThan(1e-6);
        }
    }
}
