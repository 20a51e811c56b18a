package jackwork.drawing;

import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** Sheets as PDF pages in true size. The same sheets give the same bytes. */
public final class PdfWriter {

    private PdfWriter() {}

    /**
     * @throws IllegalArgumentException when a sheet does not fit the paper; the message gives the room there is
     */
    public static byte[] write(List<CutSheet> sheets, PrintSetup setup) {
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("no sheet to print; a PDF needs at least one page");
        }
        try (PdfFile file = new PdfFile()) {
            for (int i = 0; i < sheets.size(); i++) {
                page(file, sheets.get(i), "page " + (i + 1) + " of " + sheets.size(), setup);
            }
            return file.bytes();
        } catch (IOException e) {
            throw new UncheckedIOException("writing a PDF to memory failed", e);
        }
    }

    /** The room that a paper leaves for a sheet with this title, mm from the page's lower left corner. */
    public static Bounds room(Paper paper, String title, List<String> cautions) {
        try (PdfFile file = new PdfFile()) {
            PageLayout layout = PageLayout.on(paper, title, cautions, file.text());
            double left = PageLayout.MARGIN;
            double bottom = layout.partsBottom();
            return new Bounds(left, bottom, left + layout.roomWidth(), bottom + layout.roomHeight());
        } catch (IOException e) {
            throw new UncheckedIOException("closing an empty PDF failed", e);
        }
    }

    private static void page(PdfFile file, CutSheet sheet, String number, PrintSetup setup) throws IOException {
        PdfText text = file.text();
        PageLayout layout = PageLayout.of(sheet, setup, text);
        try (PdfCanvas canvas = file.page(layout, number)) {
            legend(file, canvas, layout, sheet, setup.pens());
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

    private static void legend(PdfFile file, PdfCanvas canvas, PageLayout layout, CutSheet sheet, Pens pens)
            throws IOException {
        double x = PageLayout.MARGIN;
        for (CutKind kind : CutKind.values()) {
            boolean used = sheet.paths(kind).findAny().isPresent()
                    || sheet.labels(kind).findAny().isPresent();
            if (used) {
                x = file.legend(canvas, x, layout.legendBottom(), pens.of(kind), kind.words());
            }
        }
    }
}
