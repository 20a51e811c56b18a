package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a drawing may not do, and what its maker is told. */
@Tag("quick")
class HostileSvgTest {

    @Test
    void entitiesOfTheFilesOwnAreRefusedBeforeAnyIsExpanded() {
        String bomb = "<!DOCTYPE svg [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;&a;&a;'>]>\n"
                + Svg.page("<path id='p' d='&b;'/>");

        assertThatThrownBy(() -> Svg.readFile(bomb))
                .isInstanceOf(DrawingException.class)
                .hasMessageStartingWith("heron.svg:1:15: the document type declares entities of its own")
                .hasMessageContaining("save the drawing as plain SVG");
    }

    @Test
    void nothingOutsideIsFetched(@TempDir Path folder) throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.dtd"), "<!ENTITY x 'M0 0H5V5z'>");
        String svg = "<!DOCTYPE svg SYSTEM '" + secret.toUri() + "'>\n"
                + Svg.page("<rect id='seen' width='5' height='5'/><use id='far' href='" + secret.toUri() + "#x'/>");

        assertThat(Svg.readFile(svg).outlines()).containsOnlyKeys("seen");
        assertThatThrownBy(() -> Svg.readFile(svg.replace("id='seen'", "id='&x;'")))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("entity &x; is not read for safety");
        assertThat(Svg.readFile(svg.replace("</svg>", "<text>&x;</text></svg>")).outlines())
                .containsOnlyKeys("seen");
    }

    @Test
    void filesBeyondTheLimitAreNotParsed() {
        byte[] large = new byte[SvgSource.MOST_BYTES + 1];

        assertThatThrownBy(() -> SvgReader.read("big.svg", large))
                .hasMessageContaining("20000001 bytes, at most 20000000");
    }

    @Test
    void aMillionPathPointsAreTheMost() {
        String half = "<path id='p%d' d='M0 0" + "h1v1h-1v-1".repeat(150_000) + "'/>";

        assertThatThrownBy(() -> Svg.read(String.format(half + half, 1, 2)))
                .hasMessageContaining("\"p2\"")
                .hasMessageContaining("more than 1000000 path points");
    }

    @Test
    void aFewBytesOfCurvesOrArcsCannotAskForMoreThanThat() {
        String curves = "<path id='p' d='M0 0" + "C90000 0 -90000 9 0 0".repeat(500) + "'/>";
        String arc = "<path id='p' d='M0 0A1e12 1 0 1 1 1 1'/>";

        assertThatThrownBy(() -> Svg.read(curves)).hasMessageContaining("path points");
        assertThatThrownBy(() -> Svg.read(arc)).isInstanceOf(DrawingException.class);
    }

    @Test
    void elementsNestAHundredDeepAndNoDeeper() {
        String inside = "<rect id='r' width='5' height='5'/>";

        assertThat(Svg.read("<g>".repeat(98) + inside + "</g>".repeat(98)).outlines())
                .containsOnlyKeys("r");
        assertThatThrownBy(() -> Svg.read("<g>".repeat(99) + inside + "</g>".repeat(99)))
                .hasMessageContaining("nested deeper than 100");
    }

    @Test
    void copiesThatCopyThemselvesOrMultiplyEndInAnError() {
        StringBuilder doubling = new StringBuilder("<g id='g0'><rect width='1' height='1'/></g>");
        for (int i = 1; i < 40; i++) {
            doubling.append(String.format("<g id='g%d'><use href='#g%d'/><use href='#g%d'/></g>", i, i - 1, i - 1));
        }

        assertThatThrownBy(() -> Svg.read("<g id='g'><use href='#g'/></g>")).hasMessageContaining("in a circle");
        Assertions.assertTimeout(
                Duration.ofSeconds(10),
                () -> assertThatThrownBy(() -> Svg.read(doubling.toString())).hasMessageContaining("1000000 elements"));
    }

    @Test
    void emptyTagsCannotFillTheMemory() {
        assertThatThrownBy(() -> Svg.read("<g/>".repeat(SvgParser.MOST_ELEMENTS)))
                .hasMessageContaining("more than 200000 elements");
    }

    @ParameterizedTest
    @CsvSource({
        "M0 0L1e999 0z, beyond all bounds",
        "M0 0LNaN 0z, a number",
        "M0 0L Infinity 0z, a number",
        "M0 0L100001 0 5 5z, 'at most 100000 mm'",
        "M0 0L1e300 0 5 5z, 'at most 100000 mm'",
        "L5 5z, where the path begins",
        "M5, a number",
        "M0 0L5 5 z 7, a path command after Z",
        "M0 0A5 5 0 2 0 9 9, a flag",
        "M0 0L1..2 3, a number",
    })
    void numbersAndCommandsThatAreNoneAreNamed(String d, String expected) {
        assertThatThrownBy(() -> Svg.read("<path id='beak' d='" + d + "'/>"))
                .isInstanceOf(DrawingException.class)
                .hasMessageContaining("heron.svg:2:1: \"beak\" (<path>): ")
                .hasMessageContaining(expected);
    }

    @Test
    void aBadNumberIsQuotedWithItsPlace() {
        assertThatThrownBy(() -> Svg.read("<path id='beak' d='M0 0 L5 five'/>"))
                .hasMessageContaining("in d, character 9: read \"five\", a number");
    }

    @Test
    void anOutlineThatCrossesItselfIsNamedWithThePlaceInMillimetres() {
        DrawingException e = catchThrowableOfType(
                DrawingException.class, () -> Svg.read("<g>\n  <path id='bow' d='M10 10L30 30 30 10 10 30z'/></g>"));

        assertThat(e)
                .hasMessageContaining("\"bow\" does not bound one region")
                .hasMessageContaining("(20.000, 80.000) mm");
        assertThat(e.line()).isEqualTo(3);
        assertThat(e.column()).isEqualTo(3);
        assertThat(e.file()).isEqualTo("heron.svg");
        assertThat(e.at().orElseThrow().x()).isCloseTo(20, within(1e-9));
        assertThat(e.at().orElseThrow().y()).isCloseTo(80, within(1e-9));
    }

    @Test
    void severalOutlinesInOnePathAreRefused() {
        assertThatThrownBy(() -> Svg.read("<path id='two' d='M0 0h9v9h-9z M20 20h5v5h-5z'/>"))
                .hasMessageContaining("\"two\"")
                .hasMessageContaining("several separate outlines");
        assertThatThrownBy(() -> Svg.read("<path id='mixed' d='M0 0h9v9h-9z M2 2h5v5'/>"))
                .hasMessageContaining("2 pieces and not all of them are closed");
        assertThatThrownBy(() -> Svg.read("<path id='ring' d='M0 0h9v9h-9z M1 1h7v7h-7z M2 2h5v5h-5z'/>"))
                .hasMessageContaining("does not bound one region");
        assertThatThrownBy(() -> Svg.read("<path id='thin' d='M0 0h9z'/>"))
                .hasMessageContaining("at least three points");
    }

    @Test
    void anIdThatStandsTwiceIsNamedWithBothPlaces() {
        assertThatThrownBy(() -> Svg.read("<rect id='wing' width='5' height='5'/>\n<g>\n<circle id='wing' r='3'/></g>"))
                .hasMessageStartingWith("heron.svg:4:1: \"wing\"")
                .hasMessageContaining("already stands in line 2");
        assertThatThrownBy(() -> Svg.read("<defs><rect id='wing' width='5' height='5'/></defs>\n<use href='#wing'/>\n"
                        + "<use href='#wing' x='9'/>"))
                .hasMessageStartingWith("heron.svg:4:1: ")
                .hasMessageContaining("after line 3; give each <use>");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "not xml at all",
                "<html></html>",
                "<svg width='10mm' height='10mm'>",
                "<svg width='10mm'></svg>",
                "<svg width='10furlong' height='10mm'></svg>",
                "<svg width='0' height='10mm'></svg>",
                "<svg width='-5' height='10mm'></svg>",
                "<svg width='1e9mm' height='10mm'></svg>",
                "<svg width='10mm' height='10mm' viewBox='0 0 0 10'></svg>",
                "<svg width='10mm' height='10mm' viewBox='0 0 nan 10'></svg>",
                "<?xml version='1.0' encoding='no-such'?><svg/>",
                "<svg width='9' height='9'><use href='#gone'/></svg>",
                "<svg width='9' height='9'><rect id='r' width='-1' height='3'/></svg>",
                "<svg width='9' height='9'><rect id='r' width='1' height='3' transform='spin(3)'/></svg>",
                "<svg width='9' height='9'><rect id='r' width='1' height='3' transform='rotate(3'/></svg>",
                "<svg width='9' height='9'><rect id='r' width='1' height='3' style='transform:scale(2)'/></svg>",
                "<svg width='9' height='9'><rect id='origin' width='1' height='3'/></svg>",
                "<svg width='9' height='9'><polygon id='p' points='1,2,3'/></svg>",
            })
    void everythingElseThatIsWrongIsADrawingError(String svg) {
        assertThatThrownBy(() -> Svg.readFile(svg))
                .isInstanceOf(DrawingException.class)
                .hasMessageMatching("heron\\.svg:\\d+:\\d+: .{20,}");
    }

    @Test
    void bytesThatAreNoTextAreRefused() {
        assertThatThrownBy(() -> SvgReader.read("a.svg", new byte[] {'<', 's', (byte) 0xc3, 'v'}))
                .hasMessageContaining("not valid UTF-8");
        assertThatThrownBy(() -> SvgReader.read("a.svgz", new byte[] {0x1f, (byte) 0x8b, 8}))
                .hasMessageContaining("compressed");
    }

    /** Also shows that places count code points and are right far into a file, past the parser's buffers. */
    @Test
    void placesAreRightFarIntoAFile() {
        String filler = "<!-- 😀 & a long remark that fills the parser's buffer -->\r\n".repeat(3000);

        assertThatThrownBy(() -> Svg.read(filler + "<g>😀<path id='p'\n d='X'/></g>"))
                .hasMessageStartingWith("heron.svg:3002:5: \"p\"");
    }

    @Test
    void randomBytesInAGoodFileNeverBreakMoreThanTheReading() {
        byte[] good = Svg.page("<g transform='rotate(5)'><path id='p' d='M1 1C2 3 4 5 6 7A5 5 0 0 1 9 9z'/>"
                        + "<circle id='c' r='5'/><use href='#c' id='u'/></g>")
                .getBytes(StandardCharsets.UTF_8);
        Random random = new Random(20);
        int refused = 0;
        for (int i = 0; i < 5_000; i++) {
            byte[] bad = good.clone();
            for (int k = random.nextInt(3); k >= 0; k--) {
                bad[random.nextInt(bad.length)] = (byte) (random.nextInt(95) + 32);
            }
            try {
                SvgReader.read("f.svg", bad);
            } catch (DrawingException e) {
                refused++;
            }
        }
        assertThat(refused).isBetween(1_000, 4_999);
    }
}
