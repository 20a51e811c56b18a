package jackwork.stock;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One of our own CSV resources (RFC 4180, one record a line). A fault in it is ours, not the maker's. */
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
        List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
        List<String> head = fields(lines.get(0));
        List<Row> rows = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            List<String> fields = fields(lines.get(i));
            if (fields.size() != head.size()) {
                throw new IllegalStateException(
                        file + ":" + (i + 1) + ": " + fields.size() + " fields where the head has " + head.size());
            }
            Map<String, String> values = new HashMap<>();
            for (int k = 0; k < head.size(); k++) {
                values.put(head.get(k), fields.get(k));
            }
            rows.add(new Row(file, i + 1, values));
        }
        return new Table(file, List.copyOf(rows));
    }

    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                if (quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                    field.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        fields.add(field.toString());
        return fields;
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

        Uncertain uncertain(String value, String low, String high, String unit) {
            Basis basis = text("basis").equals("published") ? Basis.PUBLISHED : Basis.GUESS;
            return new Uncertain(number(value), number(low), number(high), unit, basis, text("source"));
        }
    }
}
