package jackwork.bench;

import jackwork.design.CsvCell;
import jackwork.design.NearestWord;
import jackwork.stock.CsvReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Entries of one kind as a CSV file (RFC 4180, UTF-8, lines end with CR LF), and back. */
public final class CsvTable {

    private static final int MOST_COMPLAINTS = 20;

    private CsvTable() {}

    /** Only what counts: struck entries stay behind. */
    public static <T extends Stamped> String write(LogKind<T> kind, List<Logged<T>> entries) {
        StringBuilder csv = new StringBuilder(line(head(kind)));
        for (Logged<T> logged : entries) {
            if (logged.counts()) {
                Stamp stamp = logged.entry().stamp();
                csv.append(line(Stream.of(
                                Stream.of(stamp.key(), stamp.at().toString()),
                                kind.fields(logged.entry()).stream(),
                                Stream.of(stamp.note()))
                        .flatMap(fields -> fields)
                        .toList()));
            }
        }
        return csv.toString();
    }

    /**
     * A row without key gets one made of what stands in it, so that the same file read twice is logged once.
     *
     * @throws BenchException with the place of each fault, up to 20
     */
    static <T extends Stamped> List<T> read(LogKind<T> kind, String file, String text) {
        Map<String, Integer> seen = new HashMap<>();
        return read(file, text, head(kind), row -> {
            String key = row.textOr("key", made(row.words(), seen));
            return kind.entry(new Stamp(key, row.instant("at"), row.textOr("note", "")), row);
        });
    }

    static <T> List<T> read(String file, String text, List<String> columns, Function<CsvRow, T> reader) {
        List<List<CsvReader.Field>> records = records(file, text);
        if (records.isEmpty()) {
            throw new BenchException(file + ":1:1: is empty, expected a head: " + String.join(",", columns));
        }
        Map<String, Integer> head = head(columns, file, records.get(0));
        List<String> complaints = new ArrayList<>();
        List<T> entries = new ArrayList<>();
        for (List<CsvReader.Field> record : records.subList(1, records.size())) {
            CsvRow row = new CsvRow(
                    file,
                    head,
                    record.stream()
                            .map(field -> new CsvReader.Field(CsvCell.read(field.text()), field.line(), field.column()))
                            .toList());
            try {
                if (record.size() != head.size()) {
                    throw new IllegalArgumentException(
                            record.size() + " fields, expected " + head.size() + " as in the head");
                }
                entries.add(reader.apply(row));
            } catch (CsvRow.Fault fault) {
                complaints.add(String.valueOf(fault.getMessage()));
            } catch (IllegalArgumentException fault) {
                complaints.add(row.place() + fault.getMessage());
            }
            if (complaints.size() >= MOST_COMPLAINTS) {
                break;
            }
        }
        if (!complaints.isEmpty()) {
            throw new BenchException(String.join("\n", complaints));
        }
        return entries;
    }

    private static List<List<CsvReader.Field>> records(String file, String text) {
        try {
            return CsvReader.read(file, text);
        } catch (CsvReader.Fault fault) {
            throw new BenchException(String.valueOf(fault.getMessage()));
        }
    }

    private static List<String> head(LogKind<?> kind) {
        return Stream.of(Stream.of("key", "at"), kind.columns().stream(), Stream.of("note"))
                .flatMap(names -> names)
                .toList();
    }

    private static Map<String, Integer> head(List<String> known, String file, List<CsvReader.Field> record) {
        Map<String, Integer> head = new LinkedHashMap<>();
        for (CsvReader.Field field : record) {
            String name = field.text().strip();
            String place = file + ":" + field.line() + ":" + field.column() + ": ";
            if (!known.contains(name)) {
                String hint = name.contains(";") && record.size() == 1
                        ? "; fields must be apart by commas"
                        : NearestWord.hint(name, known);
                throw new BenchException(
                        place + "read the column \"" + name + "\", expected one of " + String.join(", ", known) + hint);
            }
            if (head.put(name, head.size()) != null) {
                throw new BenchException(place + "read the column \"" + name + "\" twice, expected it once");
            }
        }
        return head;
    }

    private static String made(String words, Map<String, Integer> seen) {
        String sum = Sums.sha256(words.getBytes(StandardCharsets.UTF_8)).substring(0, 32);
        return "csv-" + sum + "-" + seen.merge(sum, 1, Integer::sum);
    }

    static String line(List<String> fields) {
        return fields.stream().map(CsvCell::written).collect(Collectors.joining(",")) + "\r\n";
    }
}
