package jackwork;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Rows of a table of published values among the test resources; the source stands in each row. */
public final class Published {

    private Published() {}

    /** @param resource absolute name; fields of each line after the head, quotes removed */
    public static List<List<String>> rows(String resource) {
        try (InputStream in = Published.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is missing from the test resources");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().skip(1).map(Published::fields).toList();
        } catch (IOException e) {
            throw new IllegalStateException(resource, e);
        }
    }

    /** The number in {@code valueColumn} of the one row whose first columns are the given ones. */
    public static double value(String resource, int valueColumn, String... key) {
        List<List<String>> found = rows(resource).stream()
                .filter(row -> {
                    for (int i = 0; i < key.length; i++) {
                        if (!key[i].isEmpty() && !row.get(i).equals(key[i])) {
                            return false;
                        }
                    }
                    return true;
                })
                .toList();
        if (found.size() != 1) {
            throw new IllegalStateException(
                    resource + ": " + found.size() + " rows for " + String.join(" / ", key) + ", one expected");
        }
        return Double.parseDouble(found.get(0).get(valueColumn));
    }

    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
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
}
