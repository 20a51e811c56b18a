package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A dowel's hole moved to a random width of wood from its part's edge. */
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
