package jackwork.bench;

import java.sql.SQLException;
import java.util.List;

/** A kind of entry: its table, and its columns in a CSV file. A new one is a file like this and a line in {@link Kinds}. */
public abstract class LogKind<T extends Stamped> {

    private final String name;
    private final String table;
    private final List<String> columns;

    /**
     * @param name for people, and the CSV file's: {@code trials}
     * @param table in the database
     * @param columns of its CSV file, without key, at, note and struck, which every kind has
     */
    LogKind(String name, String table, List<String> columns) {
        this.name = name;
        this.table = table;
        this.columns = columns;
    }

    /** For people, and the CSV file's name: {@code trials}. */
    public final String name() {
        return name;
    }

    /** In the database. */
    final String table() {
        return table;
    }

    /** Of its CSV file, without key, at, note and struck, which every kind has. */
    public final List<String> columns() {
        return columns;
    }

    /**
     * Looked at before it is logged, not when it is read again: what an earlier Jackwork took stays as it is.
     *
     * @throws IllegalArgumentException when no such thing can have happened
     */
    void requireSensible(T entry) {
        entry.stamp().requireSensible();
    }

    /** @return its number */
    abstract long insert(Sql sql, T entry) throws SQLException;

    /** All, oldest first. */
    abstract List<Logged<T>> list(Sql sql) throws SQLException;

    /** Fields in the order of {@link #columns()}. */
    public abstract List<String> fields(T entry);

    /** @throws IllegalArgumentException when the row is none; a field's own fault names its place itself */
    abstract T entry(Stamp stamp, CsvRow row);
}
