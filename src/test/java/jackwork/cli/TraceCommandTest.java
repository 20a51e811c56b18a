package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.drawing.Drawing;
import jackwork.drawing.Pictures;
import jackwork.drawing.SvgReader;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code jackwork trace} as typed: a picture in, a drawing out that a design can name. */
class TraceCommandTest {

    /** What is said on either stream. */
    private static String said(int exit, String... arguments) {
        Ran ran = Ran.run(arguments);
        assertThat(ran.exit()).isEqualTo(exit);
        return ran.out() + ran.err();
    }

    private static String complaint(String... arguments) {
        return said(2, arguments);
    }

    @Test
    void aPictureBecomesADrawing(@TempDir Path folder) throws IOException {
        Outline disc = Outline.disc(new Circle(new Point(20, 20), 14), 0.001);
        Path png = Files.write(folder.resolve("disc.png"), Pictures.onColour(disc, 300));
        Path svg = folder.resolve("outline.svg");
        String said = said(
                0,
                "trace",
                png.toString(),
                "--dpi",
                "300",
                "--tolerance",
                "0.1",
                "-o",
                svg.toString(),
                "--name",
                "body");
        assertThat(said).contains("At 300 dpi the picture is").contains("outline.svg");
        Drawing drawing = SvgReader.read("outline.svg", Files.readAllBytes(svg));
        Outline read = drawing.outline("body").orElseThrow();
        for (Point point : read.outer()) {
            assertThat(disc.distanceToEdge(point)).isLessThan(0.15);
        }
        for (Point point : disc.outer()) {
            assertThat(read.distanceToEdge(point)).isLessThan(0.15);
        }
    }

    @Test
    void whatIsWrongIsSaid(@TempDir Path folder) throws IOException {
        Outline disc = Outline.disc(new Circle(new Point(20, 20), 14), 0.001);
        String png = Files.write(folder.resolve("disc.png"), Pictures.onColour(disc, 300))
                .toString();
        String out = folder.resolve("out.svg").toString();
        assertThat(complaint("trace", png, "-o", out)).contains("does not say how many pixels an inch");
        assertThat(complaint("trace", png, "-o", out, "--dpi", "300", "--name", "no name"))
                .contains("--name reads \"no name\"");
        assertThat(complaint("trace", png, "-o", out, "--dpi", "300", "--by", "magic"))
                .contains("expected alpha, background or darkness");
        assertThat(complaint("trace", png, "-o", out, "--dpi", "300", "--tolerance", "-1"))
                .contains("the tolerance reads -1.0 mm");
        assertThat(complaint("trace", folder.resolve("none.png").toString(), "-o", out))
                .contains("no such file");
        assertThat(complaint("trace", "README.md", "-o", out)).contains("save the picture as PNG");
        assertThat(Path.of(out)).doesNotExist();
    }
}
