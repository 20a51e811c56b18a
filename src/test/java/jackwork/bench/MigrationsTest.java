package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logs of earlier formats are brought up to today's, with all that is in them. */
class MigrationsTest {

    /** The first script as it went out; a change to the tables is a script of its own. */
    private static final String FIRST = "af31481a700ca9815d0a1cbfda9b8f47eade8421189118ac483815dfc4858fd6";

    @TempDir
    private Path workshop;

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = MigrationsTest.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        }
    }

    private void run(String... scripts) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + workshop.resolve(BenchLog.FILE));
                Statement statement = connection.createStatement()) {
            for (String script : scripts) {
                statement.executeUpdate(script);
            }
        }
    }

    private void versionOne() throws SQLException, IOException {
        run(
                new String(resource("1.sql"), StandardCharsets.UTF_8),
                new String(resource("version-1-entries.sql"), StandardCharsets.UTF_8),
                "PRAGMA user_version = 1",
                "PRAGMA application_id = " + 0x4A6B576B);
    }

    private List<String> tables() throws SQLException {
        List<String> tables = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + workshop.resolve(BenchLog.FILE));
                Statement statement = connection.createStatement();
                ResultSet set =
                        statement.executeQuery("SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name")) {
            while (set.next()) {
                tables.add(set.getString(1));
            }
        }
        return tables;
    }

    @Test
    void theFirstScriptStaysAsItWentOut() throws IOException {
        assertThat(Sums.sha256(resource("1.sql"))).isEqualTo(FIRST);
    }

    @Test
    void fromVersionOne(@TempDir Path fresh) throws SQLException, IOException {
        versionOne();
        BenchLog log = BenchLog.in(workshop);
        assertThat(log.counting(Kinds.TRIALS)).singleElement().satisfies(trial -> {
            assertThat(trial.passes()).isEqualTo(48);
            assertThat(trial.piece()).isEqualTo("R-001");
        });
        assertThat(log.list(Kinds.TRIALS).get(1).struck()).isEqualTo("wrong coin");
        assertThat(log.files(new RevisionName("heron", 1)))
                .containsEntry("heron/design.yaml", "abc".getBytes(StandardCharsets.UTF_8));
        assertThat(log.counting(Kinds.TAKINGS).get(0).money()).hasToString("41.20 EUR");
        assertThat(log.counting(Kinds.TIMINGS).get(0).minutes()).isEqualTo(41.5);
        assertThat(log.counting(Kinds.MEASURED).get(0).all("slope")).containsExactly(17.5, 18.25);
        assertThat(log.counting(Kinds.HAPPENINGS).get(0).who()).isEqualTo("Reed hut");
        assertThat(log.counting(Kinds.PREDICTIONS)).isEmpty();
        log.add(
                Kinds.PREDICTIONS,
                new Prediction(
                        Stamp.of(java.time.Instant.parse("2026-01-01T00:00:00Z"), ""),
                        new RevisionName("heron", 1),
                        1,
                        10,
                        9,
                        3,
                        1,
                        Map.of("EUR-1", 9),
                        Map.of("thrown", 1)));
        assertThat(log.counting(Kinds.PREDICTIONS)).hasSize(1);
        List<String> migrated = tables();
        Files.delete(workshop.resolve(BenchLog.FILE));
        BenchLog.in(workshop).freeze("a", "a", java.time.Instant.EPOCH, "", new java.util.TreeMap<>());
        assertThat(tables()).isEqualTo(migrated);
    }

    @Test
    void aStepThatFailsLeavesTheOldFormatWhole() throws SQLException, IOException {
        versionOne();
        run("CREATE TABLE prediction_cause (x)");
        byte[] before = Files.readAllBytes(workshop.resolve(BenchLog.FILE));
        assertThatThrownBy(() -> BenchLog.in(workshop).list(Kinds.TRIALS)).isInstanceOf(BenchException.class);
        assertThat(Files.readAllBytes(workshop.resolve(BenchLog.FILE))).isEqualTo(before);
    }

    @Test
    void newerOnesAndOthersAreLeftAlone() throws SQLException, IOException {
        versionOne();
        run("PRAGMA user_version = 999");
        assertThatThrownBy(() -> BenchLog.in(workshop).list(Kinds.TRIALS)).hasMessageContaining("newer Jackwork");
        Files.delete(workshop.resolve(BenchLog.FILE));
        run("CREATE TABLE birds (name)");
        assertThatThrownBy(() -> BenchLog.in(workshop).revisions()).hasMessageContaining("another program's");
    }
}
