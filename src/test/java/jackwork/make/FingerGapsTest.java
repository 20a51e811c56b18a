package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a child's finger finds of gaps that close, by the rule itself and on the demos' cases. */
@Tag("quick")
class FingerGapsTest {

    @TempDir
    private Path folder;

    /** EN 71-1:2001, 4.10.2 c and 4.10.3: where a rod of 5 mm goes in, one of 12 mm must, whatever it has closed to. */
    @Tag("outside")
    @ParameterizedTest
    @CsvSource({"4.9, 0, false", "5, 0, true", "5, 4.9, true", "20, 11.9, true", "20, 12, false", "13, 12.1, false"})
    void theRule(double widest, double narrowest, boolean catches) {
        assertThat(FingerRoom.catches(widest, narrowest)).isEqualTo(catches);
    }

    /** Beside what hardly moves a saw's width is enough; beside what comes nearer by more a finger's room is left. */
    @ParameterizedTest
    @CsvSource({"0, 1.5", "3.4, 1.5", "3.5, 12", "30, 12"})
    void whatIsLeft(double nears, double left) {
        assertThat(FingerRoom.beside(nears, 1.5)).isEqualTo(left);
    }

    private static Finding ask(Design design) {
        List<Finding> found = FingerGaps.ask(design, Subject.of(design));
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    /**
     * The lever comes out of the right wall some 71 to 74 mm from its pivot and turns 14°: its lower edge comes down by some
     * 18 mm there, and below it 12 are left and the half of a millimetre that the wall's thickness brings.
     */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void theDemosLeaveRoom(String name) {
        Design design = DesignReader.read(Path.of("demo", name));
        Finding finding = ask(design);
        assertThat(finding.status()).isEqualTo(Status.PASS);
        assertThat(finding.value()).isCloseTo(12.3, within(0.3));
        Subject subject = Subject.of(design);
        List<Sweep.Crossing> through = Sweep.through(subject, true, 151, 154, 1.5, -10, 100);
        assertThat(through)
                .filteredOn(one -> one.part().equals("lever"))
                .hasSize(1)
                .allSatisfy(lever -> {
                    assertThat(lever.nearsFrom()).isBetween(15.0, 20.0);
                    assertThat(lever.nearsTo()).isLessThan(1);
                });
    }

    /** With the floor just beneath the lever no room is left. */
    @Test
    void aLeverThatComesDownOnTheFloorCatches() throws IOException {
        Path hut = DemoCopy.with(folder.resolve("hut"), "heron");
        Path box = hut.resolve("boxes/marsh-box/box.yaml");
        String text = Files.readString(box);
        String low = text.replace("floor: -14", "floor: 50").replace("height: 114.6", "height: 50.6");
        assertThat(low).isNotEqualTo(text);
        Files.writeString(box, low);
        Design design = DesignReader.read(hut.resolve("heron"));
        assertThat(FingerGaps.ask(design, Subject.of(design)))
                .allSatisfy(finding -> assertThat(finding.status()).isEqualTo(Status.FAIL));
    }

    @Test
    void withoutACaseNothingIsAsked() throws IOException {
        Path hut = DemoCopy.with(folder.resolve("hut"), "heron");
        Path box = hut.resolve("boxes/marsh-box/box.yaml");
        String text = Files.readString(box);
        Files.writeString(box, text.substring(0, text.indexOf("\ncase:")));
        Design design = DesignReader.read(hut.resolve("heron"));
        assertThat(FingerGaps.ask(design, Subject.of(design))).isEmpty();
    }
}
