package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PathDataTest {

    private static final String BIG_PAGE = "<svg width='1200mm' height='400mm' viewBox='0 0 1200 400'>%s</svg>";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "M10 10 L30 10 L30 30 L10 30 Z",
                "M10,10 30,10 30,30 10,30z",
                "m10 10 20 0 0 20 -20 0z",
                "M1e1 10H30V30H10Z",
                "m 10,10 h20v20h-20z",
                "M10 10h+2.e1v.2E2h-20.0z",
                "M10 10 30 10 30 30 10 30 10 10",
            })
    void theSameSquareWrittenInManyWays(String d) {
        Outline square = Svg.read("<path id='p' d='" + d + "'/>").outline("p").orElseThrow();

        assertThat(square.outer())
                .containsExactlyInAnyOrder(new Point(10, 90), new Point(30, 90), new Point(30, 70), new Point(10, 70));
    }

    @Test
    void numbersNeedNothingBetweenThemWhereTheirEndIsClear() {
        List<Point> line = line("M1.5.5-2e1+3l.5-.5");

        assertThat(line).containsExactly(new Point(1.5, 99.5), new Point(-20, 97), new Point(-19.5, 97.5));
    }

    @Test
    void drawingOnAfterAClosedPartBeginsWhereThatPartBegan() {
        List<List<Point>> holes = Svg.read("<path id='p' d='M50 50 60 50 60 60z M5 5h90v90h-90z m1 1 h2v2h-2z'/>")
                .outline("p")
                .orElseThrow()
                .holes();

        assertThat(holes)
                .hasSize(2)
                .anySatisfy(hole -> assertThat(hole)
                        .containsExactlyInAnyOrder(
                                new Point(6, 94), new Point(8, 94), new Point(8, 92), new Point(6, 92)));
    }

    /** The three-quarter disc of W3C SVG 1.1, 8.3.8, figure arcs01: area 3/4 of a circle of radius 150. */
    @Test
    void aThreeQuarterDiscFromTheStandard() {
        Outline pie = big("M300,200 h-150 a150,150 0 1,0 150,-150 z");

        assertThat(pie.area()).isCloseTo(0.75 * Math.PI * 150 * 150, within(0.002 * pie.cutLength()));
        assertThat(pie.bounds().maxX()).isCloseTo(450, within(0.002));
        assertThat(pie.bounds().minY()).isCloseTo(50, within(0.002));
    }

    /** The quadratic curve of W3C SVG 1.1, 8.3.7, figure quad01: its halves reach y = 175 and 425, half way to the
     * control points. */
    @Test
    void aSmoothQuadraticCurveFromTheStandard() {
        List<Point> line = Svg.readFile(
                        String.format(BIG_PAGE, "<path id='p' d='M200,300 Q400,50 600,300 T1000,300'/>"))
                .lines()
                .get("p");

        assertThat(lowestY(line)).isCloseTo(-25, within(0.002));
        assertThat(-lowestY(line.stream().map(p -> new Point(p.x(), -p.y())).toList()))
                .isCloseTo(225, within(0.002));
        assertThat(line.get(line.size() - 1)).isEqualTo(new Point(1000, 100));
    }

    @Test
    void flagsMayStandWithoutSeparators() {
        assertThat(big("M300,200h-150a150,150 0 10150-150z").area())
                .isEqualTo(big("M300,200 h-150 a150,150 0 1,0 150,-150 z").area());
    }

    @Test
    void radiiTooSmallToReachAreEnlarged() {
        Outline half = Svg.read("<path id='p' d='M40 50A1 1 0 0 1 60 50z'/>")
                .outline("p")
                .orElseThrow();

        assertThat(half.area()).isCloseTo(Math.PI * 50, within(0.05));
    }

    /** Bernstein's form, evaluated here between the chords' ends. */
    @Test
    void chordsStayWithinTheToleranceOfTheCurve() {
        double[] x = {5, 90, -40, 80};
        double[] y = {5, 10, 95, 90};
        List<Point> line = line("M5 5C90 10-40 95 80 90");

        double worst = 0;
        for (int i = 0; i <= 20_000; i++) {
            double t = i / 20_000.0;
            double s = 1 - t;
            double[] b = {s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t};
            Point on = new Point(
                    b[0] * x[0] + b[1] * x[1] + b[2] * x[2] + b[3] * x[3],
                    100 - (b[0] * y[0] + b[1] * y[1] + b[2] * y[2] + b[3] * y[3]));
            worst = Math.max(worst, distance(line, on));
        }
        assertThat(worst).isLessThan(0.002).isGreaterThan(0.0002);
        assertThat(line).hasSizeLessThan(500);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void transformsNestAsTheJdksOwnDo(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            double[] n = random.doubles(10, -2, 2).toArray();
            AffineTransform reference = new AffineTransform();
            reference.translate(n[0], n[1]);
            reference.rotate(n[2], n[3], n[4]);
            reference.concatenate(new AffineTransform(n[5], n[6], n[7], n[8], n[9], n[0]));
            reference.shear(Math.tan(n[1]), 0);
            reference.shear(0, Math.tan(n[2]));
            reference.scale(n[3], n[4]);
            Point2D expected = reference.transform(new Point2D.Double(3, 4), null);

            String svg = String.format(
                    Locale.ROOT,
                    "<g transform='translate(%.12f,%.12f) rotate(%.12f %.12f %.12f)'>"
                            + "<g transform='matrix(%.12f %.12f %.12f %.12f %.12f %.12f)skewX(%.12f),skewY(%.12f)'>"
                            + "<polyline id='p' transform=' scale( %.12f , %.12f ) ' points='3,4 5 6'/></g></g>",
                    n[0],
                    n[1],
                    Math.toDegrees(n[2]),
                    n[3],
                    n[4],
                    n[5],
                    n[6],
                    n[7],
                    n[8],
                    n[9],
                    n[0],
                    Math.toDegrees(n[1]),
                    Math.toDegrees(n[2]),
                    n[3],
                    n[4]);
            Point got = Svg.read(svg).lines().get("p").get(0);

            double size = 1 + expected.distance(0, 0);
            assertThat(got.distance(new Point(expected.getX(), 100 - expected.getY())))
                    .isLessThan(1e-8 * size);
        }
    }

    private static List<Point> line(String d) {
        return Svg.read("<path id='p' d='" + d + "'/>").lines().get("p");
    }

    private static Outline big(String d) {
        return Svg.readFile(String.format(BIG_PAGE, "<path id='p' d='" + d + "'/>"))
                .outline("p")
                .orElseThrow();
    }

    private static double lowestY(List<Point> line) {
        return line.stream().mapToDouble(Point::y).min().orElseThrow();
    }

    private static double distance(List<Point> line, Point point) {
        double least = Double.MAX_VALUE;
        for (int i = 1; i < line.size(); i++) {
            Point along = line.get(i).minus(line.get(i - 1));
            double share = point.minus(line.get(i - 1)).dot(along) / along.dot(along);
            Point foot = line.get(i - 1).plus(along.times(Math.max(0, Math.min(1, share))));
            least = Math.min(least, point.distance(foot));
        }
        return least;
    }
}
