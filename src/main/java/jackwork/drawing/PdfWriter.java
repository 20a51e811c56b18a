package jackwork.drawing;

import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Sheets as PDF pages in true size, each with a 100 mm line to check the printer by. The same sheets
 * give the same bytes: no dates, a fixed document id.
 */
public final class PdfWriter {

    private static final Pens.Pen INK = new Pens.Pen(0x222222, 0.2);

    private static final String CHECK = "This line is 100 mm long. If yours is not, print again at 100 %.";

    /** Any fixed number; PDFBox makes the file's id from it instead of from the time. */
    private static final long DOCUMENT_ID = 100;

    private PdfWriter() {}

    /**
     * @throws IllegalArgumentException when a sheet does not fit the paper; the message gives the room there is
     */
    public static byte[] write(List<CutSheet> sheets, PrintSetup setup) {
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("no sheet to print; a PDF needs at least one page");
        }
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            // Print scaling is of PDF 1.6.
            document.setVersion(1.6f);
            document.setDocumentId(DOCUMENT_ID);
            PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
            preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            PdfText text = new PdfText(document);
            for (int i = 0; i < sheets.size(); i++) {
                page(document, text, sheets.get(i), "page " + (i + 1) + " of " + sheets.size(), setup);
            }
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("writing a PDF to memory failed", e);
        }
    }

    /** The room that a paper leaves for a sheet with this title, mm from the page's lower left corner. */
    public static Bounds room(Paper paper, String title, List<String> cautions) {
        try (PDDocument document = new PDDocument()) {
            PageLayout layout = PageLayout.on(paper, title, cautions, new PdfText(document));
            double left = PageLayout.MARGIN;
            double bottom = layout.partsBottom();
            return new Bounds(left, bottom, left + layout.roomWidth(), bottom + layout.roomHeight());
        } catch (IOException e) {
            throw new UncheckedIOException("closing an empty PDF failed", e);
        }
    }

    private static void page(PDDocument document, PdfText text, CutSheet sheet, String number, PrintSetup setup)
            throws IOException {
        PageLayout layout = PageLayout.of(sheet, setup, text);
        try (PdfCanvas canvas = new PdfCanvas(document, text, layout.width(), layout.height())) {
            furniture(canvas, text, layout, number);
            legend(canvas, text, layout, sheet, setup.pens());
            // Across the middle, up against the title.
            double spare = layout.roomHeight() - sheet.height();
            canvas.origin(new Point((layout.width() - sheet.width()) / 2, layout.partsBottom() + spare));
            for (CutKind kind : CutKind.values()) {
                canvas.pen(setup.pens().of(kind));
                for (CutPath path : sheet.paths(kind).toList()) {
                    canvas.draw(path.shape());
                }
                for (Label label : sheet.labels(kind).toList()) {
                    canvas.write(label.height() / text.capital(), label.at(), label.text());
                }
            }
        }
    }

    private static void furniture(PdfCanvas canvas, PdfText text, PageLayout layout, String number) throws IOException {
        canvas.pen(INK);
        double left = PageLayout.MARGIN;
        double y = layout.height() - PageLayout.MARGIN;
        for (String line : layout.title()) {
            y -= PageLayout.TITLE_LINE;
            canvas.write(PageLayout.TITLE_SIZE, new Point(left, y + 1.5), line);
        }
        double right = layout.width() - PageLayout.MARGIN - text.width(PageLayout.SMALL_SIZE, number);
        double top = layout.height() - PageLayout.MARGIN - PageLayout.TITLE_LINE;
        canvas.write(PageLayout.SMALL_SIZE, new Point(right, top + 1.5), number);
        y = layout.legendBottom();
        checkLine(canvas, left, y + PageLayout.CHECK_RISE);
        y -= PageLayout.LEGEND_GAP;
        for (String line : layout.cautions()) {
            y -= PageLayout.SMALL_LINE;
            canvas.write(PageLayout.SMALL_SIZE, new Point(left, y + 1), line);
        }
    }

    private static void checkLine(PdfCanvas canvas, double left, double y) throws IOException {
        double right = left + PageLayout.CHECK_LENGTH;
        canvas.draw(new CutShape.Line(List.of(new Point(left, y), new Point(right, y))));
        canvas.draw(new CutShape.Line(List.of(new Point(left, y - 1.5), new Point(left, y + 1.5))));
        canvas.draw(new CutShape.Line(List.of(new Point(right, y - 1.5), new Point(right, y + 1.5))));
        canvas.write(PageLayout.SMALL_SIZE, new Point(left + 1.5, y + 1), CHECK);
    }

    /** A stroke of each pen in use, with what it means, so that nobody has to know the colours. */
    private static void legend(PdfCanvas canvas, PdfText text, PageLayout layout, CutSheet sheet, Pens pens)
            throws IOException {
        double x = PageLayout.MARGIN;
        double y = layout.legendBottom();
        for (CutKind kind : CutKind.values()) {
            if (sheet.paths(kind).findAny().isEmpty()
                    && sheet.labels(kind).findAny().isEmpty()) {
                continue;
            }
            canvas.pen(pens.of(kind));
            canvas.draw(new CutShape.Line(List.of(new Point(x, y + 0.9), new Point(x + 6, y + 0.9))));
            canvas.pen(INK);
            canvas.write(PageLayout.SMALL_SIZE, new Point(x + 7, y), kind.words());
            x += 12 + text.width(PageLayout.SMALL_SIZE, kind.words());
        }
    }
}
