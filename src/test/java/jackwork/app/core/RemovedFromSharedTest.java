package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.design.EntryEdit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is taken out of a box that several designs stand on must leave each of them as good as it was. */
class RemovedFromSharedTest {

    @TempDir
    Path folder;

    private Path workshop;
    private Editor editor;

    @BeforeEach
    void copy() throws IOException {
        workshop = DemoCopy.with(folder.resolve("w"), "heron", "lamplighter", "windmill");
        editor = new Editor(new Workbench(workshop));
    }

    private String verdict(String id) {
        return DesignCheck.of(DesignReader.read(workshop.resolve(id))).verdict();
    }

    private Optional<String> refusal(String kind, String path, String value) {
        String base =
                DesignFiles.of(DesignReader.read(workshop.resolve("heron"))).version();
        Map<Path, String> before =
                DesignFiles.of(DesignReader.read(workshop.resolve("heron"))).texts();
        try {
            editor.editJson("heron", """
                    {"base": "%s", "label": "x", "steps": [{"kind": "%s", "path": "%s", "value": "%s"}]}""".formatted(base, kind, path, value));
            return Optional.empty();
        } catch (RuntimeException e) {
            assertThat(Trials.isMakers(e)).as(path + " " + e).isTrue();
            assertThat(DesignFiles.of(DesignReader.read(workshop.resolve("heron")))
                            .texts())
                    .isEqualTo(before);
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"parts.kicker", "parts.front", "weights.counterweight"})
    void isRefusedWhereAnotherWouldFail(String path) {
        assertThat(refusal("remove", "box." + path, ""))
                .hasValueSatisfying(told -> assertThat(told)
                        .contains("left as it was: Lamplighter does not fail now and would then")
                        .contains("Give this design a copy of box.yaml"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"parts.hub-far", "parts.bucket-near", "pins.lever-dowel-1"})
    void isTakenOutWhereAllStayAsGood(String path) {
        assertThat(refusal("remove", "box." + path, "")).isEmpty();
        assertThat(List.of("heron", "lamplighter", "windmill"))
                .allMatch(id -> verdict(id).equals("works"));
    }

    /** Whatever is drawn from the box's entries: no other design fails afterwards. */
    @Test
    void noOtherDesignFailsAfterwards() {
        Random random = new Random(77);
        List<EntryEdit.Entry> entries = EntryEdit.entries(DesignReader.read(workshop.resolve("heron"))).stream()
                .filter(entry -> entry.path().startsWith("box."))
                .toList();
        for (int i = 0; i < 6; i++) {
            refusal("remove", entries.get(random.nextInt(entries.size())).path(), "");
            assertThat(List.of("lamplighter", "windmill"))
                    .allMatch(id -> verdict(id).equals("works"));
        }
    }

    @Test
    void whatHoldsTheFigureIsNamed() {
        assertThat(refusal("remove", "box.parts.back", ""))
                .hasValueSatisfying(
                        told -> assertThat(told).contains("box.parts.back").contains("without \"back\" no mount"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"parts.lever", "mounts.mount-left"})
    void aNameThatAnotherDesignUsesHasARemedy(String path) {
        assertThat(refusal("rename", "box." + path, "other-one"))
                .hasValueSatisfying(told -> assertThat(told)
                        .contains("Lamplighter could not be shown any more")
                        .contains("Lamplighter stands on the same file. Give this design a copy of"));
    }
}
