package jackwork.bench;

import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Frozen states of designs, within one transaction. */
final class Revisions {

    private static final String COLUMNS = "SELECT id, design, number AS revision_number, name, at, note, fingerprint";

    private final Sql sql;

    Revisions(Sql sql) {
        this.sql = sql;
    }

    /** Of all designs, by design and number. */
    List<Revision> list() throws SQLException {
        Map<Long, SortedMap<String, String>> files = new TreeMap<>();
        sql.list(
                "SELECT revision, path, sha256 FROM revision_file",
                row -> files.computeIfAbsent(row.number("revision"), id -> new TreeMap<>())
                        .put(row.text("path"), row.text("sha256")));
        return sql.list(
                COLUMNS + " FROM revision ORDER BY design, number",
                row -> new Revision(
                        row.revision(),
                        row.text("name"),
                        row.instant("at"),
                        row.text("note"),
                        row.text("fingerprint"),
                        files.getOrDefault(row.number("id"), new TreeMap<>())));
    }

    /** Bytes by path. */
    SortedMap<String, byte[]> files(RevisionName name) throws SQLException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        sql.list(
                """
                SELECT f.path, c.bytes, c.sha256 FROM revision_file f JOIN content c ON c.sha256 = f.sha256
                WHERE f.revision = ?""",
                row -> {
                    Texts.require("path", row.text("path"), 1, 1000);
                    Texts.requireInside("path", row.text("path"));
                    byte[] bytes = row.bytes("bytes");
                    if (!Sums.sha256(bytes).equals(row.text("sha256"))) {
                        throw new BenchException(
                                row.text("path") + " of " + name + " is damaged in the log; bring back a copy of it");
                    }
                    return files.put(row.text("path"), bytes);
                },
                sql.revision(name));
        requireNoFolders(name, files);
        return files;
    }

    /** Two files cannot be where one is the other's folder. */
    private static void requireNoFolders(RevisionName name, SortedMap<String, byte[]> files) {
        for (String path : files.keySet()) {
            if (files.keySet().stream().anyMatch(other -> other.startsWith(path + "/"))) {
                throw BenchException.ofLog(BenchLog.FILE + ": " + name + " is damaged: " + path
                        + " is a file and a folder in it. Nothing was changed; bring back a copy of the file");
            }
        }
    }

    /**
     * Freezes under the next number.
     *
     * @throws BenchException when nothing differs from the last revision
     */
    Revision freeze(String design, String title, Instant at, String note, SortedMap<String, byte[]> files)
            throws SQLException {
        Optional<Revision> last = list().stream()
                .filter(revision -> revision.name().design().equals(design))
                .reduce((first, second) -> second);
        String fingerprint = Sums.fingerprint(Sums.of(files));
        if (last.isPresent() && last.get().fingerprint().equals(fingerprint)) {
            throw new BenchException("nothing of " + design + " has changed since its revision "
                    + last.get().name().number() + ", frozen " + last.get().at() + "; that one serves");
        }
        int number = last.map(revision -> revision.name().number() + 1).orElse(1);
        return put(new RevisionName(design, number), title, at, note, files);
    }

    /**
     * Takes one over with its number.
     *
     * @return false when the log has that very one already
     */
    boolean take(Revision revision, SortedMap<String, byte[]> files) throws SQLException {
        Optional<String> there = sql.first(
                "SELECT fingerprint FROM revision WHERE design = ? AND number = ?",
                row -> row.text("fingerprint"),
                revision.name().design(),
                revision.name().number());
        if (there.isPresent()) {
            if (!there.get().equals(revision.fingerprint())) {
                throw new BenchException("the log has another " + revision.name() + " already, with other files");
            }
            return false;
        }
        put(revision.name(), revision.title(), revision.at(), revision.note(), files);
        return true;
    }

    private Revision put(RevisionName name, String title, Instant at, String note, SortedMap<String, byte[]> files)
            throws SQLException {
        Stamp checked = Stamp.of(at, note);
        SortedMap<String, String> sums = Sums.of(files);
        String fingerprint = Sums.fingerprint(sums);
        long id = sql.insert(
                "INSERT INTO revision (design, number, name, at, note, fingerprint) VALUES (?, ?, ?, ?, ?, ?)",
                name.design(),
                name.number(),
                title,
                checked.at(),
                note,
                fingerprint);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            String sum = Sums.sha256(file.getValue());
            sql.execute("INSERT OR IGNORE INTO content (sha256, bytes) VALUES (?, ?)", sum, file.getValue());
            sql.execute("INSERT INTO revision_file (revision, path, sha256) VALUES (?, ?, ?)", id, file.getKey(), sum);
        }
        return new Revision(name, title, checked.at(), note, fingerprint, sums);
    }
}
