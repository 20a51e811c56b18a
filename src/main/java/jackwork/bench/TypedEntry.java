package jackwork.bench;

import jackwork.design.NearestWord;
import jackwork.stock.CsvReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An entry typed field by field: read as a row of a CSV file is, so that both mean the same. */
public final class TypedEntry {

    private TypedEntry() {}

    /**
     * @param fields by the names of the kind's CSV columns; what is empty may be left out
     * @throws IllegalArgumentException when they are no such entry
     */
    public static <T extends Stamped> BenchLog.Entry<T> of(LogKind<T> kind, Stamp stamp, Map<String, String> fields) {
        Map<String, Integer> head = new LinkedHashMap<>();
        List<CsvReader.Field> row = new ArrayList<>();
        fields.forEach((name, text) -> {
            if (!kind.columns().contains(name)) {
                throw new IllegalArgumentException("read the field \"" + name + "\", expected one of "
                        + String.join(", ", kind.columns()) + NearestWord.hint(name, kind.columns()));
            }
            head.put(name, row.size());
            row.add(new CsvReader.Field(text.strip(), 1, 1));
        });
        return new BenchLog.Entry<>(kind, kind.entry(stamp, new CsvRow("", head, row)));
    }
}
