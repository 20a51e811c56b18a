package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes into the log comes out again; what cannot be true does not go in, and then nothing else does. */
@Tag("quick")
class LogTest {

    private static final Instant DAY = Instant.parse("2026-03-01T09:30:00Z");
    private static final RevisionName HERON = new RevisionName("heron", 1);

    @TempDir
    private Path workshop;

    private BenchLog log;

    @BeforeEach
    void freeze() {
        log = BenchLog.in(workshop);
        log.freeze("heron", "Heron", DAY, "first", files("a"));
    }

    private static TreeMap<String, byte[]> files(String content) {
        return new TreeMap<>(Map.of("heron/design.yaml", content.getBytes(StandardCharsets.UTF_8)));
    }

    private static Stamp stamp(String key) {
        return new Stamp(key, DAY, "noted, \"so\"\nand so ä𝄞");
    }

    private static Trial trial(String key, int tries, Map<String, Integer> failures) {
        return new Trial(stamp(key), HERON, null, "EUR-1", tries, failures);
    }

    static Trial trialOf(String key) {
        return trial(key, 20, Map.of("lands", 1));
    }

    /** One of each kind, with the piece that others need. */
    static void fill(BenchLog log) {
        log.add(Kinds.PIECES, new Piece(stamp("p1"), "R-1", HERON, "March"));
        log.add(Kinds.TRIALS, new Trial(stamp("t1"), HERON, "R-1", "EUR-1", 50, Map.of("lands", 2, "other-knot", 1)));
        log.add(Kinds.TIMINGS, new Timing(stamp("m1"), HERON, "glue", 41.25, 2));
        log.add(
                Kinds.MEASURED,
                new Measured(
                        stamp("f1"),
                        "friction",
                        "coin,wood",
                        List.of(new Reading("slope", 17.1), new Reading("slope", 1.0 / 3), new Reading("step", 0.5))));
        log.add(
                Kinds.HAPPENINGS,
                new Happening(stamp("h1"), "R-1", Happening.What.SOLD, "shop", Money.of("35.00", "EUR")));
        log.add(Kinds.HAPPENINGS, new Happening(stamp("h2"), "R-1", Happening.What.RETURNED, "", null));
        log.add(Kinds.TAKINGS, new Taking(stamp("g1"), "R-1", Money.of("41.20", "EUR"), "Ada", "Ben", "00123"));
        log.add(
                Kinds.PREDICTIONS,
                new Prediction(
                        stamp("b1"),
                        HERON,
                        -7,
                        100,
                        98,
                        40,
                        12,
                        Map.of("EUR-1", 99, "EUR-2", 98),
                        Map.of("thrown", 2)));
    }

    @Test
    void everyKindComesOutAsItWentIn() {
        fill(log);
        for (LogKind<?> kind : Kinds.ALL) {
            assertThat(log.counting(kind)).as(kind.name()).isNotEmpty();
        }
        Trial trial = log.counting(Kinds.TRIALS).get(0);
        assertThat(trial.stamp()).isEqualTo(stamp("t1"));
        assertThat(trial.failures()).isEqualTo(Map.of("lands", 2, "other-knot", 1));
        assertThat(trial.passes()).isEqualTo(47);
        assertThat(log.counting(Kinds.MEASURED).get(0).all("slope")).containsExactly(17.1, 1.0 / 3);
        assertThat(log.counting(Kinds.TAKINGS).get(0).money()).hasToString("41.20 EUR");
        assertThat(log.counting(Kinds.PREDICTIONS).get(0).coins()).containsEntry("EUR-1", 99);
    }

    @Test
    void theSameKeyIsTheSameEntry() {
        assertThat(log.add(Kinds.TRIALS, trial("t", 5, Map.of()))).isTrue();
        assertThat(log.add(Kinds.TRIALS, trial("t", 5, Map.of()))).isFalse();
        assertThatThrownBy(() -> log.add(Kinds.TRIALS, trial("t", 6, Map.of())))
                .isInstanceOf(BenchException.class)
                .hasMessageContaining("other values");
        assertThat(log.list(Kinds.TRIALS)).hasSize(1);
    }

    @Test
    void allOfABatchOrNothing() {
        Trial good = trial("a", 5, Map.of());
        Trial unknown = new Trial(stamp("b"), new RevisionName("heron", 9), null, "EUR-1", 5, Map.of());
        assertThatThrownBy(() -> log.add(
                        List.of(new BenchLog.Entry<>(Kinds.TRIALS, good), new BenchLog.Entry<>(Kinds.TRIALS, unknown))))
                .hasMessageContaining("no revision 9 of heron");
        assertThat(log.list(Kinds.TRIALS)).isEmpty();
    }

