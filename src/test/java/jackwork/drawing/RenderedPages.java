package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/** Pages as a renderer that is not ours shows them: poppler's pdftoppm at 600 dpi, measured in pixels. */
public final class RenderedPages {

    static final double PER_MM = 600 / 25.4;

    /** Pixels of a kind, taken together. */
    private static final class Found {
        private long sumX;
        private long sumY;
        private int count;
        private int minX = Integer.MAX_VALUE;
        private int minY = Integer.MAX_VALUE;
        private int maxX;
        private int maxY;

        void add(int x, int y) {
            sumX += x;
            sumY += y;
            count++;
            minX = Math.min(minX, x);
            minY = Math.min(minY, y);
            maxX = Math.max(maxX, x);
            maxY = Math.max(maxY, y);
        }
    }

    /** mm from the page's upper left corner, y down. */
    public record Page(int width, int height, int header, byte[] pixels) {

        int colour(int x, int y) {
            int at = header + 3 * (y * width + x);
            return (pixels[at] & 255) << 16 | (pixels[at + 1] & 255) << 8 | pixels[at + 2] & 255;
        }

        private static int index(double mm, int most) {
            return (int) Math.max(0, Math.min(most, Math.round(mm * PER_MM)));
        }

        /** Middle of all pixels of a kind, mm. */
        public Point middle(IntPredicate kind, Bounds within) {
            Found found = found(kind, within);
            return new Point(
                    ((double) found.sumX / found.count + 0.5) / PER_MM,
                    ((double) found.sumY / found.count + 0.5) / PER_MM);
        }

        /** What pixels of a kind span, mm. */
        public Bounds span(IntPredicate kind, Bounds within) {
            Found found = found(kind, within);
            return new Bounds(
                    found.minX / PER_MM, found.minY / PER_MM, (found.maxX + 1) / PER_MM, (found.maxY + 1) / PER_MM);
        }

        private Found found(IntPredicate kind, Bounds within) {
            Found found = new Found();
            int right = index(within.maxX(), width);
            int bottom = index(within.maxY(), height);
            for (int y = index(within.minY(), height); y < bottom; y++) {
                for (int x = index(within.minX(), width); x < right; x++) {
                    if (kind.test(colour(x, y))) {
                        found.add(x, y);
                    }
                }
            }
            assertThat(found.count).as("pixels within %s", within).isPositive();
            return found;
        }

        /** Longest dark run along any row of the lowest 60 mm, mm. */
        public double checkLine() {
            int longest = 0;
            for (int y = height - (int) (60 * PER_MM); y < height; y++) {
                int run = 0;
                for (int x = 0; x < width; x++) {
                    run = isInk(colour(x, y)) ? run + 1 : 0;
                    longest = Math.max(longest, run);
                }
            }
            return longest / PER_MM;
        }
    }

    private RenderedPages() {}

    public static boolean isInk(int colour) {
        int red = colour >> 16 & 255;
        int green = colour >> 8 & 255;
        int blue = colour & 255;
        return Math.max(red, Math.max(green, blue)) < 120 && Math.abs(red - green) < 15 && Math.abs(green - blue) < 15;
    }

    /** The pen of a part's edge. */
    public static boolean isEdge(int colour) {
        int red = colour >> 16 & 255;
        int green = colour >> 8 & 255;
        int blue = colour & 255;
        return green - red > 30 && blue - red > 30;
    }

    /** The pen of holes. */
    public static boolean isHole(int colour) {
        int red = colour >> 16 & 255;
        int green = colour >> 8 & 255;
        int blue = colour & 255;
        return red - green > 35 && blue - green > 25;
    }

    public static List<Page> of(Path folder, byte[] pdf) throws IOException, InterruptedException {
        Path file = Files.write(folder.resolve("pages.pdf"), pdf);
        Process process;
        try {
            process = new ProcessBuilder(
                            "pdftoppm",
                            "-r",
                            "600",
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
        List<Page> pages = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path page :
                    files.filter(f -> f.toString().endsWith(".ppm")).sorted().toList()) {
                pages.add(page(Files.readAllBytes(page)));
                Files.delete(page);
            }
        }
        return pages;
    }

    /** "P6", width, height, 255, each on or after a line, then the pixels. */
    private static Page page(byte[] ppm) {
        String[] head = new String(ppm, 0, 40, StandardCharsets.ISO_8859_1).split("\\s", 5);
        int header = head[0].length() + head[1].length() + head[2].length() + head[3].length() + 4;
        return new Page(Integer.parseInt(head[1]), Integer.parseInt(head[2]), header, ppm);
    }
}
