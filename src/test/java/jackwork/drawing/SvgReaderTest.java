package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("quick")
class SvgReaderTest {

    /** W3C CSS Values and Units 3, absolute lengths: 1 in = 2.54 cm = 25.4 mm = 96 px = 72 pt = 6 pc, 1 Q = 1/40 cm. */
    @ParameterizedTest
    @CsvSource({"254mm", "25.4cm", "10in", "960px", "960", "720pt", "60pc", "1016Q", "2.54e2mm"})
    void everyUnitOfLengthComesToTheSameMillimetres(String length) {
        Drawing drawing = Svg.readFile("<svg xmlns='http://www.w3.org/2000/svg' width='" + length + "' height='"
                + length + "' viewBox='0 0 10 10'><circle id='c' cx='5' cy='2' r='1'/></svg>");

        assertThat(drawing.width()).isCloseTo(254, within(1e-9));
        assertCircle(drawing, "c", 127, 203.2, 25.4);
    }

    @Test
    void withoutAViewBoxAUnitIsAPixelAndLengthsMayCarryUnits() {
        Drawing drawing = Svg.readFile("<svg xmlns='http://www.w3.org/2000/svg' width='50mm' height='40mm'>"
                + "<circle id='px' cx='96' cy='48' r='9.6'/><circle id='mm' cx='20mm' cy='50%' r='2mm'/></svg>");

        assertCircle(drawing, "px", 25.4, 27.3, 2.54);
        assertCircle(drawing, "mm", 20, 20, 2);
    }

    @Test
    void aPageWithoutSizeIsAsLargeAsItsViewBoxInPixels() {
        Drawing drawing = Svg.readFile("<svg viewBox='-96 -96 192 96'><circle id='c' cx='0' cy='-48' r='48'/></svg>");

        assertThat(drawing.width()).isCloseTo(50.8, within(1e-9));
        assertThat(drawing.height()).isCloseTo(25.4, within(1e-9));
        assertCircle(drawing, "c", 25.4, 12.7, 12.7);
    }

    /** A 200 x 100 page with a square view box: 100 units high unless stretched or told to fill. */
    @ParameterizedTest
    @CsvSource({"'', 100, 5", "xMinYMin, 50, 5", "xMaxYMid meet, 150, 5", "xMidYMin slice, 100, 10"})
    void aViewBoxOfOtherProportionsIsPlacedAsAsked(String ratio, double x, double radius) {
        Drawing drawing = Svg.readFile("<svg width='200mm' height='100mm' viewBox='0 0 20 20' preserveAspectRatio='"
                + ratio + "'><circle id='c' cx='10' cy='10' r='1'/></svg>");

        assertThat(drawing.circle("c").orElseThrow().centre().x()).isCloseTo(x, within(1e-9));
        assertThat(drawing.circle("c").orElseThrow().radius()).isCloseTo(radius, within(1e-9));
    }

    @Test
    void theOriginIsTheCircleOfThatNameWithYUp() {
        Drawing drawing = Svg.read("<circle id='origin' cx='30' cy='60' r='1'/><circle id='c' cx='40' cy='10' r='2'/>"
                + "<rect id='r' x='30' y='50' width='4' height='10'/>");

        assertCircle(drawing, "origin", 0, 0, 1);
        assertCircle(drawing, "c", 10, 50, 2);
        assertBounds(drawing.outline("r").orElseThrow(), 0, 0, 4, 10);
    }

    @Test
    void roundedRectanglesAndEllipsesEncloseTheirArea() {
        Drawing drawing = Svg.read("<rect id='rounded' x='10' y='10' width='40' height='20' rx='5'/>"
                + "<rect id='clamped' width='10' height='20' rx='50' ry='4'/>"
                + "<ellipse id='egg' cx='50' cy='50' rx='20' ry='10'/>");

        assertArea(drawing, "rounded", 800 - (4 - Math.PI) * 25);
        assertArea(drawing, "clamped", 200 - (4 - Math.PI) * 5 * 4);
        assertArea(drawing, "egg", Math.PI * 200);
        assertBounds(drawing.outline("egg").orElseThrow(), 30, 40, 70, 60);
    }

