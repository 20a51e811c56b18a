package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.geometry.Point;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

@Tag("quick")
@Isolated("turns the whole process to other digits for a moment")
class SvgWriterTest {

    @Test
    void thePageIsInRealMillimetresAndItsGroupsSayWhatTheyDo() throws Exception {
        Element svg = parsed(SvgWriter.write(Sheets.small())).getDocumentElement();

        assertThat(svg.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
        assertThat(svg.getAttribute("width")).isEqualTo("120mm");
        assertThat(svg.getAttribute("height")).isEqualTo("60mm");
        assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 120 60");
        assertThat(ids(svg.getElementsByTagName("g")))
                .containsExactly("engrave", "inside-cuts", "outside-cuts", "marks");
        assertThat(ids(svg.getElementsByTagName("path"))).containsExactly("wing", "slot", "body", "frame");
        assertThat(ids(svg.getElementsByTagName("circle"))).containsExactly("pivot", "disc");
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("Heron, birch 3 mm, sheet 1 <a> & \"b\"");
    }

    @Test
    void yPointsDownAndCirclesStayCircles() throws Exception {
        Document document = parsed(SvgWriter.write(Sheets.small()));
        Element pivot = (Element) document.getElementsByTagName("circle").item(0);
        Element body = (Element) document.getElementsByTagName("path").item(2);

        assertThat(List.of(pivot.getAttribute("cx"), pivot.getAttribute("cy"), pivot.getAttribute("r")))
                .containsExactly("20", "40", "1.6");
        assertThat(body.getAttribute("d")).isEqualTo("M5 55 L95 55 L95 30 L60 4.8766 L5 20 Z");
    }

    @Test
    void coloursAndWidthsAreTheGivenPens() throws Exception {
        Pens pens = new Pens(new Pens.Pen(1, 0.2), new Pens.Pen(0xabc, 0.3), new Pens.Pen(3, 0.4), new Pens.Pen(4, 1));
        Element inside = (Element) parsed(SvgWriter.write(Sheets.small(), pens))
                .getElementsByTagName("g")
                .item(1);

        assertThat(inside.getAttribute("stroke")).isEqualTo("#000abc");
        assertThat(inside.getAttribute("stroke-width")).isEqualTo("0.3");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "-0.00004, 0",
        "0.00005, 0.0001",
        "1e-9, 0",
        "12.5, 12.5",
        "-3.14159265, -3.1416",
        "99999.99999, 100000",
        "1e5, 100000",
        "0.1, 0.1",
        "7.0001, 7.0001",
        "1234567e-4, 123.4567"
    })
    void numbersAreShortAndPlain(double value, String expected) {
        assertThat(SvgWriter.number(value)).isEqualTo(expected);
    }

    @Test
    void numbersThatAreNoneAreRefused() {
        assertThatThrownBy(() -> SvgWriter.number(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SvgWriter.number(1e9)).hasMessageContaining("not on any sheet");
    }

    @Test
    void theSameSheetGivesTheSameBytesInAnyCountry() {
        byte[] first = SvgWriter.write(Sheets.small());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(SvgWriter.write(Sheets.small())).isEqualTo(first);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void textThatXmlCannotHoldIsReplaced() throws Exception {
        CutSheet sheet = new CutSheet(
                "a\u0001b\uD800c",
                9,
                9,
                List.of(),
                List.of(new Label(CutKind.MARK, new Point(1, 1), 2, "]]>&\n\uD83D\uDE00")));

        Document document = parsed(SvgWriter.write(sheet));

        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo("a\uFFFDb\uFFFDc");
        assertThat(document.getElementsByTagName("text").item(0).getTextContent())
                .isEqualTo("]]>&\n\uD83D\uDE00");
    }

    @Test
    void whatIsNoSheetIsRefusedWithWords() {
        CutShape line = new CutShape.Line(List.of(new Point(0, 0), new Point(1, 1)));
        CutPath path = new CutPath(CutKind.MARK, line, "twice");

        assertThatThrownBy(() -> new CutSheet("s", 9, 9, List.of(path, path), List.of()))
                .hasMessageContaining("two paths called \"twice\"");
        assertThatThrownBy(() -> new CutSheet("s", 9, 9, List.of(new CutPath(CutKind.MARK, line, "marks")), List.of()))
                .hasMessageContaining("name of a group");
        assertThatThrownBy(() -> new CutSheet("s", 0, 9, List.of(), List.of())).hasMessageContaining("0.0 x 9.0 mm");
        assertThatThrownBy(() -> new CutShape.Ring(List.of(Point.ORIGIN))).hasMessageContaining("at least 3 points");
        assertThatThrownBy(() -> new Label(CutKind.INSIDE, Point.ORIGIN, 3, "no"))
                .hasMessageContaining("not cut");
    }

    private static Document parsed(byte[] svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        assertThat(new String(svg, StandardCharsets.UTF_8)).doesNotContainPattern("[ \"ML]-?[0-9.]+[eE]");
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
    }

    private static List<String> ids(NodeList elements) {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < elements.getLength(); i++) {
            ids.add(((Element) elements.item(i)).getAttribute("id"));
        }
        return ids;
    }
}
