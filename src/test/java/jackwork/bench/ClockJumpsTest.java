package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A clock that jumps back an hour, or far off: revisions keep their order, entries their times, and nothing is lost. */
class ClockJumpsTest {

    private static final List<Instant> JUMPS = List.of(
            Instant.parse("2026-03-01T09:30:00Z"),
            Instant.parse("2026-03-01T08:30:00Z"),
            Instant.parse("2000-01-01T00:00:00Z"),
            Instant.parse("2099-12-31T23:59:59Z"),
            Instant.parse("2026-03-01T09:30:00Z"));

    @TempDir(factory = InMemory.class)
    private Path folder;

    @Test
    void revisionsAreNumberedByTheirOrder() {
        BenchLog log = BenchLog.in(folder);
        for (int i = 0; i < JUMPS.size(); i++) {
            Revision made =
                    log.freeze("heron", "Heron", JUMPS.get(i), "", new TreeMap<>(Map.of("a", new byte[] {(byte) i})));
            assertThat(made.name().number()).isEqualTo(i + 1);
            assertThat(log.last("heron")).map(Revision::name).contains(new RevisionName("heron", i + 1));
        }
    }

    @Test
    void entriesKeepTheTimesTheyWereGiven() {
        BenchLog log = BenchLog.in(folder);
        log.freeze("heron", "Heron", JUMPS.get(0), "", new TreeMap<>(Map.of("a", new byte[9])));
        List<String> keys = new ArrayList<>();
        for (int i = 0; i < JUMPS.size(); i++) {
            keys.add("k" + i);
            Stamp stamp = new Stamp("k" + i, JUMPS.get(i), "");
            log.add(Kinds.TRIALS, new Trial(stamp, new RevisionName("heron", 1), null, "EUR-1", 20, Map.of()));
        }
        List<Logged<Trial>> there = log.list(Kinds.TRIALS);
        assertThat(there).extracting(trial -> trial.entry().stamp().key()).containsExactlyInAnyOrderElementsOf(keys);
        assertThat(there)
                .extracting(trial -> trial.entry().stamp().at())
                .containsExactlyElementsOf(JUMPS.stream().sorted().toList());
    }
}
