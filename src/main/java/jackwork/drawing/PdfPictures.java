package jackwork.drawing;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The pages of our own PDFs as pictures, for looking at. */
public final class PdfPictures {

    /** No picture is wider or higher than this, px. */
    public static final int MOST = 1600;

    /**
     * @param width mm
     * @param height mm
     */
    public record PageSize(double width, double height) {}

    private PdfPictures() {}

    /** One for each page. */
    public static List<PageSize> sizes(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<PageSize> sizes = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                var box = page.getMediaBox();
                sizes.add(new PageSize(
                        box.getWidth() / PdfCanvas.POINTS_PER_MM, box.getHeight() / PdfCanvas.POINTS_PER_MM));
            }
            return sizes;
        } catch (IOException e) {
            throw new UncheckedIOException("a PDF of our own cannot be read", e);
        }
    }

    /**
     * A page as PNG.
     *
     * @param page counted from 0
     * @param width px wanted; less where the page would become higher than {@link #MOST}
     * @throws IndexOutOfBoundsException when there is no such page
     */
    public static byte[] png(byte[] pdf, int page, int width) {
        try (PDDocument document = Loader.loadPDF(pdf);
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            var box = document.getPage(page).getMediaBox();
            double scale = Math.min(Math.min(width, MOST) / box.getWidth(), MOST / box.getHeight());
            BufferedImage picture = new PDFRenderer(document).renderImage(page, (float) scale, ImageType.RGB);
            if (!ImageIO.write(picture, "png", out)) {
                throw new IllegalStateException("this Java writes no PNG");
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a PDF of our own cannot be drawn", e);
        }
    }
}
