package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs log into one workshop at once: each waits for the other, and all that was acknowledged is there. */
class TwoLoggersTest {

    private static final int EACH = 60;

    @TempDir(factory = InMemory.class)
    private Path folder;

    @Test
    void allThatWasAcknowledgedIsThere() throws Exception {
        Children children = new Children(folder.resolve("lib"));
        Path workshop = folder.resolve("workshop");
        BenchLog log = Children.log(workshop);
        List<Process> two =
                List.of(children.start(List.of(), workshop, "a", EACH), children.start(List.of(), workshop, "b", EACH));
        List<String> said = new ArrayList<>();
        for (Process child : two) {
            said.addAll(new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
            assertThat(child.waitFor()).isZero();
        }
        assertThat(said).hasSize(2 * EACH);
        assertThat(log.list(Kinds.TRIALS))
                .extracting(trial -> trial.entry().stamp().key())
                .containsExactlyInAnyOrderElementsOf(said);
        assertThat(Children.integrity(workshop)).isEqualTo("ok");
    }
}
