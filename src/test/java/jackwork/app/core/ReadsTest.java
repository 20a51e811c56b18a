package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.DemoCopy;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept of a design is what its files say, however they came to say it. */
class ReadsTest {

    private static final int RACES = 40;

    @TempDir
    private Path folder;

    private final Reads reads = new Reads();
    private Path hut;
    private Path heron;

    @BeforeEach
    void open() throws IOException {
        hut = DemoCopy.with(folder.resolve("hut"), "heron");
        heron = hut.resolve("heron");
    }

    private static double tail(Design design) {
        Double mass = design.figure().works().weights().get("tail").mass();
        return mass == null ? Double.NaN : mass;
    }

    @Test
    void nothingIsReadTwiceThatStayedAsItWas() throws IOException {
        Design first = reads.of(heron);
        assertThat(reads.of(heron)).isSameAs(first);
        Path figure = heron.resolve("figure.yaml");
        String text = Files.readString(figure);
        Files.writeString(figure, text.replace("mass: 50", "mass: 49"));
        assertThat(tail(reads.of(heron))).isEqualTo(49);
        Files.writeString(figure, text);
        assertThat(tail(reads.of(heron))).isEqualTo(50);
    }

    /** A file saved by another program in the midst of a read: what was read then is not taken for what stands there. */
    @Test
    void aFileThatChangesWhileItIsReadIsReadAgain() throws Exception {
        Path figure = heron.resolve("figure.yaml");
        String text = Files.readString(figure);
        SplittableRandom random = new SplittableRandom(7);
        for (int race = 0; race < RACES; race++) {
            int mass = 100 + race;
            long wait = random.nextLong(20_000_000);
            Thread saving = new Thread(() -> {
                long begun = System.nanoTime();
                while (System.nanoTime() - begun < wait) {
                    Thread.onSpinWait();
                }
                save(figure, text.replace("mass: 50", "mass: " + mass));
            });
            save(figure, text.replace("mass: 50", "mass: " + (500 + race)));
            saving.start();
            reads.of(heron);
            saving.join();
            assertThat(tail(reads.of(heron))).as("race %d", race).isEqualTo(mass);
        }
    }

    private static void save(Path file, String text) {
        try {
            Path beside = Files.writeString(file.resolveSibling("saving.tmp"), text);
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void theSameTextFromOutsideTheWorkshopIsRefusedAsWhenItIsReadFirst() throws IOException {
        reads.of(heron);
        Path figure = heron.resolve("figure.yaml");
        Path outside = Files.move(figure, folder.resolve("figure.yaml"));
        Files.createSymbolicLink(figure, outside);
        assertThatThrownBy(() -> reads.of(heron))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("lies outside the workshop's folder");
    }

    @Test
    void aWorkshopNearerByIsTheOneThatCounts() throws IOException {
        Design before = reads.of(heron);
        LastShown last = new LastShown();
        last.keep("heron", new Workbench(hut).shown("heron", before));
        assertThat(last.still("heron")).isPresent();
        Files.copy(hut.resolve("workshop.yaml"), heron.resolve("workshop.yaml"));
        assertThat(last.still("heron")).isEmpty();
        // Its box lies outside of that one.
        assertThatThrownBy(() -> reads.of(heron)).isInstanceOf(DesignException.class);
        assertThatThrownBy(() -> DesignReader.read(heron)).isInstanceOf(DesignException.class);
    }
}
