package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who still writes what follows from hole and layers is told so, where it stands, and nothing else can say it. */
@Tag("quick")
class FormerKeysTest {

    private static final Path DEMO = Path.of("demo").toAbsolutePath().normalize();

    private static List<Problem> problems(String design, Map<Path, String> texts) {
        try {
            DesignReader.read(DEMO.resolve(design), texts);
            return List.of();
        } catch (DesignException e) {
            return e.problems();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "heron, marsh-box, clearance: 0.20, fits.running",
        "heron, marsh-box, bearing: 9.8, layers that turn",
        "cobbler, reed-box, clearance: 0.5, fits.running",
        "cobbler, reed-box, bearing: 3.5, layers that turn"
    })
    void itIsToldWhatBecameOfThem(String design, String box, String line, String now) throws IOException {
        Path file = DEMO.resolve("boxes").resolve(box).resolve("box.yaml");
        String text = Files.readString(file);
        String before = text.substring(0, text.indexOf("    side-gap:"));
        String old = text.replace("    side-gap:", "    " + line + "\n    side-gap:");
        assertThat(problems(design, Map.of(file, old))).singleElement().satisfies(problem -> {
            assertThat(problem.line()).isEqualTo((int) before.lines().count() + 1);
            assertThat(problem.column()).isEqualTo(5);
            assertThat(problem.message())
                    .contains("read the key \"" + line.split(":")[0] + "\", which is not known here")
                    .contains(now)
                    .contains("take this line out");
        });
    }

    @ParameterizedTest
    @CsvSource({"clearance: 0.5", "bearing: 3.5"})
    void aChangeOfThemIsToldLikewise(String change) throws IOException {
        Path file = DEMO.resolve("heron/design.yaml");
        String text = Files.readString(file) + "\nchange:\n  box.coin-works.bucket." + change + "\n";
        assertThat(problems("heron", Map.of(file, text)))
                .singleElement()
                .satisfies(problem -> assertThat(problem.message()).contains("take this line out"));
    }

    /** The fits of the workshop are the only words for it. */
    @Test
    void noFileHasAnotherWordForIt() {
        assertThat(Vocabulary.keys(CoinWorksEntry.Bucket.class)).doesNotContain("clearance", "bearing");
        assertThat(Vocabulary.formerKeys(CoinWorksEntry.Bucket.class)).containsOnlyKeys("clearance", "bearing");
    }
}
