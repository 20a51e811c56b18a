package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The demo workshop as its visitor meets it: four designs that work, and beside each a copy that does not. Their virtual
 * builds are in BuildRunTest.
 */
class DemoDesignsTest {

    private static JsonNode json(String... words) {
        return JsonMapper.shared().readTree(Ran.run(words).out());
    }

    private static List<String> named(JsonNode report, String status) {
        List<String> ids = new ArrayList<>();
        for (JsonNode finding : report.get("findings")) {
            if (finding.get("status").asString().equals(status)) {
                ids.add(finding.get("id").asString());
            }
        }
        return ids;
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void eachWorksWithoutADoubt(String design) {
        Ran ran = Ran.run("check", "demo/" + design, "--json");
        assertThat(ran.exit()).isZero();
        JsonNode report = JsonMapper.shared().readTree(ran.out());
        assertThat(report.get("verdict").asString()).isEqualTo("works");
        assertThat(named(report, "doubtful")).isEmpty();
        assertThat(named(report, "pass")).hasSizeGreaterThan(25);
    }

    /** Spoiled copies: which question says so first, and that nothing else is wrong with them but what follows from it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bucket-twists|bucket-twist",
                "counterweight-heavy|coin-trips/EUR-0.20,leans-across,coin-thrown-clear/EUR-0.20,bearable-drag",
                "heron-breaks-its-pivot|refused-press/pivots",
                "heron-hangs-up|comes-back,runs-ahead,bearable-drag",
                "heron-tips-over|stands-firm/tips",
                "kicker-short|works-ordered,coin-thrown-clear/EUR-0.20,coin-thrown-clear/EUR-0.50,coin-thrown-clear/EUR-1,"
                        + "coin-thrown-clear/EUR-2,bearable-drag",
                "lamplighter-overpulled|full-stroke,gesture-reached/pole-tip,string-overpulled/open,"
                        + "coin-thrown-clear/EUR-0.20,coin-thrown-clear/EUR-1,bearable-drag",
                "windmill-teeth-dig|teeth-clear/turning",
                "cobbler-stays-up|comes-back,bearable-drag"
            })
    void eachSpoiledCopyFailsByItsFinding(String copy, String findings) {
        Ran ran = Ran.run("check", "demo/spoiled/" + copy, "--json");
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(named(JsonMapper.shared().readTree(ran.out()), "fail"))
                .containsExactlyInAnyOrder(findings.split(","));
    }

    @Test
    void everySpoiledCopyIsAskedAbout() throws IOException {
        try (var folders = Files.list(Path.of("demo/spoiled"))) {
            assertThat(folders).hasSize(9);
        }
    }

    @ParameterizedTest
    @CsvSource({"heron, 2", "lamplighter, 3", "windmill, 3", "cobbler, 3"})
    void eachIsPackedAndPriced(String design, int pictures, @TempDir Path folder) throws IOException {
        Ran packed = Ran.run("pack", "demo/" + design, "-o", folder.toString());
        assertThat(packed.exit()).isZero();
        assertThat(folder.resolve("artwork.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("glue-up.pdf")).isNotEmptyFile();
        assertThat(Files.readString(Path.of("demo", design, "figure.yaml")).split("\\.png"))
                .hasSize(pictures + 1);
        assertThat(Files.exists(folder.resolve("cloth.pdf"))).isEqualTo(design.equals("lamplighter"));
        JsonNode priced = json("price", "demo/" + design, "--quantity", "1", "--json");
        assertThat(priced.get("formatVersion").asInt()).isEqualTo(1);
    }

    /** Begun from any of the four, a design has all that it needs in its own workshop and works. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void newDesignsBeginFromEach(String design, @TempDir Path folder) {
        assertThat(Ran.run("new", "mine", "--from", design, "--in", folder.toString())
                        .exit())
                .isZero();
        assertThat(json("check", folder.resolve("mine").toString(), "--json")
                        .get("verdict")
                        .asString())
                .isEqualTo("works");
    }
}
