package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cloth patterns, rendered: the hem all round, in true size. */
class ClothPatternTest {

    private static final double CUT_PEN = 0.3;
    private static final double SEAM_PEN = 0.25;

    @Test
    void theHemGoesAllRound(@TempDir Path folder) throws Exception {
        ClothPattern apron = new ClothPattern(
                "apron", Outline.rectangle(5, -3, 105, 67), 6, 90, List.of(new Point(20, 60), new Point(90, 60)));
        byte[] pdf = ClothPattern.write("Test", List.of(apron), Paper.A4, List.of());
        assertThat(ClothPattern.write("Test", List.of(apron), Paper.A4, List.of()))
                .isEqualTo(pdf);
        List<RenderedPages.Page> pages = RenderedPages.of(folder, pdf);
        assertThat(pages).hasSize(1);
        assertThat(pages.get(0).checkLine() - 0.2).isCloseTo(100, within(0.1));
        Bounds room = new Bounds(0, 18, 210, 240);
        Bounds cut = pages.get(0).span(RenderedPages::isEdge, room);
        Bounds seam = pages.get(0).span(RenderedPages::isHole, room);
        assertThat(cut.width() - CUT_PEN).isCloseTo(112, within(0.1));
        assertThat(cut.height() - CUT_PEN).isCloseTo(82, within(0.1));
        assertThat(seam.width() - SEAM_PEN).isCloseTo(100, within(0.1));
        assertThat(seam.minX() - cut.minX()).isCloseTo(6 + (CUT_PEN - SEAM_PEN) / 2, within(0.1));
        assertThat(seam.minY() - cut.minY()).isCloseTo(6 + (CUT_PEN - SEAM_PEN) / 2, within(0.1));
    }
}