    @Test
    void whateverDrawsATrueCircleIsACircle() {
        double k = 0.5522847498 * 10;
        Drawing drawing = Svg.read("<ellipse id='ellipse' cx='50' cy='50' rx='10' ry='10'/>"
                + "<ellipse id='stretched' transform='translate(50 50) rotate(33) scale(2 1)' rx='5' ry='10'/>"
                + "<path id='arcs' d='M40 50a10 10 0 1 0 20 0 10 10 0 1 0-20 0z'/>"
                + "<path id='curves' d='M60 50C60," + (50 + k) + " " + (50 + k) + ",60 50,60S40," + (50 + k)
                + " 40,50 " + (50 - k) + ",40 50,40 60," + (50 - k) + " 60,50'/>");

        assertThat(drawing.outlines()).isEmpty();
        assertCircle(drawing, "ellipse", 50, 50, 10);
        assertCircle(drawing, "stretched", 50, 50, 10);
        assertCircle(drawing, "arcs", 50, 50, 10);
        assertThat(drawing.circle("curves").orElseThrow().centre().distance(new Point(50, 50)))
                .isLessThan(1e-6);
        assertThat(drawing.circle("curves").orElseThrow().radius()).isCloseTo(10, within(0.003));
    }

    @Test
    void whatIsAlmostACircleStaysAnOutline() {
        Drawing drawing = Svg.read(
                "<path id='half' d='M40 50a10 10 0 0 1 20 0z'/>"
                        + "<circle id='squashed' transform='scale(1 .99)' cx='50' cy='50' r='10'/>"
                        + "<polygon id='hexagon' points='60,50 55,58.66025404 45,58.66025404 40,50 45,41.33974596 55,41.33974596'/>");

        assertThat(drawing.circles()).isEmpty();
        assertArea(drawing, "half", Math.PI * 50);
        assertArea(drawing, "squashed", Math.PI * 99);
        assertArea(drawing, "hexagon", 150 * Math.sqrt(3));
    }

    @Test
    void smallerPiecesOfAPathAreItsHolesEvenWhenRoundAndDrawnFirst() {
        Drawing drawing = Svg.read(
                "<path id='plate' d='M24 25a4 4 0 1 0 8 0a4 4 0 1 0-8 0z M10 10h60v40h-60z" + "M50 20v10h10v-10z'/>");

        Outline plate = drawing.outline("plate").orElseThrow();
        assertThat(plate.holes()).hasSize(2);
        // Chords cut at most the tolerance off the round hole's edge of 25.1 mm.
        assertThat(plate.area()).isCloseTo(2400 - 100 - Math.PI * 16, within(0.002 * 25.1));
    }

    @Test
    void whatIsOpenIsALineAndWhatEndsWhereItBeganIsClosed() {
        Drawing drawing = Svg.read("<path id='open' d='M10 10L20 10V30'/><line id='line' x1='1' y1='2' x2='3' y2='4'/>"
                + "<polyline id='bent' points='0,0 5,0 5,5'/><polyline id='shut' points='0,0 5,0 5,5 0,0'/>"
                + "<path id='nothing' d=''/><path id='dot' d='M5 5'/>");

        assertThat(drawing.lines()).containsOnlyKeys("open", "line", "bent");
        assertThat(drawing.lines().get("open"))
                .containsExactly(new Point(10, 90), new Point(20, 90), new Point(20, 70));
        assertThat(drawing.outlines()).containsOnlyKeys("shut");
    }

    @Test
    void whatIsHiddenOrOnlyKeptForUseIsNotDrawn() {
        Drawing drawing = Svg.read(
                "<defs><rect id='a' width='5' height='5'/></defs><g display='none'>"
                        + "<rect id='b' width='5' height='5'/></g><rect id='c' style='fill:red; display : none' width='5' height='5'/>"
                        + "<clipPath><rect id='d' width='5' height='5'/></clipPath><mask><rect id='e' width='5' height='5'/></mask>"
                        + "<pattern><rect id='f' width='5' height='5'/></pattern><symbol id='s'><rect id='g' width='5' height='5'/>"
                        + "</symbol><text id='h'>words</text><rect width='5' height='5'/><rect id='seen' width='5' height='5'/>");

        assertThat(drawing.outlines()).containsOnlyKeys("seen");
        assertThat(drawing.circles()).isEmpty();
        assertThat(drawing.lines()).isEmpty();
    }

