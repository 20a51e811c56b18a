package jackwork.design;

import jackwork.stock.Uncertain;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The vocabulary as a page to read, docs/vocabulary.md. Run {@link #main} to renew it. */
final class VocabularyTable {

    static final Path PAGE = Path.of("docs", "vocabulary.md");

    private VocabularyTable() {}

    /** Writes the page anew. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(PAGE, text());
    }

    /** One word of one file: {@code figure.pins.NAME.shoulder}. */
    record Row(String path, Word word) {}

    /** Every word of every file, those of a record in the record's place. */
    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (String file : List.of("workshop", "box", "figure", "design")) {
            add(rows, file, Vocabulary.FILES.get(file), 0);
        }
        return rows;
    }

    private static void add(List<Row> rows, String path, Class<?> record, int depth) {
        if (depth > 8) {
            throw new IllegalStateException("a record that holds itself: " + path);
        }
        for (Word word : Vocabulary.flat(record)) {
            String at = path + "." + word.key() + inner(word.type());
            rows.add(new Row(at, word));
            if (Vocabulary.isBound(word.leaf())) {
                add(rows, at, word.leaf(), depth + 1);
            }
        }
    }

    /** {@code .NAME} for a map's own names, {@code .N} for a list's numbers. */
    private static String inner(Type type) {
        if (!(type instanceof ParameterizedType generic)) {
            return "";
        }
        Type[] arguments = generic.getActualTypeArguments();
        return (generic.getRawType() == List.class ? ".N" : ".NAME") + inner(arguments[arguments.length - 1]);
    }

    static String text() {
        StringBuilder out = new StringBuilder("""
                # The vocabulary

                Every word that the four files may hold, made from the records that read them (`VocabularyTable` among the
                tests). A number outside its bounds is refused with its place; one that is unusual is read, and a finding
                says so. NAME stands for a name that the maker chooses, N for a number in a list. What the figure has as the
                box has is not written twice. An interval's width, from end to end, is a share of its number, or of half of
                what is usual where that is more and 0 is usual. The numbers of `pay` and `times` have their bounds in `jackwork stock`.

                """);
        Map<String, List<Row>> sections = new LinkedHashMap<>();
        for (Row row : rows()) {
            boolean twice = row.path().startsWith("figure.")
                    && rows().stream()
                            .anyMatch(other ->
                                    other.path().equals("box." + row.path().substring(7)));
            if (!twice && !Vocabulary.isBound(row.word().leaf())) {
                sections.computeIfAbsent(row.path().substring(0, row.path().indexOf('.')), k -> new ArrayList<>())
                        .add(row);
            }
        }
        sections.forEach((file, rows) -> {
            out.append("## ").append(file).append(".yaml\n\n");
            out.append("| word | is | bounds | usual | what it is, and why these bounds |\n|---|---|---|---|---|\n");
            rows.forEach(row -> out.append(line(row)));
            out.append('\n');
        });
        return out.toString().stripTrailing() + "\n";
    }

    private static String line(Row row) {
        Word word = row.word();
        Range range = Range.of(word).orElse(null);
        String bounds = range == null ? "" : Range.plain(range.least()) + " to " + Range.plain(range.most());
        String usual = range == null || (range.usualFrom() == range.least() && range.usualTo() == range.most())
                ? ""
                : Range.plain(range.usualFrom()) + " to " + Range.plain(range.usualTo());
        String spread = word.leaf() == Uncertain.class
                ? word.quantity()
                        .map(quantity -> "; interval "
                                + Range.plain(Math.round(100 * quantity.usualSpread())) + " % wide, at most "
                                + Range.plain(Math.round(100 * quantity.mostSpread())) + " %")
                        .orElse("")
                : "";
        String why = range == null ? "" : (word.about().isEmpty() ? "" : " ") + "(" + range.why() + ")";
        return "| `" + row.path().substring(row.path().indexOf('.') + 1) + "` | " + is(word) + " | " + bounds + " | "
                + usual + spread + " | " + word.about() + why + " |\n";
    }

    private static String is(Word word) {
        if (word.names().isPresent()) {
            return (word.isMap() ? "by " : "") + word.names().get().value().words();
        }
        if (!word.choices().isEmpty()) {
            return String.join(", ", word.choices());
        }
        if (word.isNumber()) {
            return word.unit().equals("1") ? (word.isWhole() ? "a whole number" : "a number") : word.unit();
        }
        return word.leaf() == Place.class
                ? "a point"
                : word.leaf() == Boolean.class ? "true or false" : word.isText() ? "text" : "any value";
    }
}
