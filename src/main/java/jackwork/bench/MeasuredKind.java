package jackwork.bench;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** {@link Measured}. */
final class MeasuredKind extends LogKind<Measured> {

    MeasuredKind() {
        super("measured", "measured", List.of("kind", "about", "readings"));
    }

    @Override
    public long insert(Sql sql, Measured measured) throws SQLException {
        long id = sql.add(table(), measured.stamp(), "kind, about", measured.kind(), measured.about());
        int place = 1;
        for (Reading reading : measured.readings()) {
            sql.execute(
                    "INSERT INTO reading (measured, place, name, value) VALUES (?, ?, ?, ?)",
                    id,
                    place++,
                    reading.name(),
                    reading.value());
        }
        return id;
    }

    @Override
    public List<Logged<Measured>> list(Sql sql) throws SQLException {
        Map<Long, List<Reading>> readings = new TreeMap<>();
        sql.list(
                "SELECT measured, name, value FROM reading ORDER BY measured, place",
                row -> readings.computeIfAbsent(row.number("measured"), id -> new ArrayList<>())
                        .add(new Reading(row.text("name"), row.real("value"))));
        return sql.list(
                "SELECT * FROM measured ORDER BY at, id",
                row -> row.logged(new Measured(
                        row.stamp(),
                        row.text("kind"),
                        row.text("about"),
                        readings.getOrDefault(row.number("id"), List.of()))));
    }

    @Override
    public List<String> fields(Measured measured) {
        return List.of(measured.kind(), measured.about(), Pairs.readings(measured.readings()));
    }

    @Override
    public Measured entry(Stamp stamp, CsvRow row) {
        Measured measured = new Measured(stamp, row.text("kind"), row.textOr("about", ""), row.readings("readings"));
        Forms.check(measured);
        return measured;
    }
}
