package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The heron with one number spoiled: the finding made for it fails, and no other of the coin works does. */
@Tag("quick")
class SpoiledDesignsTest {

    @TempDir
    private Path workshop;

    @BeforeEach
    void copy() throws IOException {
        DemoCopy.at(workshop);
    }

    private Subject spoiled(String change) throws IOException {
        Path design = workshop.resolve("heron/design.yaml");
        Files.writeString(design, Files.readString(design) + "\nchange:\n  " + change + "\n");
        return Subject.of(DesignReader.read(workshop.resolve("heron")));
    }

    private List<String> failing(String change) throws IOException {
        return Questions.ask(spoiled(change)).stream()
                .filter(finding -> finding.status() == Status.FAIL)
                .map(Finding::id)
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "box.coin-works.bucket.side-gap: 1.0|bucket-twist",
                "box.coin-works.slot.width: 2.3|coin-fits-slot/EUR-0.50,coin-fits-slot/EUR-1",
                "box.weights.counterweight.count: 5|coin-trips/EUR-0.20",
                "box.weights.counterweight.count: 0|bucket-resets",
                "box.coin-works.bucket.tip: 5|catch-frees",
                "box.coin-works.catch.strut: [97.8, 70.5]|catch-overlap",
                "figure.weights.tail.mass: 10|comes-back,runs-ahead",
                "figure.weights.tail.mass: 2500|finger-force"
            })
    void theFindingMadeForItFails(String change, String expected) throws IOException {
        assertThat(failing(change)).contains(expected.split(","));
    }

    @Test
    void aTwistedBucketFailsByThatAlone() throws IOException {
        assertThat(failing("box.coin-works.bucket.side-gap: 1.0")).containsExactly("bucket-twist");
    }

    @Test
    void aKickerInTheWayLeavesNoRoom() throws IOException {
        assertThat(failing("box.coin-works.kicker: [62, 26]")).contains("coin-lands/EUR-2");
    }

    @Test
    void aToothOnTheOpeningSideHoldsOnlyByFriction() throws IOException {
        List<Finding> findings = Questions.ask(spoiled("box.coin-works.catch.tooth: [88, 71]"));
        Finding holds = findings.stream()
                .filter(finding -> finding.id().equals("catch-holds"))
                .findFirst()
                .orElseThrow();
        assertThat(holds.status()).isEqualTo(Status.FAIL);
        assertThat(holds.why()).contains("opening side");
    }

    @Test
    void tooLongAThrowMeetsADeadPointAndIsNamed() throws IOException {
        List<Finding> findings = Questions.ask(spoiled("box.lever.throw: 60"));
        Finding stroke = findings.stream()
                .filter(finding -> finding.id().equals("full-stroke"))
                .findFirst()
                .orElseThrow();
        assertThat(stroke.status()).isEqualTo(Status.FAIL);
        assertThat(stroke.why())
                .containsPattern("dead point at \\d\\d % of the stroke")
                .contains("still move");
    }

    @Test
    void doubtfulNamesTheGuessesItHangsOn() throws IOException {
        Finding back = Questions.ask(spoiled("figure.weights.tail.mass: 25")).stream()
                .filter(finding -> finding.id().equals("comes-back"))
                .findFirst()
                .orElseThrow();
        assertThat(back.status()).isEqualTo(Status.DOUBTFUL);
        assertThat(back.margin()).isPositive();
        assertThat(back.restsOn()).extracting(Ground::name).contains("friction of bamboo on wood");
        assertThat(back.remedy())
                .contains("Measure the " + back.restsOn().get(0).name() + " first");
        assertThat(back.restsOn())
                .allSatisfy(ground -> assertThat(ground.drop()).isPositive());
    }

    @Test
    void aRodWithoutWoodIsAnErrorInWords() {
        assertThatThrownBy(() -> spoiled("figure.pins.nape.at: [-30, 127]"))
                .isInstanceOf(PartException.class)
                .hasMessageContaining("nape")
                .hasMessageContaining("no wood");
    }

    @Test
    void aLooseFigureIsAnErrorInWords() {
        assertThatThrownBy(() -> spoiled("figure.pins.nape.parts: [head, lower-neck]"))
                .isInstanceOfAny(MechanismException.class, PartException.class);
    }
}
