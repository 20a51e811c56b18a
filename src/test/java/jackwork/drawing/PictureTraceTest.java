package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.awt.Color;
import java.awt.geom.Area;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Shapes that are known, drawn by Java2D at 300 dpi, come back from their pictures. */
class PictureTraceTest {

    private static final double MOST = 0.15;
    private static final PictureTrace.Setup USUAL =
            new PictureTrace.Setup(Optional.empty(), OptionalDouble.of(300), 0.1, OptionalDouble.empty());

    enum Shape {
        CIRCLE,
        STAR,
        HERON;

        /** mm, y up, a few mm clear of the picture's lower left corner. */
        Outline outline() throws IOException {
            return switch (this) {
                case CIRCLE -> Outline.disc(new Circle(new Point(25.37, 24.81), 20), 0.001);
                case STAR -> star(new Point(30.2, 28.9), 25);
                case HERON -> heron();
            };
        }
    }

    private static Outline star(Point centre, double radius) {
        List<Point> points = new ArrayList<>();
        double inner = radius * Math.cos(Math.toRadians(72)) / Math.cos(Math.toRadians(36));
        for (int i = 0; i < 10; i++) {
            Point ray = new Point(0, i % 2 == 0 ? radius : inner);
            points.add(centre.plus(ray.turned(0.3 + i * Math.PI / 5)));
        }
        return Outline.of(points);
    }

    /** Body, neck, head and a leg in one; the beak's tip is sharper than 13°. */
    private static Outline heron() throws IOException {
        Path file = Path.of("demo/heron/figure.svg");
        Drawing drawing = SvgReader.read("figure.svg", Files.readAllBytes(file));
        Area area = new Area();
        for (String part : List.of("body", "lower-neck", "head", "leg-near")) {
            area.add(new Area(Pictures.path(drawing.outline(part).orElseThrow())));
        }
        List<List<Point>> rings = Pictures.rings(area);
        rings.sort(
                java.util.Comparator.comparingDouble(ring -> -Outline.of(ring).area()));
        return Outline.of(rings.get(0)).moved(new Point(75.03, 20.04));
    }

