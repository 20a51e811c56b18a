package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.design.Place;
import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A dowel's hole moved to a random width of wood from its part's edge. */
@Tag("quick")
class ThinnestNeckTest {

    private static final Path HERON = Path.of("demo/heron");
    /** Of the hole: the rod less half the press fit, mm. */
    private static final double RADIUS = 1.475;

    private final Random random = new Random(7);

    @Test
    void aNeckThatCannotBeCutFailsAndANarrowOneIsDoubtful() {
        Design design = DesignReader.read(HERON);
        Assembly heron = Assembler.assemble(design);
        Point origin = design.inFigure(new Place.At(Point.ORIGIN), "");
        for (int i = 0; i < 8; i++) {
            // Of a sheet of 1.95 mm: 0.65 mm are a third, 1.30 mm two thirds.
            boolean cut = i % 2 == 0;
            double from = RADIUS + (cut ? 0.1 : 0.75);
            double to = RADIUS + (cut ? 0.55 : 1.2);
            Point at = within(heron, from, to).minus(origin);
            String text = DesignReader.text(HERON)
                    + String.format(
                            Locale.ROOT, "%nchange:%n  figure.pins.wing-dowel-1.at: [%f, %f]%n", at.x(), at.y());
            Status status = ThinnestNeck.ask(Assembler.assemble(DesignReader.read(HERON, text)))
                    .get(0)
                    .status();
            assertThat(status).as("%s", at).isEqualTo(cut ? Status.FAIL : Status.DOUBTFUL);
        }
    }

    /** Two squares of 30 mm with a bar between them: as wide as the bar, to a hundredth; a wide one is none. */
    @Test
    void aNeckIsAsWideAsItIsDrawn() {
        for (int i = 0; i < 20; i++) {
            double width = 0.3 + 14 * random.nextDouble();
            double half = width / 2;
            double[][] right = {{15, -half}, {15, -15}, {45, -15}, {45, 15}, {15, 15}, {15, half}};
            List<Point> points = new ArrayList<>();
            for (double[] at : right) {
                points.add(new Point(at[0], at[1]));
            }
            for (double[] at : right) {
                points.add(new Point(-at[0], -at[1]));
            }
            double neck = ThinnestNeck.neck(Outline.of(points, List.of()));
            assertThat(neck)
                    .isBetween(Math.min(width, ThinnestNeck.WIDE) - 0.006, Math.min(width, ThinnestNeck.WIDE) + 0.006);
        }
    }

    /** The one finding is of the part whose neck is thinnest for its sheet, each measured by itself. */
    @Test
    void theThinnestForItsSheetIsTold() {
        for (String demo : List.of("heron", "lamplighter", "cobbler")) {
            Assembly assembly = Assembler.assemble(DesignReader.read(Path.of("demo", demo)));
            Part worst = assembly.parts().stream()
                    .min(Comparator.comparingDouble(part ->
                            ThinnestNeck.neck(part.outline()) / part.thickness().value()))
                    .orElseThrow();
            double width = ThinnestNeck.neck(worst.outline());
            Finding finding = ThinnestNeck.ask(assembly).get(0);
            assertThat(finding.where().part()).isEqualTo(worst.name());
            assertThat(finding.value()).isEqualTo(width);
            double limit = finding.limit();
            assertThat(limit).isGreaterThanOrEqualTo(2.0 / 3 * worst.thickness().value() - 1e-12);
            assertThat(finding.margin()).isEqualTo(width - limit);
            assertThat(finding.status() == Status.PASS).isEqualTo(width >= limit);
        }
    }

    /** Two squares of 30 mm with a bar between them, as a rough tracing with a point every fiftieth of a millimetre. */
    @Test
    void aRoughTracingOfVeryManyPointsIsMeasuredAtNoMoreThanItHas() {
        for (int i = 0; i < 3; i++) {
            double width = 1 + 3 * random.nextDouble();
            double rough = 0.02 + 0.05 * random.nextDouble();
            double[] heights = {15, 15, width / 2, width / 2, 15, 15};
            double[] places = {-45, -15, -15, 15, 15, 45};
            List<Point> points = new ArrayList<>();
            for (int side = 1; side >= -1; side -= 2) {
                for (int k = 0; k + 1 < places.length; k++) {
                    Point from = new Point(side * places[k], side * heights[k]);
                    Point to = new Point(side * places[k + 1], side * heights[k + 1]);
                    line(points, from, to, rough);
                }
                line(points, new Point(side * 45, side * 15), new Point(side * 45, side * -15), rough);
            }
            assertThat(points).hasSizeGreaterThan(8_000);
            double neck = ThinnestNeck.neck(Outline.of(points, List.of()));
            // Smoothed by a tenth at most, and as much taken off: on both sides of the bar.
            assertThat(neck).isBetween(width - 2 * rough - 4 * ThinnestNeck.SMOOTHED, width);
        }
    }

    private void line(List<Point> points, Point from, Point to, double rough) {
        int steps = (int) (from.distance(to) / 0.02);
        Point along = to.minus(from).times(1 / from.distance(to));
        Point across = new Point(-along.y(), along.x());
        for (int step = 0; step < steps; step++) {
            double aside = step < 9 || step > steps - 9 ? 0 : rough * (2 * random.nextDouble() - 1);
            points.add(from.plus(along.times(0.02 * step)).plus(across.times(aside)));
        }
    }

    /** Near the edge of a wing, and well within the body between the two. */
    private Point within(Assembly heron, double from, double to) {
        Bounds bounds = drawn(heron, "wing-near").bounds();
        while (true) {
            Point at = new Point(
                    bounds.minX() + random.nextDouble() * bounds.width(),
                    bounds.minY() + random.nextDouble() * bounds.height());
            double edge = Math.min(inside(heron, "wing-near", at), inside(heron, "wing-far", at));
            if (edge > from && edge < to && inside(heron, "body", at) > RADIUS + 2.1) {
                return at;
            }
        }
    }

    private static double inside(Assembly heron, String part, Point at) {
        Outline outline = drawn(heron, part);
        return outline.contains(at) ? outline.distanceToEdge(at) : -1;
    }

    private static Outline drawn(Assembly heron, String name) {
        return heron.parts().stream()
                .filter(part -> part.name().equals(name))
                .map(Part::drawn)
                .findFirst()
                .orElseThrow();
    }
}
