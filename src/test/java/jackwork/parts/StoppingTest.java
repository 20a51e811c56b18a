package jackwork.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whether wood stands where the model takes a stop for granted. */
class StoppingTest {

    @TempDir
    private Path folder;

    /** A post as one would draw it: a strip of wood in the bucket's layer, its upper edge where the bucket's tail comes down. */
    private Design withPost(double x, double top) throws IOException {
        Path hut = DemoCopy.with(folder.resolve("hut-" + top), "heron");
        Path yaml = hut.resolve("boxes/marsh-box/box.yaml");
        Path svg = hut.resolve("boxes/marsh-box/box.svg");
        Files.writeString(
                yaml,
                Files.readString(yaml)
                        .replace("  front:  ", "  post:         {stock: birch-3, layer: 8}\n  front:  ")
                        .replace("fixed: [back, ", "fixed: [back, post, "));
        // Drawn downwards, from the sheet's own corner.
        Files.writeString(
                svg,
                Files.readString(svg)
                        .replace(
                                "<path id=\"front\"",
                                "<path id=\"post\" d=\"M" + x + "," + (110 - top)
                                        + " h6 v8 h-6 Z\"/>\n    <path id=\"front\""));
        return DesignReader.read(hut.resolve("heron"));
    }

    private static Stopping end(Design design, String name) {
        return Stopping.of(design, Assembler.assemble(design)).stream()
                .filter(stopping -> stopping.end().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theTableIsThatOfTheDesigns() throws IOException {
        assertThat(Files.readString(StoppingTable.FILE)).isEqualTo(StoppingTable.table());
    }

    /** Worked out from outside: nothing is nearer to the marsh box's bucket at rest than 3.6 mm. */
    @Test
    @Tag("outside")
    void nothingHoldsTheHeronsBucketAtRest() {
        Stopping rest = end(DesignReader.read(Path.of("demo/heron")), "bucket at rest");
        assertThat(rest.isProvided()).isFalse();
        assertThat(rest.nearest())
                .satisfies(nearest -> assertThat(nearest.distance()).isCloseTo(3.6, within(0.05)));
    }

    /** Under the bucket's tail, 47 mm from its pivot, a post's upper edge is found, and its height is the angle. */
    @Test
    void aPostUnderItsTailHoldsIt() throws IOException {
        Stopping low = end(withPost(144, 31), "bucket at rest");
        assertThat(low.isProvided()).as("far below").isFalse();
        Stopping.Obstacle met = Objects.requireNonNull(low.met());
        assertThat(met.by()).isEqualTo("post");
        double arm = met.meeting().at().x() - low.end().pivot().x();
        double below = -met.meeting().angle() * arm;
        Stopping right = end(withPost(144, 31 + below), "bucket at rest");
        assertThat(right.isProvided()).as("right below").isTrue();
        assertThat(Objects.requireNonNull(right.met()).meeting().out().y()).isGreaterThan(0.9);
        Stopping half = end(withPost(144, 30.5 + below), "bucket at rest");
        assertThat(Math.toDegrees(Objects.requireNonNull(half.met()).meeting().angle()))
                .as("half a millimetre lower")
                .isCloseTo(-Math.toDegrees(0.5 / arm), within(0.05));
        assertThat(half.isProvided()).isFalse();
        assertThat(end(withPost(144, 31.5 + below), "bucket at rest").isProvided())
                .as("half a millimetre too high")
                .isFalse();
    }
}
