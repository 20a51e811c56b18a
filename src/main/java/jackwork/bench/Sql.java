package jackwork.bench;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Statements with their values, within one transaction. */
final class Sql {

    /** Of one kind, far more than hands can log. */
    private static final int MOST_ROWS = 2_000_000;

    private final Connection connection;

    Sql(Connection connection) {
        this.connection = connection;
    }

    interface Reader<T> {
        T read(Row row) throws SQLException;
    }

    /** A row of a result. */
    record Row(ResultSet set) {

        String text(String column) throws SQLException {
            String text = set.getString(column);
            return text == null ? "" : text;
        }

        @Nullable
        String textOrNull(String column) throws SQLException {
            return set.getString(column);
        }

        int integer(String column) throws SQLException {
            return set.getInt(column);
        }

        long number(String column) throws SQLException {
            return set.getLong(column);
        }

        double real(String column) throws SQLException {
            return set.getDouble(column);
        }

        byte[] bytes(String column) throws SQLException {
            byte[] bytes = set.getBytes(column);
            return bytes == null ? new byte[0] : bytes;
        }

        Instant instant(String column) throws SQLException {
            return Instant.parse(text(column));
        }

        Stamp stamp() throws SQLException {
            return new Stamp(text("key"), instant("at"), text("note"));
        }

        /** What was read of this row, with its number and whether it counts. */
        <T> Logged<T> logged(T entry) throws SQLException {
            return new Logged<>(number("id"), entry, textOrNull("struck"));
        }

        RevisionName revision() throws SQLException {
            return new RevisionName(text("design"), integer("revision_number"));
        }
    }

    <T> List<T> list(String statement, Reader<T> reader, @Nullable Object... values) throws SQLException {
        try (PreparedStatement prepared = prepare(statement, values);
                ResultSet set = prepared.executeQuery()) {
            List<T> all = new ArrayList<>();
            while (set.next()) {
                if (all.size() >= MOST_ROWS) {
                    throw BenchException.ofLog(BenchLog.FILE + ": has more than " + MOST_ROWS
                            + " entries of one kind, more than a workshop makes. Nothing was changed");
                }
                all.add(read(set, reader));
            }
            return all;
        }
    }

    /** What was logged was checked then: what does not pass now was changed by something else. */
    private static <T> T read(ResultSet set, Reader<T> reader) throws SQLException {
        try {
            return reader.read(new Row(set));
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new BenchException(
                    BenchLog.FILE + ": " + place(set) + " is damaged: " + e.getMessage()
                            + ". Nothing was changed; bring back a copy of the file",
                    e);
        }
    }

    private static String place(ResultSet set) throws SQLException {
        String first = set.getMetaData().getColumnName(1);
        String table = set.getMetaData().getTableName(1);
        return "the entry with " + first + " " + set.getString(1) + " in its table " + table;
    }

    <T> Optional<T> first(String statement, Reader<T> reader, @Nullable Object... values) throws SQLException {
        List<T> all = list(statement, reader, values);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
    }

    /** @return how many rows it changed */
    int execute(String statement, @Nullable Object... values) throws SQLException {
        try (PreparedStatement prepared = prepare(statement, values)) {
            return prepared.executeUpdate();
        }
    }

    /** @return the new row's number */
    long insert(String statement, @Nullable Object... values) throws SQLException {
        execute(statement, values);
        return first("SELECT last_insert_rowid() AS id", row -> row.number("id"))
                .orElseThrow();
    }

    /**
     * A new entry: its stamp, then what its own columns hold.
     *
     * @param columns with commas between them
     * @return the new row's number
     */
    long add(String table, Stamp stamp, String columns, @Nullable Object... values) throws SQLException {
        List<@Nullable Object> all = new ArrayList<>(List.of(stamp.key(), stamp.at(), stamp.note()));
        all.addAll(Arrays.asList(values));
        return insert(
                "INSERT INTO " + table + " (key, at, note, " + columns + ") VALUES (?" + ", ?".repeat(all.size() - 1)
                        + ")",
                all.toArray());
    }

    /** A revision's number in the table. */
    long revision(RevisionName name) throws SQLException {
        return first(
                        "SELECT id FROM revision WHERE design = ? AND number = ?",
                        row -> row.number("id"),
                        name.design(),
                        name.number())
                .orElseThrow(() -> new BenchException("the log has no revision " + name.number() + " of "
                        + name.design() + "; freeze the design first: jackwork bench freeze"));
    }

    /** A piece's number in the table. */
    long piece(String serial) throws SQLException {
        return first("SELECT id FROM piece WHERE serial = ? AND struck IS NULL", row -> row.number("id"), serial)
                .orElseThrow(() -> new BenchException(
                        "the log has no piece \"" + serial + "\"; add it first: jackwork bench piece add"));
    }

    private PreparedStatement prepare(String statement, @Nullable Object... values) throws SQLException {
        PreparedStatement prepared = connection.prepareStatement(statement);
        for (int i = 0; i < values.length; i++) {
            Object value = values[i];
            prepared.setObject(i + 1, value instanceof Instant ? value.toString() : value);
        }
        return prepared;
    }
}