    @Test
    void useDrawsCopiesUnderItsOwnIdOrElseTheCopiedOne() {
        Drawing drawing = Svg.read("<use id='second' x='10' y='20' href='#wing'/>"
                + "<use transform='translate(50,0)' xlink:href='#wing'/>"
                + "<rect id='wing' width='5' height='5'/><defs><g id='pair'><circle id='pivot' r='2'/></g></defs>"
                + "<use x='30' y='30' xlink:href='#pair'/><symbol id='s' viewBox='0 0 10 10'><circle id='dot' cx='5' cy='5'"
                + " r='5'/></symbol><use href='#s' x='40' width='20' height='20'/><use href='other.svg#x' id='far'/>");

        assertThat(drawing.outlines()).containsOnlyKeys("second", "wing");
        assertBounds(drawing.outline("second").orElseThrow(), 10, 75, 15, 80);
        assertBounds(drawing.outline("wing").orElseThrow(), 0, 95, 5, 100);
        assertCircle(drawing, "pivot", 30, 70, 2);
        assertCircle(drawing, "dot", 50, 90, 10);
    }

    @Test
    void aNestedSvgIsAWindowOfItsOwn() {
        Drawing drawing = Svg.read("<svg x='10' y='10' width='40' height='40' viewBox='0 0 4 4'>"
                + "<circle id='c' cx='2' cy='2' r='1'/></svg>");

        assertCircle(drawing, "c", 30, 70, 10);
    }

    @Test
    void otherEncodingsAndAPlainDocumentTypeAreRead() {
        String latin =
                "<?xml version='1.0' encoding='ISO-8859-1'?><!-- [ -->\n<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
                        + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>\n"
                        + Svg.page("<circle id='flügel' cx='50' cy='50' r='1'/>");

        Drawing one = SvgReader.read("a.svg", latin.getBytes(StandardCharsets.ISO_8859_1));
        Drawing two = SvgReader.read(
                "b.svg",
                ("\uFEFF" + Svg.page("<circle id='ż' cx='1' cy='1' r='1'/>")).getBytes(StandardCharsets.UTF_16BE));

        assertThat(one.circles()).containsOnlyKeys("flügel");
        assertThat(two.circles()).containsOnlyKeys("ż");
    }

    @Test
    void partsComeInTheOrderOfTheDrawing() {
        Drawing drawing = Svg.read("<g><rect id='z' width='1' height='1'/><rect id='b' width='1' height='1'/></g>"
                + "<rect id='a' width='1' height='1'/>");

        assertThat(List.copyOf(drawing.outlines().keySet())).containsExactly("z", "b", "a");
    }

    private static void assertCircle(Drawing drawing, String id, double x, double y, double radius) {
        Circle circle = drawing.circle(id).orElseThrow();
        assertThat(circle.centre().distance(new Point(x, y))).isLessThan(1e-9);
        assertThat(circle.radius()).isCloseTo(radius, within(1e-9));
    }

    /** Chords lie inside a convex curve, by at most the tolerance all along the edge. */
    private static void assertArea(Drawing drawing, String id, double expected) {
        Outline outline = drawing.outline(id).orElseThrow();
        assertThat(outline.area()).isBetween(expected - 0.002 * outline.cutLength(), expected + 1e-3);
    }

    private static void assertBounds(Outline outline, double minX, double minY, double maxX, double maxY) {
        Bounds bounds = outline.bounds();
        double[] got = {bounds.minX(), bounds.minY(), bounds.maxX(), bounds.maxY()};
        assertThat(got).containsExactly(new double[] {minX, minY, maxX, maxY}, within(0.002));
    }
}
