package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import jackwork.drawing.Paper;
import jackwork.drawing.RenderedPages;
import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The heron's printed pictures: its crosses are where its holes are, its glue areas where its parts touch. */
class ArtworkPagesTest {

    private final Assembly heron = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));

    private Part part(String name) {
        return heron.parts().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theHeronsCrossesMeetItsHoles(@TempDir Path folder) throws Exception {
        byte[] pdf = ArtworkPages.pdf(heron, Paper.A4).orElseThrow();
        assertThat(ArtworkPages.pdf(heron, Paper.A4).orElseThrow()).isEqualTo(pdf);
        List<RenderedPages.Page> pages = RenderedPages.of(folder, pdf);
        List<String> names = List.of("body", "head");
        assertThat(pages).hasSize(names.size());
        for (int i = 0; i < names.size(); i++) {
            Part part = part(names.get(i));
            RenderedPages.Page page = pages.get(i);
            assertThat(page.checkLine() - 0.2).isCloseTo(100, within(0.1));
            Bounds edge = page.span(RenderedPages::isEdge, new Bounds(10, 20, 200, 240));
            Bounds truth = part.drawn().bounds();
            assertThat(edge.width() - 0.15).isCloseTo(truth.width(), within(0.1));
            assertThat(edge.height() - 0.15).isCloseTo(truth.height(), within(0.1));
            Point middle = new Point((edge.minX() + edge.maxX()) / 2, (edge.minY() + edge.maxY()) / 2);
            Point from = new Point((truth.minX() + truth.maxX()) / 2, (truth.minY() + truth.maxY()) / 2);
            assertThat(part.holes()).isNotEmpty();
            for (Hole hole : part.holes()) {
                Point onPart = hole.circle().centre().minus(from);
                Point expected = middle.plus(new Point(onPart.x(), -onPart.y()));
                Bounds around =
                        new Bounds(expected.x() - 3.5, expected.y() - 3.5, expected.x() + 3.5, expected.y() + 3.5);
                assertThat(page.middle(RenderedPages::isHole, around).distance(expected))
                        .as(part.name() + " " + hole.joint())
                        .isLessThan(0.05);
            }
        }
    }

    @Test
    void glueAreasAreWherePartsOfABodyTouch() {
        List<Outline> bare = ArtworkPages.bare(heron, part("lever"));
        assertThat(bare).hasSize(1);
        assertThat(bare.get(0).area())
                .isCloseTo(part("lever").drawn().sharedArea(part("hub-far").drawn()), within(1e-6));
        // The wings stand off on their dowels.
        assertThat(ArtworkPages.bare(heron, part("body"))).isEmpty();
    }

    @Test
    void designsWithoutPicturesHaveNoArtwork(@TempDir Path folder) throws IOException {
        Path cobbler = DemoCopy.at(folder.resolve("workshop")).resolve("cobbler");
        String figure = Files.readString(cobbler.resolve("figure.yaml"));
        Files.writeString(cobbler.resolve("figure.yaml"), figure.substring(0, figure.indexOf("\npictures:")));
        Assembly bare = Assembler.assemble(DesignReader.read(cobbler));
        assertThat(ArtworkPages.pdf(bare, Paper.A4)).isEmpty();
    }
}
