package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A {@code workshop.db} that is none, or was made to do something else when it is read: told, and left as it is. */
class HostileLogTest {

    @TempDir(factory = InMemory.class)
    private Path folder;

    private Path hut;
    private Path file;

    @BeforeEach
    void begin() throws IOException {
        hut = Files.createDirectory(folder.resolve("hut"));
        file = hut.resolve(BenchLog.FILE);
    }

    private void log() throws IOException {
        BenchLog log = Children.log(hut);
        log.add(Kinds.TRIALS, LogTest.trialOf("one"));
    }

    private void spoil(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.executeUpdate(each);
            }
        }
    }

    /** Reading and logging are both refused with these words, soon, and the file stays as it is. */
    private void isTold(String... words) throws IOException {
        byte[] before = Files.readAllBytes(file);
        BenchLog log = BenchLog.in(hut);
        List<Runnable> uses = List.of(
                () -> {
                    log.list(Kinds.TRIALS);
                    log.files(new RevisionName("heron", 1));
                },
                () -> {
                    log.add(Kinds.TRIALS, LogTest.trialOf("two"));
                    log.files(new RevisionName("heron", 1));
                    log.list(Kinds.TRIALS);
                });
        for (Runnable use : uses) {
            assertTimeoutPreemptively(
                    Duration.ofSeconds(20),
                    () -> assertThatThrownBy(use::run)
                            .isInstanceOf(BenchException.class)
                            .hasMessageContaining(BenchLog.FILE)
                            .hasMessageContaining("Nothing was")
                            .satisfies(e -> assertThat(e.getMessage()).contains(words)));
            if (words.length > 0) {
                assertThat(Files.readAllBytes(file)).isEqualTo(before);
            }
        }
    }

    @Test
    void oneWithNothingInItIsNotTakenForANewOne() throws IOException {
        Files.createFile(file);
        isTold("has nothing in it", "bring back a copy");
        assertThatThrownBy(() -> BenchLog.in(hut).list(Kinds.TRIALS))
                .satisfies(e -> assertThat(((BenchException) e).unreached())
                        .as("what a phone sends waits for the log")
                        .isTrue());
    }

    @Test
    void aTextOfThatNameIsNotOne() throws IOException {
        Files.writeString(file, "The log of the bench.\n".repeat(100));
        isTold("is no log");
    }

    @Test
    void aDatabaseWithoutTablesIsNotOne() throws IOException, SQLException {
        spoil("CREATE TABLE x (y)", "DROP TABLE x");
        isTold("is no log");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "DROP TABLE taking",
                "DROP TABLE trial_failure",
                "ALTER TABLE trial DROP COLUMN coin",
                "ALTER TABLE trial RENAME COLUMN coin TO currency",
                "ALTER TABLE trial ADD COLUMN weather TEXT",
                "DROP INDEX piece_serial",
                "CREATE TRIGGER gone AFTER INSERT ON trial BEGIN DELETE FROM revision_file; END",
                "CREATE UNIQUE INDEX one ON trial (coin)",
                "PRAGMA user_version = 1",
                "PRAGMA user_version = -1",
                "PRAGMA user_version = 0",
                "PRAGMA application_id = 0",
            })
    void oneWithOtherTablesIsNotUsed(String statement) throws IOException, SQLException {
        log();
        spoil("PRAGMA foreign_keys = OFF", statement);
        isTold("Nothing was changed");
    }

    /** As soon as it is asked for, it never ends. */
    @Test
    void aViewInATablesPlaceIsNotAsked() throws IOException, SQLException {
        log();
        spoil(
                "PRAGMA foreign_keys = OFF",
                "DROP TABLE trial_failure",
                "CREATE VIEW trial_failure AS WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n)"
                        + " SELECT i AS trial, 'x' AS cause, i AS count FROM n");
        isTold("has no table trial_failure");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE trial SET at = '2026-13-41T99:99:99Z'",
                "UPDATE trial SET at = 'yesterday'",
                "UPDATE trial SET tries = -5",
                "UPDATE trial SET tries = 9999999999999",
                "UPDATE trial SET coin = ''",
                "INSERT INTO trial_failure SELECT id, 'gnomes', 3 FROM trial",
                "UPDATE content SET bytes = x'00'",
                "UPDATE content SET bytes = zeroblob(80000000)",
                "UPDATE revision SET number = -1",
            })
    void damagedEntriesAreTold(String statement) throws IOException, SQLException {
        log();
        spoil("PRAGMA ignore_check_constraints = ON", "PRAGMA foreign_keys = OFF", statement);
        BenchLog log = BenchLog.in(hut);
        assertThatThrownBy(() -> {
                    log.list(Kinds.TRIALS);
                    log.files(new RevisionName("heron", 1));
                    log.revisions();
                })
                .isInstanceOf(BenchException.class)
                .satisfies(e -> assertThat(e.getMessage()).containsAnyOf("damaged", "no revision 1"));
    }

    /** Frozen files go below the folder that they are taken out to, whatever their design is called. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE revision SET design = '../../outside'",
                "UPDATE revision SET design = '{folder}/outside'",
                "UPDATE revision SET design = 'heron/../../../outside'",
                "UPDATE revision_file SET path = '../../../../outside/letters'",
                "UPDATE revision_file SET path = '{folder}/outside/letters'",
                "UPDATE revision_file SET path = 'a' || char(0) || 'b'",
                "INSERT INTO revision_file SELECT revision, path || '/b', sha256 FROM revision_file",
            })
    void nothingIsTakenOutToAnywhereElse(String statement) throws IOException, SQLException {
        log();
        spoil("PRAGMA foreign_keys = OFF", statement.replace("{folder}", folder.toString()));
        Path out = folder.resolve("out");
        assertThatThrownBy(() -> Archive.write(BenchLog.in(hut), out))
                .isInstanceOf(BenchException.class)
                .hasMessageContaining("damaged");
        try (var there = Files.list(folder)) {
            assertThat(there).containsOnly(hut, out);
        }
    }

    @Test
    void aPageThatIsDamagedIsTold() throws IOException {
        log();
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 4096; i < bytes.length; i++) {
            bytes[i] = (byte) (i * 31);
        }
        Files.write(file, bytes);
        isTold("damaged");
    }

    @ParameterizedTest
    @ValueSource(strings = {"workshop.db", "workshop.db-journal", "workshop.db-wal"})
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void noneIsMadeOrUsedThroughALink(String name) throws IOException {
        if (!name.equals(BenchLog.FILE)) {
            log();
        }
        Path outside = folder.resolve("outside");
        Files.createSymbolicLink(hut.resolve(name), outside);
        for (boolean there : new boolean[] {false, true}) {
            if (there) {
                Files.writeString(outside, "");
            }
            BenchLog log = BenchLog.in(hut);
            assertThatThrownBy(() -> log.list(Kinds.TRIALS)).hasMessageContaining("is a link");
            assertThatThrownBy(() -> log.add(Kinds.TRIALS, LogTest.trialOf("x")))
                    .hasMessageContaining("is a link");
            assertThat(Files.exists(outside)).isEqualTo(there);
            assertThat(there ? Files.readString(outside) : "").isEmpty();
        }
        assertThat(Files.isSymbolicLink(hut.resolve(name))).isTrue();
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void nobodyWaitsForAPipe() throws Exception {
        assertThat(new ProcessBuilder("mkfifo", file.toString()).start().waitFor(10, TimeUnit.SECONDS))
                .isTrue();
        assertTimeoutPreemptively(
                Duration.ofSeconds(10),
                () -> assertThatThrownBy(() -> BenchLog.in(hut).list(Kinds.TRIALS))
                        .hasMessageContaining("no plain file"));
    }

    /**
     * A journal that is left says what to put back, and may name a second file of a change of several databases, which is
     * deleted when nobody needs it any more: here one that lies outside.
     */
    @Test
    void aJournalThatNamesAnotherFileIsNotFollowed() throws IOException {
        log();
        Path outside = Files.writeString(folder.resolve("letters"), "Dear Anna,\n");
        Files.write(hut.resolve("workshop.db-journal"), journal(outside));
        isTold("names another file");
        assertThat(outside).exists();
        assertThat(Files.exists(hut.resolve("workshop.db-journal"), LinkOption.NOFOLLOW_LINKS))
                .isTrue();
    }

    private byte[] journal(Path other) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeLong(0xd9d505f920a163d7L);
        out.writeInt(0); // pages to put back
        out.writeInt(1);
        out.writeInt((int) (Files.size(file) / 4096));
        out.writeInt(512);
        out.writeInt(4096);
        out.write(new byte[512 - bytes.size()]);
        byte[] name = other.toString().getBytes(StandardCharsets.UTF_8);
        int sum = 0;
        for (byte letter : name) {
            sum += letter;
        }
        out.writeInt((1 << 30) / 4096 + 1);
        out.write(name);
        out.writeInt(name.length);
        out.writeInt(sum);
        out.writeLong(0xd9d505f920a163d7L);
        return bytes.toByteArray();
    }

    @Test
    void anotherTableBesideOursIsNoFault() throws IOException, SQLException {
        log();
        spoil("CREATE TABLE weather (day TEXT, rain REAL)");
        assertThat(BenchLog.in(hut).list(Kinds.TRIALS)).hasSize(1);
        assertThat(BenchLog.in(hut).add(Kinds.TRIALS, LogTest.trialOf("two"))).isTrue();
    }

    @Test
    void aNewLogIsThereWholeOrNot() throws IOException {
        BenchLog.in(hut).list(Kinds.TRIALS);
        assertThat(hut).isEmptyDirectory();
        LogFile.begin(file, new byte[] {1});
        LogFile.begin(file, new byte[] {2});
        assertThat(Files.readAllBytes(file)).as("whoever was first").containsExactly(1);
        try (var left = Files.list(hut)) {
            assertThat(left).containsExactly(file);
        }
    }
}
