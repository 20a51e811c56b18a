package jackwork.bench;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A workshop's log, {@code workshop.db} in its folder. Entries are added and struck, never changed. Every method is one
 * transaction; what it returns from is on the disk.
 */
public final class BenchLog {

    public static final String FILE = "workshop.db";

    private final Database database;

    private BenchLog(Database database) {
        this.database = database;
    }

    /** @param workshop the folder with {@code workshop.yaml} */
    public static BenchLog in(Path workshop) {
        return new BenchLog(new Database(workshop.resolve(FILE)));
    }

    /** An entry with its kind. */
    public record Entry<T extends Stamped>(LogKind<T> kind, T entry) {

        /** @param listed what the log had by kind and key, filled as it is asked for: many may be there already */
        boolean addTo(Sql sql, Map<LogKind<?>, Map<String, Object>> listed) throws SQLException {
            String key = entry.stamp().key();
            Map<String, Object> there = listed.get(kind);
            if (sql.first("SELECT id FROM " + kind.table() + " WHERE key = ?", row -> true, key)
                    .isEmpty()) {
                try {
                    kind.requireSensible(entry);
                } catch (IllegalArgumentException e) {
                    throw new BenchException(String.valueOf(e.getMessage()));
                }
                kind.insert(sql, entry);
                if (there != null) {
                    there.put(key, entry);
                }
                return true;
            }
            if (there == null) {
                there = new HashMap<>();
                for (Logged<T> logged : kind.list(sql)) {
                    there.put(logged.entry().stamp().key(), logged.entry());
                }
                listed.put(kind, there);
            }
            if (!entry.equals(there.get(key))) {
                throw new BenchException("the log has an entry \"" + key
                        + "\" already, with other values; strike that one and log this under another key");
            }
            return false;
        }
    }

    /** @return false when the log had this very entry already */
    public <T extends Stamped> boolean add(LogKind<T> kind, T entry) {
        return add(List.of(new Entry<>(kind, entry))) == 1;
    }

    /**
     * All of them or none.
     *
     * @return how many were new
     */
    public int add(List<? extends Entry<?>> entries) {
        return database.write(sql -> {
            Map<LogKind<?>, Map<String, Object>> listed = new HashMap<>();
            int added = 0;
            for (Entry<?> entry : entries) {
                added += entry.addTo(sql, listed) ? 1 : 0;
            }
            return added;
        });
    }

    /** Whether an entry of that key is there, struck or not. */
    public boolean has(LogKind<?> kind, String key) {
        return database.read(sql -> sql.first("SELECT id FROM " + kind.table() + " WHERE key = ?", row -> true, key)
                .isPresent());
    }

    /** All of a kind, oldest first, struck ones too. */
    public <T extends Stamped> List<Logged<T>> list(LogKind<T> kind) {
        return database.read(kind::list);
    }

    /** Those that count. */
    public <T extends Stamped> List<T> counting(LogKind<T> kind) {
        return list(kind).stream().filter(Logged::counts).map(Logged::entry).toList();
    }

    /**
     * Makes an entry not count; it stays, with the reason. Once more is no fault.
     *
     * @param number as {@link Logged#number()}
     */
    public void strike(LogKind<?> kind, long number, String why) {
        Texts.require("why", why, 1, 500);
        database.write(sql -> {
            if (sql.first("SELECT id FROM " + kind.table() + " WHERE id = ?", row -> true, number)
                    .isEmpty()) {
                throw new BenchException("the log has no entry " + number + " among its " + kind.name());
            }
            if (kind == Kinds.PIECES) {
                requireNothingLeans(sql, number);
            }
            return sql.execute(
                    "UPDATE " + kind.table() + " SET struck = ? WHERE id = ? AND struck IS NULL", why, number);
        });
    }

    /** The same by an entry's key. */
    public void strike(LogKind<?> kind, String key, String why) {
        long number = database.read(sql ->
                        sql.first("SELECT id FROM " + kind.table() + " WHERE key = ?", row -> row.number("id"), key))
                .orElseThrow(() -> new BenchException("the log has no entry \"" + key + "\" among its " + kind.name()));
        strike(kind, number, why);
    }

    private static void requireNothingLeans(Sql sql, long piece) throws SQLException {
        for (String table : List.of("happening", "taking", "trial")) {
            int leaning = sql.first(
                            "SELECT count(*) AS n FROM " + table + " WHERE piece = ? AND struck IS NULL",
                            row -> row.integer("n"),
                            piece)
                    .orElse(0);
            if (leaning > 0) {
                throw new BenchException("of this piece the log has " + leaning + " entries among its " + table
                        + "s; strike those first");
            }
        }
    }

    /** A word that is another after anything was written, here or by another program; quick to ask. */
    public String state() {
        return database.state();
    }

    /** Of all designs, by design and number. */
    public List<Revision> revisions() {
        return database.read(sql -> new Revisions(sql).list());
    }

    /** The last revision of a design. */
    public Optional<Revision> last(String design) {
        return revisions().stream()
                .filter(revision -> revision.name().design().equals(design))
                .reduce((first, second) -> second);
    }

    /** Bytes of a revision's files by their paths from the workshop's folder, checked against their sums. */
    public SortedMap<String, byte[]> files(RevisionName name) {
        return database.read(sql -> new Revisions(sql).files(name));
    }

    /** @throws BenchException when nothing differs from the design's last revision */
    public Revision freeze(String design, String title, Instant at, String note, SortedMap<String, byte[]> files) {
        return database.write(sql -> new Revisions(sql).freeze(design, title, at, note, files));
    }

    /** A whole log, or a file of it, taken over in one transaction. */
    <T> T write(Database.Work<T> work) {
        return database.write(work);
    }
}
