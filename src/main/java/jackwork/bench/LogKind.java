package jackwork.bench;

import java.sql.SQLException;
import java.util.List;

/** A kind of entry: its table, and its columns in a CSV file. A new one is a file like this and a line in {@link Kinds}. */
public interface LogKind<T> {

    /** For people, and the CSV file's name: {@code trials}. */
    String name();

    /** In the database. */
    String table();

    Stamp stamp(T entry);

    /**
     * Looked at before it is logged, not when it is read again: what an earlier Jackwork took stays as it is.
     *
     * @throws IllegalArgumentException when no such thing can have happened
     */
    default void requireSensible(T entry) {
        stamp(entry).requireSensible();
    }

    /** @return its number */
    long insert(Sql sql, T entry) throws SQLException;

    /** All, oldest first. */
    List<Logged<T>> list(Sql sql) throws SQLException;

    /** Of its CSV file, without key, at, note and struck, which every kind has. */
    List<String> columns();

    /** Fields in the order of {@link #columns()}. */
    List<String> fields(T entry);

    /** @throws IllegalArgumentException when the row is none; a field's own fault names its place itself */
    T entry(Stamp stamp, CsvRow row);
}
