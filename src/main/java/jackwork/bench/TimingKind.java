package jackwork.bench;

import java.sql.SQLException;
import java.util.List;

/** {@link Timing}. */
final class TimingKind extends LogKind<Timing> {

    TimingKind() {
        super("timings", "timing", List.of("design", "revision", "operation", "minutes", "pieces"));
    }

    @Override
    public long insert(Sql sql, Timing timing) throws SQLException {
        return sql.add(
                table(),
                timing.stamp(),
                "revision, operation, minutes, pieces",
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
                row -> row.logged(new Timing(
                        row.stamp(),
                        row.revision(),
                        row.text("operation"),
                        row.real("minutes"),
                        row.integer("pieces"))));
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
