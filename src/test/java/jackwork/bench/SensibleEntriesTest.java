package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.stock.CsvReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot have happened is not logged, and says why; what is written out means what was typed in. */
class SensibleEntriesTest {

    private static final RevisionName HERON = new RevisionName("heron", 1);

    @TempDir(factory = InMemory.class)
    private Path folder;

    private BenchLog log;

    @BeforeEach
    void begin() throws IOException {
        log = Children.log(folder);
        log.add(Kinds.PIECES, new Piece(stamp("p", "2026-03-01T09:30:00Z", ""), "H-1", HERON, ""));
    }

    private static Stamp stamp(String key, String at, String note) {
        return new Stamp(key, Instant.parse(at), note);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"2999-01-01T00:00:00Z", "2100-01-01T00:00:00Z", "1999-12-31T23:59:59Z", "1970-01-01T00:00:00Z"})
    void aDayThatCannotBeIsRefused(String at) {
        Trial trial = new Trial(stamp("t", at, ""), HERON, null, "EUR-1", 3, Map.of());
        assertThatThrownBy(() -> log.add(Kinds.TRIALS, trial))
                .isInstanceOf(BenchException.class)
                .hasMessageContaining(at)
                .hasMessageContaining("expected one from 2000 to 2099");
        assertThat(log.list(Kinds.TRIALS)).isEmpty();
    }

    @Test
    void aFileWithADayThatCannotBeIsRefusedWithItsPlace() throws IOException {
        Path file = Files.writeString(
                folder.resolve("trials.csv"),
                "at,design,revision,coin,tries\n2026-03-01,heron,1,EUR-1,5\n2999-03-01,heron,1,EUR-1,5\n");
        assertThatThrownBy(() -> Archive.read(log, file))
                .hasMessageContaining("trials.csv, entry 2")
                .hasMessageContaining("2000 to 2099");
        assertThat(log.list(Kinds.TRIALS)).isEmpty();
    }

    /** Taken by an earlier Jackwork: it can still be read, and struck. */
    @Test
    void aDayThatWasLoggedBeforeIsStillRead() throws SQLException {
        log.add(Kinds.TRIALS, new Trial(stamp("t", "2026-03-01T00:00:00Z", ""), HERON, null, "EUR-1", 3, Map.of()));
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(BenchLog.FILE));
                var statement = connection.createStatement()) {
            statement.executeUpdate("UPDATE trial SET at = '2999-01-01T00:00:00Z'");
        }
        assertThat(log.counting(Kinds.TRIALS)).hasSize(1);
        log.strike(Kinds.TRIALS, "t", "wrong day");
        assertThat(log.counting(Kinds.TRIALS)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "41.205, EUR, 2 places",
        "0.001, GBP, 2 places",
        "41.2050001, EUR, amount",
        "100.5, JPY, no places",
        "1.2345, KWD, 3 places",
        "1.001, XQQ, 2 places"
    })
    void anAmountThatNoCoinsMakeIsRefused(String amount, String currency, String why) {
        assertThatThrownBy(() -> log.add(
                        Kinds.TAKINGS,
                        new Taking(
                                stamp("t", "2026-03-01T00:00:00Z", ""),
                                "H-1",
                                Money.of(amount, currency),
                                "Ada",
                                "Ben",
                                "7")))
                .hasMessageContaining(amount)
                .hasMessageContaining(why);
        assertThat(log.list(Kinds.TAKINGS)).isEmpty();
        assertThatThrownBy(() -> log.add(
                        Kinds.HAPPENINGS,
                        new Happening(
                                stamp("h", "2026-03-01T00:00:00Z", ""),
                                "H-1",
                                Happening.What.SOLD,
                                "Cleo",
                                Money.of(amount, currency))))
                .hasMessageContaining(why);
        assertThat(log.list(Kinds.HAPPENINGS)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"41.20, EUR", "41.2000, EUR", "0, EUR", "100, JPY", "1.234, KWD"})
    void whatCoinsMakeIsTaken(String amount, String currency) {
        log.add(
                Kinds.TAKINGS,
                new Taking(
                        stamp("t", "2026-03-01T00:00:00Z", ""), "H-1", Money.of(amount, currency), "Ada", "Ben", "7"));
        assertThat(log.list(Kinds.TAKINGS)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e300, 100_001, Double.POSITIVE_INFINITY, 0, -1, Double.NaN})
    void minutesOutOfTheirRangeTellBothItsEnds(double minutes) {
        assertThatThrownBy(() -> new Timing(stamp("t", "2026-03-01T00:00:00Z", ""), HERON, "glue", minutes, 1))
                .hasMessageContaining("more than 0 and at most 100000");
    }

    @Test
    void aStepOutOfItsRangeTellsBothItsEnds() {
        Measured kerf = new Measured(
                stamp("k", "2026-03-01T00:00:00Z", ""),
                "kerf",
                "",
                List.of(new Reading("drawn", 20), new Reading("outside", 19.8), new Reading("step", 500)));
        assertThatThrownBy(() -> Forms.check(kerf)).hasMessageContaining("0 or more and less than 100");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=cmd|' /C calc'!A0",
                "+49 30 1234",
                "-1+cmd|' /C calc'!A0",
                "@SUM(A1:A9)",
                "'=x",
                "''=x",
                "'",
                "'plain",
                "'-5",
                "\n=1",
                "＝1+1",
                "-",
                "=",
                "-3.5",
                "-3.5.",
                "a, \"b\"\n=c; d"
            })
    void aNoteIsNoFormulaInASpreadsheetAndComesBackAsItWas(String note) throws IOException {
        log.add(Kinds.TRIALS, new Trial(stamp("t", "2026-03-01T00:00:00Z", note), HERON, null, "EUR-1", 3, Map.of()));
        String csv = Archive.csv(log, Kinds.TRIALS);
        assertThat(csv.lines().skip(1).findFirst().orElseThrow()).doesNotContainPattern("(^|,)\"?[=+@\t\uFF1D]");
        Path out = folder.resolve("out");
        Archive.write(log, out);
        Path other = Files.createDirectory(folder.resolve("other"));
        BenchLog taken = BenchLog.in(other);
        Archive.read(taken, out);
        assertThat(taken.counting(Kinds.TRIALS)).isEqualTo(log.counting(Kinds.TRIALS));
        assertThat(Archive.read(taken, out).added())
                .as("the same file once more")
                .isZero();
    }

    @Test
    void numbersBelowNothingStayNumbers() {
        assertThat(CsvTable.line(List.of("-3.5", "-3", "x"))).isEqualTo("-3.5,-3,x\r\n");
    }

    /** Cells of letters that matter, drawn at random: written, read as RFC 4180 says, and the same again. */
    @Test
    void everyCellComesBackAsItWas() {
        Random random = new Random(20261129);
        String letters = "=+-@\t\r\n'\",; 1.a\uFF1D";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder cell = new StringBuilder("x");
            cell.setLength(0);
            for (int length = random.nextInt(7); length >= 0; length--) {
                cell.append(letters.charAt(random.nextInt(letters.length())));
            }
            String text = cell.toString();
            String line = CsvTable.line(List.of("k", text));
            String field = CsvReader.read("x.csv", line).get(0).get(1).text();
            assertThat(jackwork.design.CsvCell.read(field)).isEqualTo(text);
            assertThat(field).as(text).matches("(?s)|-\\d+(\\.\\d+)?|[^=+\\-@\\t\\r\\n\uFF1D].*");
        }
    }
}
