package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.design.DesignEdit;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A number that is 0 is no share of anything: the search leaves it by steps of its unit. */
class RemediesFromNothingTest {

    private static final String TAIL = "figure.weights.tail.mass";

    @TempDir
    Path folder;

    @Test
    void aWeightOfNothingIsMadeHeavyEnough() throws IOException {
        Path heron = DemoCopy.with(folder, "heron").resolve("heron");
        Path figure = heron.resolve("figure.yaml");
        String text = Files.readString(figure);
        assertThat(text).contains("mass: 50}");
        Files.writeString(figure, text.replace("mass: 50}", "mass: 0}"));
        assertThat(status(heron, "comes-back")).isEqualTo(Status.FAIL);
        JsonNode remedy =
                JsonMapper.shared().readTree(new Remedies(new Workbench(folder)).remedyJson("heron", "comes-back"));
        assertThat(remedy.path("steps")).as(remedy.toString()).hasSize(1);
        assertThat(remedy.path("steps").get(0).path("path").asString()).isEqualTo(TAIL);
        StringBuilder words = new StringBuilder();
        remedy.path("words")
                .path("pieces")
                .forEach(piece -> words.append(piece.path("words").asString()));
        assertThat(words.toString()).contains("from 0 to ");
        double grams = remedy.path("steps").get(0).path("value").asDouble();
        Path design = heron.resolve("design.yaml");
        Files.writeString(design, DesignEdit.with(Files.readString(design), Map.of(TAIL, grams)));
        assertThat(status(heron, "comes-back")).isEqualTo(Status.PASS);
    }

    private static Status status(Path design, String finding) {
        return DesignCheck.of(DesignReader.read(design)).findings().stream()
                .filter(found -> found.id().equals(finding))
                .map(Finding::status)
                .findFirst()
                .orElseThrow();
    }
}
