package jackwork.bench;

import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** {@link Trial}. */
final class TrialKind extends LogKind<Trial> {

    TrialKind() {
        super("trials", "trial", List.of("design", "revision", "piece", "coin", "tries", "failures"));
    }

    @Override
    public long insert(Sql sql, Trial trial) throws SQLException {
        Long piece = trial.piece() == null ? null : sql.piece(trial.piece());
        long revision = sql.revision(trial.revision());
        if (piece != null && pieceRevision(sql, piece) != revision) {
            throw new BenchException("piece \"" + trial.piece() + "\" is not of " + trial.revision()
                    + "; leave the revision out, or name another piece");
        }
        long id = sql.add(
                table(), trial.stamp(), "revision, piece, coin, tries", revision, piece, trial.coin(), trial.tries());
        for (Map.Entry<String, Integer> failure : trial.failures().entrySet()) {
            sql.insert(
                    "INSERT INTO trial_failure (trial, cause, count) VALUES (?, ?, ?)",
                    id,
                    failure.getKey(),
                    failure.getValue());
        }
        return id;
    }

    private static long pieceRevision(Sql sql, @Nullable Long piece) throws SQLException {
        return sql.first("SELECT revision FROM piece WHERE id = ?", row -> row.number("revision"), piece)
                .orElseThrow();
    }

    @Override
    public List<Logged<Trial>> list(Sql sql) throws SQLException {
        Map<Long, Map<String, Integer>> failures = new TreeMap<>();
        sql.list(
                "SELECT trial, cause, count FROM trial_failure",
                row -> failures.computeIfAbsent(row.number("trial"), id -> new TreeMap<>())
                        .put(row.text("cause"), row.integer("count")));
        return sql.list(
                """
                SELECT t.*, r.design, r.number AS revision_number, p.serial
                FROM trial t JOIN revision r ON r.id = t.revision LEFT JOIN piece p ON p.id = t.piece
                ORDER BY t.at, t.id""",
                row -> row.logged(new Trial(
                        row.stamp(),
                        row.revision(),
                        row.textOrNull("serial"),
                        row.text("coin"),
                        row.integer("tries"),
                        failures.getOrDefault(row.number("id"), Map.of()))));
    }

    @Override
    public List<String> fields(Trial trial) {
        return List.of(
                trial.revision().design(),
                String.valueOf(trial.revision().number()),
                trial.piece() == null ? "" : trial.piece(),
                trial.coin(),
                String.valueOf(trial.tries()),
                Pairs.counts(trial.failures()));
    }

    @Override
    public Trial entry(Stamp stamp, CsvRow row) {
        return new Trial(
                stamp,
                row.revision(),
                row.textOrNull("piece"),
                row.text("coin"),
                row.integer("tries"),
                row.counts("failures"));
    }
}
