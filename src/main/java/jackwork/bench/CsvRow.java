package jackwork.bench;

import jackwork.stock.CsvReader;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One record of a CSV file by its columns' names; what it complains of has its place. */
final class CsvRow {

    private final String file;
    private final Map<String, Integer> head;
    private final List<CsvReader.Field> fields;

    CsvRow(String file, Map<String, Integer> head, List<CsvReader.Field> fields) {
        this.file = file;
        this.head = head;
        this.fields = fields;
    }

    /** A complaint about a field, with its place. */
    static final class Fault extends IllegalArgumentException {

        private static final long serialVersionUID = 1L;

        Fault(String message) {
            super(message);
        }
    }

    String text(String column) {
        String text = textOrNull(column);
        if (text == null) {
            throw new Fault(place(column) + column + " is empty, expected a value");
        }
        return text;
    }

    String textOr(String column, String otherwise) {
        String text = textOrNull(column);
        return text == null ? otherwise : text;
    }

    /** Null when the file has no such column, or nothing stands in it. */
    @Nullable
    String textOrNull(String column) {
        Integer index = head.get(column);
        return index == null || fields.get(index).text().isEmpty()
                ? null
                : fields.get(index).text();
    }

    int integer(String column) {
        return read(column, Pairs::integer);
    }

    double number(String column) {
        return read(column, Pairs::number);
    }

    Map<String, Integer> counts(String column) {
        return textOrNull(column) == null ? Map.of() : read(column, Pairs::counts);
    }

    List<Reading> readings(String column) {
        return read(column, Pairs::readings);
    }

    Instant instant(String column) {
        return read(column, CsvRow::instantOf);
    }

    /** {@code 2026-03-01T09:30:00Z}, or a day. */
    static Instant instantOf(String text) {
        try {
            return text.matches("\\d{4}-\\d{2}-\\d{2}")
                    ? LocalDate.parse(text).atStartOfDay(ZoneOffset.UTC).toInstant()
                    : Instant.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "read \"" + text + "\", expected a day or a time as in 2026-03-01 or 2026-03-01T09:30:00Z", e);
        }
    }

    RevisionName revision() {
        return new RevisionName(text("design"), integer("revision"));
    }

    /** All that stands in it. */
    String words() {
        return fields.stream().map(CsvReader.Field::text).collect(Collectors.joining("\u0001"));
    }

    /** The row's own place, for what is wrong with it as a whole; nothing where the row was in no file. */
    String place() {
        return file.isEmpty()
                ? ""
                : file + ":" + fields.get(0).line() + ":" + fields.get(0).column() + ": ";
    }

    private String place(String column) {
        Integer index = head.get(column);
        return index == null || file.isEmpty()
                ? place()
                : file + ":" + fields.get(index).line() + ":"
                        + fields.get(index).column() + ": ";
    }

    private <T> T read(String column, Function<String, T> reader) {
        String text = text(column);
        try {
            return reader.apply(text);
        } catch (IllegalArgumentException e) {
            throw new Fault(place(column) + column + ": " + e.getMessage());
        }
    }
}
