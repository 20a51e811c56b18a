package jackwork.bench;

import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** {@link Prediction}. */
final class PredictionKind extends LogKind<Prediction> {

    PredictionKind() {
        super(
                "predictions",
                "prediction",
                List.of("design", "revision", "seed", "builds", "passes", "numbers", "guesses", "coins", "causes"));
    }

    @Override
    public long insert(Sql sql, Prediction prediction) throws SQLException {
        long id = sql.add(
                table(),
                prediction.stamp(),
                "revision, seed, builds, passes, numbers, guesses",
                sql.revision(prediction.revision()),
                prediction.seed(),
                prediction.builds(),
                prediction.passes(),
                prediction.numbers(),
                prediction.guesses());
        for (Map.Entry<String, Integer> coin : prediction.coins().entrySet()) {
            sql.execute(
                    "INSERT INTO prediction_coin (prediction, coin, passes) VALUES (?, ?, ?)",
                    id,
                    coin.getKey(),
                    coin.getValue());
        }
        for (Map.Entry<String, Integer> cause : prediction.causes().entrySet()) {
            sql.execute(
                    "INSERT INTO prediction_cause (prediction, cause, builds) VALUES (?, ?, ?)",
                    id,
                    cause.getKey(),
                    cause.getValue());
        }
        return id;
    }

    @Override
    public List<Logged<Prediction>> list(Sql sql) throws SQLException {
        Map<Long, Map<String, Integer>> coins =
                counts(sql, "SELECT prediction, coin AS name, passes AS n FROM prediction_coin");
        Map<Long, Map<String, Integer>> causes =
                counts(sql, "SELECT prediction, cause AS name, builds AS n FROM prediction_cause");
        return sql.list(
                """
                SELECT p.*, r.design, r.number AS revision_number
                FROM prediction p JOIN revision r ON r.id = p.revision ORDER BY p.at, p.id""",
                row -> row.logged(new Prediction(
                        row.stamp(),
                        row.revision(),
                        row.number("seed"),
                        row.integer("builds"),
                        row.integer("passes"),
                        row.integer("numbers"),
                        row.integer("guesses"),
                        coins.getOrDefault(row.number("id"), Map.of()),
                        causes.getOrDefault(row.number("id"), Map.of()))));
    }

    private static Map<Long, Map<String, Integer>> counts(Sql sql, String query) throws SQLException {
        Map<Long, Map<String, Integer>> counts = new TreeMap<>();
        sql.list(
                query,
                row -> counts.computeIfAbsent(row.number("prediction"), id -> new TreeMap<>())
                        .put(row.text("name"), row.integer("n")));
        return counts;
    }

    @Override
    public List<String> fields(Prediction prediction) {
        return List.of(
                prediction.revision().design(),
                String.valueOf(prediction.revision().number()),
                String.valueOf(prediction.seed()),
                String.valueOf(prediction.builds()),
                String.valueOf(prediction.passes()),
                String.valueOf(prediction.numbers()),
                String.valueOf(prediction.guesses()),
                Pairs.counts(prediction.coins()),
                Pairs.counts(prediction.causes()));
    }

    @Override
    public Prediction entry(Stamp stamp, CsvRow row) {
        return new Prediction(
                stamp,
                row.revision(),
                (long) row.number("seed"),
                row.integer("builds"),
                row.integer("passes"),
                row.integer("numbers"),
                row.integer("guesses"),
                row.counts("coins"),
                row.counts("causes"));
    }
}
