package jackwork.bench;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The tables of a log, as the scripts make them. A file from elsewhere may call a view or a trigger by their names, which
 * does something else whenever it is read or written, or lack a column: such a file is not read as a log.
 */
final class Schema {

    /** By the number of scripts. */
    private static final Map<Integer, SortedMap<String, Thing>> EXPECTED = new ConcurrentHashMap<>();

    /** What is wrong is told of a table before it is told of what belongs to it. */
    private static final Comparator<String> TABLES_FIRST = Comparator.comparing(
                    (String thing) -> !thing.startsWith("table "))
            .thenComparing(Comparator.naturalOrder());

    /** @param table it belongs to */
    private record Thing(String table, String statement) {}

    private Schema() {}

    /**
     * @param version how many scripts it says to have been through
     * @throws BenchException when a table is missing or another than that
     */
    static void require(Connection connection, String file, int version) throws SQLException {
        SortedMap<String, Thing> expected = expected(version);
        SortedMap<String, Thing> there = of(connection);
        for (Map.Entry<String, Thing> thing : expected.entrySet()) {
            Thing found = there.get(thing.getKey());
            if (found == null) {
                throw fault(file, "has no " + thing.getKey() + ", which every log has");
            } else if (!found.equals(thing.getValue())) {
                throw fault(file, "has another " + thing.getKey() + " than a log has");
            }
        }
        SortedMap<String, Thing> later = expected(Migrations.VERSION);
        for (Map.Entry<String, Thing> thing : there.entrySet()) {
            boolean ours = later.containsKey("table " + thing.getValue().table());
            if (ours && !expected.containsKey(thing.getKey())) {
                throw fault(
                        file,
                        "has a " + told(thing.getKey()) + " on its table "
                                + thing.getValue().table() + ", which no log of its format has");
            }
        }
    }

    private static BenchException fault(String file, String what) {
        return BenchException.ofLog(file + ": is no log, or a damaged one: it " + what
                + ". Nothing was changed; put it aside and bring back a copy");
    }

    private static String told(String name) {
        String seen = name.replaceAll("\\p{C}", "?");
        return seen.length() > 60 ? seen.substring(0, 60) + "…" : seen;
    }

    private static SortedMap<String, Thing> expected(int version) throws SQLException {
        SortedMap<String, Thing> known = EXPECTED.get(version);
        if (known == null) {
            try (Connection fresh = DriverManager.getConnection("jdbc:sqlite::memory:")) {
                Migrations.run(fresh, 0, version);
                known = of(fresh);
            }
            EXPECTED.put(version, known);
        }
        return known;
    }

    /** All that there is, by kind and name. */
    private static SortedMap<String, Thing> of(Connection connection) throws SQLException {
        SortedMap<String, Thing> things = new TreeMap<>(TABLES_FIRST);
        try (Statement statement = connection.createStatement();
                ResultSet set = statement.executeQuery("SELECT type, name, tbl_name, sql FROM sqlite_schema")) {
            while (set.next()) {
                String sql = set.getString("sql");
                things.put(
                        set.getString("type") + " "
                                + String.valueOf(set.getString("name")).toLowerCase(Locale.ROOT),
                        new Thing(
                                String.valueOf(set.getString("tbl_name")).toLowerCase(Locale.ROOT),
                                sql == null ? "" : sql));
            }
        }
        return things;
    }
}
