package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** docs/schema follows the records, and an independent validator finds the demo right and spoiled copies wrong. */
@Tag("quick")
class SchemaTest {

    static Stream<String> names() {
        return SchemaFiles.ROOTS.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("names")
    void keptSchemasFollowTheRecords(String name) throws IOException {
        assertThat(Files.readString(SchemaFiles.path(name)))
                .as("docs/schema has drifted: run SchemaFiles.main of the test sources")
                .isEqualTo(SchemaFiles.text(name));
    }

    private static List<Error> errors(String name, String yaml) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SchemaFiles.path(name)), InputFormat.JSON);
        Object tree = new org.snakeyaml.engine.v2.api.Load(
                        org.snakeyaml.engine.v2.api.LoadSettings.builder().build())
                .loadFromString(yaml);
        String json = tools.jackson.databind.json.JsonMapper.shared().writeValueAsString(tree);
        return schema.validate(json, InputFormat.JSON);
    }

    @ParameterizedTest
    @CsvSource({
        "workshop, demo/workshop.yaml",
        "box, demo/boxes/marsh-box/box.yaml",
        "figure, demo/heron/figure.yaml",
        "design, demo/heron/design.yaml",
        "design, demo/spoiled/heron-hangs-up/design.yaml"
    })
    void theDemoIsRight(String name, String file) throws IOException {
        assertThat(errors(name, Files.readString(Path.of(file)))).isEmpty();
    }

    @Test
    void spoiledFilesAreWrong() throws IOException {
        String design = Files.readString(Path.of("demo/heron/design.yaml"));
        assertThat(errors("design", design.replace("coins:", "coinz:"))).isNotEmpty();
        assertThat(errors("design", design.replace("figure: figure.yaml", ""))).isNotEmpty();
        String box = Files.readString(Path.of("demo/boxes/marsh-box/box.yaml"));
        assertThat(errors("box", box.replace("throw: 14", "throw: [14]"))).isNotEmpty();
        assertThat(errors("box", box.replace("side-gap", "sideGap"))).isNotEmpty();
    }
}
