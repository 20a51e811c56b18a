package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.design.EntryEdit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is taken out of a box that several designs stand on must leave each of them as good as it was. */
class RemovedFromSharedTest {

    /** One for all: what was worked out of a state is known when it stands there again. */
    @TempDir
    static Path folder;

    private static Workbench workbench;
    private static Path workshop;
    private static Map<Path, String> asItWas;
    private Editor editor;

    @BeforeAll
    static void copy() throws IOException {
        workshop = DemoCopy.with(folder.resolve("w"), "heron", "lamplighter", "windmill");
        workbench = new Workbench(workshop);
        asItWas = texts();
    }

    @BeforeEach
    void putBack() throws IOException {
        for (Map.Entry<Path, String> file : asItWas.entrySet()) {
            Files.writeString(file.getKey(), file.getValue());
        }
        editor = new Editor(workbench);
    }

    private static Map<Path, String> texts() {
        return DesignFiles.of(DesignReader.read(workshop.resolve("heron"))).texts();
    }

    private static String verdict(String id) {
        return workbench.shown(id).check().verdict();
    }

    private Optional<String> refusal(String kind, String path, String value) {
        String base =
                DesignFiles.of(DesignReader.read(workshop.resolve("heron"))).version();
        Map<Path, String> before = texts();
        try {
            editor.editJson("heron", """
                    {"base": "%s", "label": "x", "steps": [{"kind": "%s", "path": "%s", "value": "%s"}]}""".formatted(base, kind, path, value));
            return Optional.empty();
        } catch (RuntimeException e) {
            assertThat(Trials.isMakers(e)).as(path + " " + e).isTrue();
            assertThat(texts()).isEqualTo(before);
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"parts.kicker", "parts.front", "weights.counterweight", "parts.hub-far"})
    void isRefusedWhereAnotherWouldFail(String path) {
        assertThat(refusal("remove", "box." + path, ""))
                .hasValueSatisfying(told -> assertThat(told)
                        .contains("left as it was: Lamplighter does not fail now and would then")
                        .contains("Give this design a copy of box.yaml"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"parts.chute-far", "pins.bucket-dowel-1", "pins.lever-dowel-1"})
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
