package jackwork.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo's pictures are those that the program beside this test draws. */
class DemoPicturesTest {

    /** Edges are smoothed a little otherwise by another Java: mean difference of a channel, of 255. */
    private static final double MEAN = 1;

    static Stream<String> files() {
        return DemoPictures.ALL.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("files")
    void drawnAgainItIsTheSame(String file) throws IOException {
        BufferedImage kept = ImageIO.read(Path.of("demo", file).toFile());
        BufferedImage drawn = DemoPictures.ALL.get(file).get();
        assertThat(kept.getWidth()).isEqualTo(drawn.getWidth());
        assertThat(kept.getHeight()).isEqualTo(drawn.getHeight());
        long difference = 0;
        for (int y = 0; y < kept.getHeight(); y++) {
            for (int x = 0; x < kept.getWidth(); x++) {
                int a = kept.getRGB(x, y);
                int b = drawn.getRGB(x, y);
                for (int shift = 0; shift < 24; shift += 8) {
                    difference += Math.abs((a >> shift & 255) - (b >> shift & 255));
                }
            }
        }
        assertThat(difference / 3.0 / kept.getWidth() / kept.getHeight()).isLessThan(MEAN);
    }

    @Test
    void noPictureComesFromElsewhere() throws IOException {
        try (Stream<Path> found = Files.walk(Path.of("demo"))) {
            assertThat(found.filter(file -> file.toString().endsWith(".png"))
                            .map(file ->
                                    Path.of("demo").relativize(file).toString().replace('\\', '/')))
                    .containsExactlyInAnyOrderElementsOf(DemoPictures.ALL.keySet());
        }
    }
}
