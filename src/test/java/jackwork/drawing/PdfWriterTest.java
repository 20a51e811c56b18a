package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("quick")
class PdfWriterTest {

    private static final PrintSetup ON_A4 = PrintSetup.on(Paper.A4, Sheets.CAUTIONS);

    /** ISO 216 and inch sizes in points of 1/72 inch: A4 is 595.2756 x 841.8898, Letter 612 x 792. */
    @ParameterizedTest
    @CsvSource({"A4, 595.2756, 841.8898", "A3, 841.8898, 1190.5512", "Letter, 612, 792"})
    void paperIsItsStandardSize(String name, float width, float height) throws IOException {
        Paper paper = List.of(Paper.A4, Paper.A3, Paper.LETTER).stream()
                .filter(p -> p.name().equals(name))
                .findAny()
                .orElseThrow();
        try (PDDocument document = written(PrintSetup.on(paper, List.of()), Sheets.small())) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(width, within(1e-3f));
            assertThat(document.getPage(0).getMediaBox().getHeight()).isCloseTo(height, within(1e-3f));
        }
    }

    @Test
    void viewersAreToldNotToScale() throws IOException {
        try (PDDocument document = written(ON_A4, Sheets.small())) {
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
            assertThat(document.getPage(0).getUserUnit()).isEqualTo(1);
        }
    }

    @Test
    void everyPointIsWhereTheSheetHasItWithinAHundredthOfAMillimetre() throws IOException {
        CutSheet sheet = Sheets.small();
        try (PDDocument document = written(ON_A4, sheet)) {
            List<PdfStrokes.Stroke> strokes = PdfStrokes.of(document.getPage(0));
            Point corner = lowerLeft(strokes, sheet);

            for (CutPath path : sheet.paths()) {
                if (path.shape() instanceof CutShape.Ring ring) {
                    assertThat(strokes).anyMatch(s -> s.closed() && same(s.points(), ring.points(), corner));
                } else if (path.shape() instanceof CutShape.Line line) {
                    assertThat(strokes).anyMatch(s -> !s.closed() && same(s.points(), line.points(), corner));
                }
            }
        }
    }

    /** 1000 mm across is more than four curves could hold. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1.6, 7, 8, 60, 500})
    void circlesAreRoundWithinTwoMicrometresOnPaper(double radius) throws IOException {
        double size = 2 * radius + 10;
        Circle circle = new Circle(new Point(size / 2, size / 2), radius);
        List<CutPath> paths = List.of(new CutPath(CutKind.INSIDE, new CutShape.Round(circle), "c"));
        CutSheet sheet = new CutSheet("one circle", size, size, paths, List.of());
        try (PDDocument document = written(PrintSetup.asLargeAsNeeded(List.of()), sheet)) {
            PDPage page = document.getPage(0);
            PdfStrokes.Stroke drawn = PdfStrokes.of(page).stream()
                    .filter(s -> !s.onCurves().isEmpty())
                    .findAny()
                    .orElseThrow();
            double middle = page.getMediaBox().getWidth() / 2 / PdfCanvas.POINTS_PER_MM;
            double top = drawn.points().stream().mapToDouble(Point::y).max().orElseThrow();
            Point centre = new Point(middle, top - radius);

            assertThat(drawn.closed()).isTrue();
            assertThat(drawn.points().stream().mapToDouble(p -> Math.abs(p.distance(centre) - radius)))
                    .allMatch(error -> error < 2e-4);
            // The file's own numbers are good to 1e-4 point.
            assertThat(drawn.onCurves().stream().mapToDouble(p -> Math.abs(p.distance(centre) - radius)))
                    .allMatch(error -> error < 0.002 + 2e-4);
        }
    }

    @Test
    void theCheckLineIsAHundredMillimetresAndClearOfTheParts() throws IOException {
        CutSheet sheet = Sheets.small();
        try (PDDocument document = written(ON_A4, sheet, sheet)) {
            for (PDPage page : document.getPages()) {
                List<PdfStrokes.Stroke> strokes = PdfStrokes.of(page);
                PdfStrokes.Stroke check = checkLine(strokes);

                assertThat(check.points().get(0).distance(check.points().get(1)))
                        .isCloseTo(100, within(0.001));
                assertThat(check.points().get(0).y())
                        .isLessThan(lowerLeft(strokes, sheet).y() - 3);
            }
        }
    }

    @Test
    void wordsOfTheSheetAndCautionsAreOnThePage() throws IOException {
        try (PDDocument document = written(ON_A4, Sheets.small(), Sheets.small())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");

            assertThat(text)
                    .contains("Heron, birch 3 mm, sheet 1 <a> & \"b\"")
                    .contains("HERON body")
                    .contains("sheet <1>")
                    .contains("This line is 100 mm long.")
                    .contains("inside cuts")
                    .contains("page 2 of 2");
            Sheets.CAUTIONS.forEach(caution -> assertThat(text).contains(caution));
        }
    }

    @Test
    void aLyingSheetTurnsThePaper() throws IOException {
        CutSheet lying = new CutSheet("lying", 260, 100, List.of(), List.of());
        try (PDDocument document = written(ON_A4, lying)) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(841.89f, within(0.01f));
        }
    }

    @Test
    void aSheetThatFillsTheRoomFitsAndALargerOneIsRefusedWithTheRoom() throws IOException {
        Bounds room = PdfWriter.room(Paper.A4, "full", Sheets.CAUTIONS);
        CutSheet full = new CutSheet("full", room.width(), room.height(), List.of(), List.of());
        CutSheet larger = new CutSheet("full", room.width() + 0.1, room.height(), List.of(), List.of());

        assertThat(room.width()).isCloseTo(190, within(1e-9));
        try (PDDocument document = written(ON_A4, full)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
        assertThatThrownBy(() -> PdfWriter.write(List.of(larger), ON_A4))
                .hasMessageContaining("A4 has room for 190.0 x")
                .hasMessageContaining("larger paper or print it in pieces");
    }

    @Test
    void theSameSheetsGiveTheSameBytes() {
        byte[] first = PdfWriter.write(List.of(Sheets.small(), Sheets.small()), ON_A4);
        byte[] second = PdfWriter.write(List.of(Sheets.small(), Sheets.small()), ON_A4);

        assertThat(second).isEqualTo(first);
        assertThat(new String(first, StandardCharsets.ISO_8859_1))
                .doesNotContain("CreationDate")
                .doesNotContain("ModDate");
    }

    @Test
    void lettersThatTheFontLacksAreReplacedNotFatal() throws IOException {
        StringBuilder all = new StringBuilder();
        for (int c = 0; c < 0x3000; c++) {
            all.appendCodePoint(c);
        }
        try (PDDocument document = new PDDocument()) {
            PdfText text = new PdfText(document);
            assertThat(text.safe(all.toString())).hasSizeGreaterThan(0x2f00);
            assertThat(text.safe("Čáp – 3 € 😀 žába\tŁ ﬁ ａ 鳥")).isEqualTo("Čáp – 3 € ? žába Ł ﬁ a ?");
        }

        CutSheet sheet = new CutSheet("Čáp 😀", 50, 50, List.of(), List.of());
        try (PDDocument document = written(PrintSetup.on(Paper.A4, List.of("鳥")), sheet)) {
            assertThat(new PDFTextStripper().getText(document)).contains("Čáp ?");
        }
    }

    @Test
    void pagesBeyondWhatReadersTakeAreRefused() {
        CutSheet huge = new CutSheet("huge", 6000, 50, List.of(), List.of());

        assertThatThrownBy(() -> PdfWriter.write(List.of(huge), PrintSetup.asLargeAsNeeded(List.of())))
                .hasMessageContaining("at most 5080");
        assertThatThrownBy(() -> PdfWriter.write(List.of(), ON_A4)).hasMessageContaining("at least one page");
    }

    static PDDocument written(PrintSetup setup, CutSheet... sheets) throws IOException {
        return Loader.loadPDF(PdfWriter.write(List.of(sheets), setup));
    }

    static PdfStrokes.Stroke checkLine(List<PdfStrokes.Stroke> strokes) {
        return strokes.stream()
                .filter(s -> s.points().size() == 2
                        && Math.abs(s.points().get(1).x() - s.points().get(0).x() - 100) < 0.1)
                .findFirst()
                .orElseThrow();
    }

    /** Of the frame, which is as large as the sheet. */
    private static Point lowerLeft(List<PdfStrokes.Stroke> strokes, CutSheet sheet) {
        return strokes.stream()
                .filter(s -> s.closed()
                        && Math.abs(s.points().get(0).distance(s.points().get(2))
                                        - Math.hypot(sheet.width(), sheet.height()))
                                < 0.01)
                .findFirst()
                .orElseThrow()
                .points()
                .get(0);
    }

    private static boolean same(List<Point> got, List<Point> expected, Point corner) {
        if (got.size() != expected.size()) {
            return false;
        }
        for (int i = 0; i < got.size(); i++) {
            if (got.get(i).minus(corner).distance(expected.get(i)) > 0.01) {
                return false;
            }
        }
        return true;
    }
}
