package jackwork.bench;

import java.sql.SQLException;
import java.util.List;

/** {@link Timing}. */
final class TimingKind implements LogKind<Timing> {

    @Override
    public String name() {
        return "timings";
    }

    @Override
    public String table() {
        return "timing";
    }

    @Override
    public Stamp stamp(Timing timing) {
        return timing.stamp();
    }

    @Override
    public long insert(Sql sql, Timing timing) throws SQLException {
        return sql.insert(
                "INSERT INTO timing (key, at, note, revision, operation, minutes, pieces) VALUES (?, ?, ?, ?, ?, ?, ?)",
                timing.stamp().key(),
                timing.stamp().at(),
                timing.stamp().note(),
                sql.revision(timing.revision()),
                timing.operation(),
                timing.minutes(),
                timing.pieces());
    }

    @Override
    public List<Logged<Timing>> list(Sql sql) throws SQLException {
        return sql.list(
                """
                SELECT t.*, r.design, r.number AS revision_number
                FROM timing t JOIN revision r ON r.id = t.revision ORDER BY t.at, t.id""",
                row -> new Logged<>(
                        row.number("id"),
                        new Timing(
                                row.stamp(),
                                row.revision(),
                                row.text("operation"),
                                row.real("minutes"),
                                row.integer("pieces")),
                        row.textOrNull("struck")));
    }

    @Override
    public List<String> columns() {
        return List.of("design", "revision", "operation", "minutes", "pieces");
    }

    @Override
    public List<String> fields(Timing timing) {
        return List.of(
                timing.revision().design(),
                String.valueOf(timing.revision().number()),
                timing.operation(),
                Pairs.plain(timing.minutes()),
                String.valueOf(timing.pieces()));
    }

    @Override
    public Timing entry(Stamp stamp, CsvRow row) {
        return new Timing(
                stamp,
                row.revision(),
                row.text("operation"),
                row.number("minutes"),
                row.textOrNull("pieces") == null ? 1 : row.integer("pieces"));
    }
}
