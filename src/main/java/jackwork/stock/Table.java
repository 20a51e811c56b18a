package jackwork.stock;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One of our own CSV resources (RFC 4180). A fault in it is ours, not the maker's. */
record Table(String file, List<Row> rows) {

    static Table read(String file) {
        try (InputStream in = Table.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException(file + " is missing from the program's own resources");
            }
            return parse(file, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IllegalStateException(file + " cannot be read from the program's own resources", e);
        }
    }

    static Table parse(String file, String text) {
        List<List<CsvReader.Field>> records = CsvReader.read(file, text);
        if (records.isEmpty()) {
            throw new IllegalStateException(file + " has no head among the program's own resources");
        }
        List<String> head = records.get(0).stream().map(CsvReader.Field::text).toList();
        List<Row> rows = new ArrayList<>();
        for (List<CsvReader.Field> record : records.subList(1, records.size())) {
            int line = record.get(0).line();
            if (record.size() != head.size()) {
                throw new IllegalStateException(
                        file + ":" + line + ": " + record.size() + " fields where the head has " + head.size());
            }
            Map<String, String> values = new HashMap<>();
            for (int k = 0; k < head.size(); k++) {
                values.put(head.get(k), record.get(k).text());
            }
            rows.add(new Row(file, line, values));
        }
        return new Table(file, List.copyOf(rows));
    }

    record Row(String file, int line, Map<String, String> values) {

        String text(String column) {
            String value = values.get(column);
            if (value == null) {
                throw new IllegalStateException(file + ":" + line + ": no column " + column);
            }
            return value;
        }

        double number(String column) {
            try {
                return Double.parseDouble(text(column));
            } catch (NumberFormatException e) {
                throw new IllegalStateException(
                        file + ":" + line + ": column " + column + " reads \"" + text(column) + "\", expected a number",
                        e);
            }
        }

        boolean flag(String column) {
            return text(column).equals("yes");
        }

        /** A strength: of three columns, with the source that all strengths of the row have; published nowhere for just this. */
        Uncertain strength(String column) {
            return new Uncertain(
                    number(column),
                    number(column + "_low"),
                    number(column + "_high"),
                    "N/mm2",
                    Basis.GUESS,
                    text("strength_source"));
        }

        Uncertain uncertain(String value, String low, String high, String unit) {
            Basis basis = text("basis").equals("published") ? Basis.PUBLISHED : Basis.GUESS;
            return new Uncertain(number(value), number(low), number(high), unit, basis, text("source"));
        }
    }
}
