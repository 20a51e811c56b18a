package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page as a renderer that is not ours shows it: poppler's pdftoppm, at 20 pixels a mm. */
class PdfRenderTest {

    private static final int PER_MM = 20;

    @Test
    void theRenderedCheckLineMeasuresAHundredMillimetres(@TempDir Path folder) throws Exception {
        byte[] pdf = PdfWriter.write(List.of(Sheets.small()), PrintSetup.on(Paper.A4, Sheets.CAUTIONS));
        BufferedImage page = rendered(folder, pdf);
        double y;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            y = PdfWriterTest.checkLine(PdfStrokes.of(document.getPage(0)))
                    .points()
                    .get(0)
                    .y();
        }
        int row = (int) Math.round((297 - y) * PER_MM);
        int first = 0;
        while (light(page, first, row)) {
            first++;
        }
        int last = page.getWidth() - 1;
        while (light(page, last, row)) {
            last--;
        }

        assertThat((double) page.getWidth() / PER_MM).isCloseTo(210, within(0.1));
        assertThat((double) page.getHeight() / PER_MM).isCloseTo(297, within(0.1));
        // From middle to middle of the end strokes, each a pen of 0.2 mm wide.
        assertThat((double) (last + 1 - first) / PER_MM).isCloseTo(100.2, within(0.1));
        for (int x = first; x <= last; x++) {
            assertThat(light(page, x, row)).as("gap in the line at pixel %d", x).isFalse();
        }
    }

    private static boolean light(BufferedImage page, int x, int y) {
        return (page.getRGB(x, y) & 0xff) > 128;
    }

    private static BufferedImage rendered(Path folder, byte[] pdf) throws Exception {
        Path file = Files.write(folder.resolve("page.pdf"), pdf);
        Process process;
        try {
            process = new ProcessBuilder(
                            "pdftoppm",
                            "-r",
                            Double.toString(PER_MM * 25.4),
                            "-gray",
                            "-png",
                            "-singlefile",
                            file.toString(),
                            folder.resolve("page").toString())
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("log").toFile())
                    .start();
        } catch (IOException e) {
            throw new AssertionError("pdftoppm is not installed; this check needs it (Debian: poppler-utils)", e);
        }
        assertThat(process.waitFor())
                .as(Files.readString(folder.resolve("log")))
                .isZero();
        return ImageIO.read(folder.resolve("page.png").toFile());
    }
}
