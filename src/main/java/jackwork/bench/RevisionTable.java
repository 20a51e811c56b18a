package jackwork.bench;

import java.time.Instant;
import java.util.List;

/** Revisions as a CSV file; their files lie beside it. */
final class RevisionTable {

    /**
     * @param place of the row, for complaints
     */
    record Line(String place, RevisionName name, String title, Instant at, String note, String fingerprint) {}

    private static final List<String> COLUMNS = List.of("design", "revision", "title", "at", "fingerprint", "note");

    private RevisionTable() {}

    static String write(List<Revision> revisions) {
        StringBuilder csv = new StringBuilder(CsvTable.line(COLUMNS));
        revisions.forEach(revision -> csv.append(CsvTable.line(List.of(
                revision.name().design(),
                String.valueOf(revision.name().number()),
                revision.title(),
                revision.at().toString(),
                revision.fingerprint(),
                revision.note()))));
        return csv.toString();
    }

    static List<Line> read(String file, String text) {
        return CsvTable.read(
                file,
                text,
                COLUMNS,
                row -> new Line(
                        row.place(),
                        row.revision(),
                        row.text("title"),
                        row.instant("at"),
                        row.textOr("note", ""),
                        row.text("fingerprint")));
    }
}