    private static PictureTrace.Traced traced(Shape shape, Pictures.Look look) throws IOException {
        byte[] png = Pictures.png(shape.outline(), look, 300);
        return PictureTrace.of(PictureReader.read("shape.png", png), USUAL);
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void comesBackFromATransparentPicture(Shape shape) throws IOException {
        assertSame(shape.outline(), traced(shape, Pictures.Look.TRANSPARENT), MOST);
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void comesBackFromAColouredBackground(Shape shape) throws IOException {
        assertSame(shape.outline(), traced(shape, Pictures.Look.ON_COLOUR), MOST);
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void comesBackFromGreyOnWhite(Shape shape) throws IOException {
        assertSame(shape.outline(), traced(shape, Pictures.Look.PALE_ON_WHITE), MOST);
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void comesBackWhenMarkedAndShadedInside(Shape shape) throws IOException {
        assertSame(shape.outline(), traced(shape, Pictures.Look.SHADED), MOST);
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void comesBackFromHardPixels(Shape shape) throws IOException {
        // Half a pixel is 0.042 mm; a tip is lost where it is narrower than a pixel.
        assertSame(shape.outline(), traced(shape, Pictures.Look.HARD), shape == Shape.CIRCLE ? MOST : 0.45);
    }

    /** Every traced point is near the true outline, and every true point near the traced one. */
    private static void assertSame(Outline truth, PictureTrace.Traced traced, double most) {
        double there = farthest(traced.outline(), truth);
        double back = farthest(truth, traced.outline());
        assertThat(there).isLessThan(most);
        assertThat(back).isLessThan(most);
        assertThat(traced.outline().area()).isCloseTo(truth.area(), within(0.007 * truth.area()));
    }

    private static double farthest(Outline from, Outline to) {
        List<Point> ring = from.outer();
        double most = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point start = ring.get(i);
            Point edge = ring.get((i + 1) % ring.size()).minus(start);
            int steps = 1 + (int) (edge.length() / 0.1);
            for (int j = 0; j < steps; j++) {
                most = Math.max(most, to.distanceToEdge(start.plus(edge.times((double) j / steps))));
            }
        }
        return most;
    }

    @Test
    void roundTripsThroughTheDesignsOwnReader() throws IOException {
        PictureTrace.Traced traced = traced(Shape.HERON, Pictures.Look.TRANSPARENT);
        byte[] svg = OutlineSvg.write("body", traced.outline(), traced.width(), traced.height());
        Drawing drawing = SvgReader.read("outline.svg", svg);
        Outline read = drawing.outline("body").orElseThrow();
        assertThat(drawing.outlines()).hasSize(1);
        assertThat(farthest(read, traced.outline())).isLessThan(0.0002);
        assertThat(farthest(traced.outline(), read)).isLessThan(0.0002);
        assertSame(Shape.HERON.outline(), new PictureTrace.Traced(read, 300, 0, 0), MOST);
    }

    @Test
    void holesStayWhenAskedFor() throws IOException {
        Outline ring = Outline.disc(new Circle(new Point(20, 20), 15), 0.001)
                .without(new Circle(new Point(18, 22), 4), 0.001)
                .without(new Circle(new Point(28, 14), 1), 0.001);
        Picture picture = PictureReader.read("ring.png", Pictures.png(ring, Pictures.Look.TRANSPARENT, 300));
        assertThat(PictureTrace.of(picture, USUAL).outline().holes()).isEmpty();
        Outline kept = PictureTrace.of(
                        picture,
                        new PictureTrace.Setup(Optional.empty(), OptionalDouble.of(300), 0.1, OptionalDouble.of(10)))
                .outline();
        assertThat(kept.holes()).hasSize(1);
        Outline hole = Outline.of(kept.holes().get(0));
        assertThat(hole.area()).isCloseTo(Math.PI * 16, within(1.0));
        assertThat(hole.centroid().distance(new Point(18, 22))).isLessThan(0.02);
    }

    @Test
    void blackOnAnyGroundByDarkness() throws IOException {
        Outline star = Shape.STAR.outline();
        byte[] png = Pictures.png(star, Pictures.Look.BLACK_ON_WHITE, 300);
        PictureTrace.Setup dark =
                new PictureTrace.Setup(Optional.of("darkness"), OptionalDouble.of(300), 0.1, OptionalDouble.empty());
        assertSame(star, PictureTrace.of(PictureReader.read("star.png", png), dark), MOST);
    }

    @Test
    void takesItsSizeFromThePicture() throws IOException {
        byte[] png = Pictures.withDensity(Pictures.png(Shape.CIRCLE.outline(), Pictures.Look.TRANSPARENT, 300), 5906);
        PictureTrace.Setup asTheFileSays =
                new PictureTrace.Setup(Optional.empty(), OptionalDouble.empty(), 0.1, OptionalDouble.empty());
        PictureTrace.Traced traced = PictureTrace.of(PictureReader.read("half.png", png), asTheFileSays);
        assertThat(traced.dpi()).isCloseTo(150.01, within(0.01));
        assertThat(traced.outline().bounds().width()).isCloseTo(80, within(0.2));
    }

    @Test
    void whatCannotBeTracedIsSaid() throws IOException {
        PictureTrace.Setup noSize =
                new PictureTrace.Setup(Optional.empty(), OptionalDouble.empty(), 0.1, OptionalDouble.empty());
        byte[] png = Pictures.png(Shape.CIRCLE.outline(), Pictures.Look.TRANSPARENT, 300);
        Picture picture = PictureReader.read("body.png", png);
        assertThatThrownBy(() -> PictureTrace.of(picture, noSize))
                .isInstanceOf(PictureException.class)
                .hasMessage("body.png: does not say how many pixels an inch it has; say so, as in --dpi 300");
        Picture blank = PictureReader.read("blank.png", Pictures.plain(40, 30, Color.WHITE));
        assertThatThrownBy(() -> PictureTrace.of(blank, USUAL)).hasMessageContaining("blank.png: shows no subject");
        Picture noisy = PictureReader.read("noisy.png", Pictures.noise(200, 200));
        assertThatThrownBy(() -> PictureTrace.of(noisy, USUAL)).hasMessageContaining("no one colour along its border");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.05, 0.1, 0.3})
    void coarserHasFewerPoints(double tolerance) throws IOException {
        Outline circle = Shape.CIRCLE.outline();
        Picture picture = PictureReader.read("circle.png", Pictures.png(circle, Pictures.Look.TRANSPARENT, 300));
        PictureTrace.Traced traced = PictureTrace.of(
                picture,
                new PictureTrace.Setup(Optional.empty(), OptionalDouble.of(300), tolerance, OptionalDouble.empty()));
        assertSame(circle, traced, tolerance + 0.03);
        // Chords that leave a circle of 20 mm by the tolerance at most number so many at least.
        assertThat(traced.outline().outer().size())
                .isLessThan((int) (3 * Math.PI / Math.acos(1 - 0.75 * tolerance / 20)));
    }
}
