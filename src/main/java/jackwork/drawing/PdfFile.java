package jackwork.drawing;

import jackwork.geometry.Point;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A PDF in the making: pages in true size, each with its title, its cautions and a 100 mm line to check the printer
 * by. The same pages give the same bytes: no dates, a fixed document id.
 */
final class PdfFile implements AutoCloseable {

    static final Pens.Pen INK = new Pens.Pen(0x222222, 0.2);

    private static final String CHECK = "This line is 100 mm long. If yours is not, print again at 100 %.";

    /** Any fixed number; PDFBox makes the file's id from it instead of from the time. */
    private static final long DOCUMENT_ID = 100;

    private final PDDocument document = new PDDocument();
    private final PdfText text = new PdfText(document);
    private final Map<Picture, PDImageXObject> images = new HashMap<>();

    PdfText text() {
        return text;
    }

    /** The same for as many pages as show it. */
    PDImageXObject image(Picture picture) throws IOException {
        PDImageXObject known = images.get(picture);
        if (known == null) {
            known = LosslessFactory.createFromImage(document, picture.onWhite());
            images.put(picture, known);
        }
        return known;
    }

    /** The next page, with its furniture. */
    PdfCanvas page(PageLayout layout, String number) throws IOException {
        PdfCanvas canvas = new PdfCanvas(document, text, layout.width(), layout.height());
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
        return canvas;
    }

    /** A stroke of a pen with what it means, so that nobody has to know the colours; returns where the next begins. */
    double legend(PdfCanvas canvas, double x, double y, Pens.Pen pen, String words) throws IOException {
        canvas.pen(pen);
        canvas.draw(new CutShape.Line(List.of(new Point(x, y + 0.9), new Point(x + 6, y + 0.9))));
        return legendWords(canvas, x, y, words);
    }

    double legendWords(PdfCanvas canvas, double x, double y, String words) throws IOException {
        canvas.pen(INK);
        canvas.write(PageLayout.SMALL_SIZE, new Point(x + 7, y), words);
        return x + 12 + text.width(PageLayout.SMALL_SIZE, words);
    }

    byte[] bytes() throws IOException {
        // Print scaling is of PDF 1.6.
        document.setVersion(1.6f);
        document.setDocumentId(DOCUMENT_ID);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out, CompressParameters.NO_COMPRESSION);
        return out.toByteArray();
    }

    @Override
    public void close() throws IOException {
        document.close();
    }

    private static void checkLine(PdfCanvas canvas, double left, double y) throws IOException {
        double right = left + PageLayout.CHECK_LENGTH;
        canvas.draw(new CutShape.Line(List.of(new Point(left, y), new Point(right, y))));
        canvas.draw(new CutShape.Line(List.of(new Point(left, y - 1.5), new Point(left, y + 1.5))));
        canvas.draw(new CutShape.Line(List.of(new Point(right, y - 1.5), new Point(right, y + 1.5))));
        canvas.write(PageLayout.SMALL_SIZE, new Point(left + 1.5, y + 1), CHECK);
    }
}
