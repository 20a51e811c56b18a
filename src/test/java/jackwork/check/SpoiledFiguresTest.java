package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The designs whose figures stay whole, as they are and with one number spoiled; a few seconds each, too slow for mutants. */
@Tag("quick")
class SpoiledFiguresTest {

    @TempDir
    private Path workshop;

    @BeforeEach
    void copy() throws IOException {
        DemoCopy.at(workshop);
    }

    /** The other designs, each with one number spoiled. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lamplighter|figure.strings.open.slack: 3|string-overpulled/open,full-stroke",
                "lamplighter|figure.strings.open.slack: 20|string-pulls/open,gesture-reached/door-edge",
                "windmill|figure.meshes.turning.pressure-angle: 20|teeth-clear/turning",
                "windmill|figure.parts.rod.layer: 4|parts-clash",
                "windmill|figure.parts.sails.layer: 3|parts-clash",
                "cobbler|figure.parts.hammer.layer: 3|parts-clash",
                "cobbler|figure.weights.rack-weight.mass: 0|comes-back"
            })
    void theFindingOfTheNewJointsFails(String name, String change, String expected) throws IOException {
        Path design = workshop.resolve(name).resolve("design.yaml");
        Files.writeString(design, Files.readString(design) + "\nchange:\n  " + change + "\n");
        List<String> failing = Questions.ask(Subject.of(DesignReader.read(design.getParent()))).stream()
                .filter(finding -> finding.status() == Status.FAIL)
                .map(Finding::id)
                .toList();
        assertThat(failing).contains(expected.split(","));
    }

    @ParameterizedTest
    @CsvSource({"lamplighter", "windmill", "cobbler"})
    void theOtherDesignsWork(String name) {
        assertThat(Questions.ask(Subject.of(DesignReader.read(workshop.resolve(name)))))
                .allMatch(finding -> finding.status() == Status.PASS);
    }
}
