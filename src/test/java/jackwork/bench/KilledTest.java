package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.Child;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Killed at any moment while it logs: what was acknowledged is there, whole, and the file opens. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class KilledTest {

    private static final int KILLS = Child.kills(40, 100);
    /** At once: they wait for the disk most of the time. */
    private static final int LINES = 4;

    /** A log sees so many kills. */
    private static final int ANEW = 10;

    @TempDir(factory = InMemory.class)
    private Path folder;

    @Test
    void whatWasAcknowledgedIsThere() throws Exception {
        Children children = new Children(folder.resolve("lib"));
        ExecutorService workers = Executors.newFixedThreadPool(LINES);
        List<Future<Integer>> lines = new ArrayList<>();
        for (int line = 0; line < LINES; line++) {
            int number = line;
            lines.add(workers.submit((Callable<Integer>) () -> kill(children, number)));
        }
        int acknowledged = 0;
        for (Future<Integer> line : lines) {
            acknowledged += line.get();
        }
        workers.shutdown();
        // Else they died before they had logged anything, and this shows nothing.
        assertThat(acknowledged).isGreaterThan(KILLS);
    }

    /** A share of all kills, on a workshop of its own. */
    private int kill(Children children, int line) throws IOException, InterruptedException, java.sql.SQLException {
        Path workshop = folder;
        BenchLog log = BenchLog.in(folder);
        Random random = new Random(20261129 + line);
        Set<String> acknowledged = new HashSet<>();
        int sum = 0;
        for (int i = 0; i < KILLS / LINES; i++) {
            if (i % ANEW == 0) {
                // Else reading all of it after each kill takes longer than all else.
                workshop = folder.resolve("workshop-" + line + "-" + i);
                log = Children.log(workshop);
                sum += acknowledged.size();
                acknowledged.clear();
            }
            Process child = children.start(List.of(), workshop, "k" + i, 1_000_000);
            StringBuilder said = new StringBuilder();
            // Some die while they open the file, most while they log.
            boolean early = i % 10 == 0;
            int first = early ? -1 : child.getInputStream().read();
            if (first >= 0) {
                said.append((char) first);
            }
            Thread.sleep(early ? random.nextInt(250) : random.nextInt(50));
            // By its handle: that leaves open what it said.
            child.toHandle().destroyForcibly();
            assertThat(child.waitFor()).as("killed, not ended").isEqualTo(128 + 9);
            said.append(new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
            assertThat(said).doesNotContain("!");
            // The last word may be cut short.
            String whole = said.substring(0, said.lastIndexOf("\n") + 1);
            whole.lines().forEach(acknowledged::add);
            List<Logged<Trial>> trials = log.list(Kinds.TRIALS);
            Set<String> there =
                    trials.stream().map(trial -> trial.entry().stamp().key()).collect(Collectors.toSet());
            assertThat(there).containsAll(acknowledged);
            assertThat(trials)
                    .allSatisfy(trial -> assertThat(trial.entry().passes()).isEqualTo(17));
            assertThat(Children.integrity(workshop)).isEqualTo("ok");
        }
        return sum + acknowledged.size();
    }
}