    @Test
    void whatCannotBeTrueIsRefused() {
        assertThatThrownBy(() -> trial("a", 5, Map.of("lands", 4, "thrown", 2)))
                .hasMessageContaining("6 failures of 5");
        assertThatThrownBy(() -> trial("a", 5, Map.of("landz", 1))).hasMessageContaining("landz");
        assertThatThrownBy(() -> new Taking(stamp("a"), "R-1", Money.of("1", "EUR"), "Ada", " ada", "1"))
                .hasMessageContaining("two people");
        assertThatThrownBy(() -> Money.of("41,20", "EUR")).hasMessageContaining("41,20");
        assertThatThrownBy(() -> log.add(Kinds.PIECES, new Piece(stamp("p"), "R-1", new RevisionName("owl", 1), "")))
                .hasMessageContaining("no revision 1 of owl");
        assertThatThrownBy(() ->
                        log.add(Kinds.HAPPENINGS, new Happening(stamp("h"), "R-9", Happening.What.LENT, "Ada", null)))
                .hasMessageContaining("no piece \"R-9\"");
        log.freeze("heron", "Heron", DAY, "second", files("b"));
        log.add(Kinds.PIECES, new Piece(stamp("p"), "R-1", HERON, ""));
        assertThatThrownBy(() -> log.add(
                        Kinds.TRIALS, new Trial(stamp("t"), new RevisionName("heron", 2), "R-1", "EUR-1", 1, Map.of())))
                .hasMessageContaining("not of heron, revision 2");
        assertThatThrownBy(() -> log.add(Kinds.PIECES, new Piece(stamp("q"), "R-1", HERON, "")))
                .hasMessageContaining("another serial");
    }

    @Test
    void struckEntriesStayButDoNotCount() {
        fill(log);
        Logged<Trial> trial = log.list(Kinds.TRIALS).get(0);
        assertThatThrownBy(() -> log.strike(Kinds.PIECES, "p1", "never made"))
                .hasMessageContaining("strike those first");
        log.strike(Kinds.TRIALS, trial.number(), "wrong coin");
        log.strike(Kinds.TRIALS, "t1", "again");
        assertThat(log.counting(Kinds.TRIALS)).isEmpty();
        assertThat(log.list(Kinds.TRIALS).get(0).struck()).isEqualTo("wrong coin");
        assertThatThrownBy(() -> log.strike(Kinds.TRIALS, 99, "x")).hasMessageContaining("no entry 99");
    }

    @Test
    void revisionsKeepTheirBytes() {
        assertThatThrownBy(() -> log.freeze("heron", "Heron", DAY, "", files("a")))
                .hasMessageContaining("since its revision 1");
        log.freeze("heron", "Heron", DAY, "second", files("ä"));
        assertThat(log.files(new RevisionName("heron", 2)).get("heron/design.yaml"))
                .isEqualTo("ä".getBytes(StandardCharsets.UTF_8));
        assertThat(log.last("heron").orElseThrow().name().number()).isEqualTo(2);
        assertThat(log.revisions()).hasSize(2);
    }

    @Test
    void whereAPieceIs() {
        fill(log);
        Piece piece = log.counting(Kinds.PIECES).get(0);
        List<Happening> all = log.counting(Kinds.HAPPENINGS);
        assertThat(Whereabouts.of(piece, List.of()).what()).isEqualTo(Happening.What.STOCK);
        assertThat(Whereabouts.of(piece, all.subList(0, 1)).who()).isEqualTo("shop");
        assertThat(Whereabouts.of(piece, all).what()).isEqualTo(Happening.What.STOCK);
    }

    @Test
    void readingMakesNoFile(@TempDir Path other) {
        assertThat(BenchLog.in(other).list(Kinds.TRIALS)).isEmpty();
        assertThat(other).isEmptyDirectory();
    }

    @Test
    void whatIsNoLogIsLeftAlone(@TempDir Path other) throws IOException {
        Path file = other.resolve(BenchLog.FILE);
        Files.writeString(file, "my shopping list, which is much longer than a database's head ".repeat(20));
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> BenchLog.in(other).add(Kinds.TRIALS, trial("t", 1, Map.of())))
                .isInstanceOf(BenchException.class)
                .hasMessageContaining("is no log, or a damaged one");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }
}
