package jackwork.design;

import java.util.LinkedHashMap;
import java.util.Map;

/** The sections of a file that list entries by name, in the file's order of words. */
final class Sections {

    private Sections() {}

    /** @return entries by section and name */
    static Map<String, Map<String, Object>> of(Record file) {
        Map<String, Map<String, Object>> sections = new LinkedHashMap<>();
        add(file, sections);
        return sections;
    }

    private static void add(Record record, Map<String, Map<String, Object>> sections) {
        for (Word word : Vocabulary.of(record.getClass())) {
            Object value = word.in(record);
            if (word.isInline() && value instanceof Record inner) {
                add(inner, sections);
            } else if (word.isInline() && value instanceof Map<?, ?> joints) {
                joints.forEach((section, entries) -> sections.put(String.valueOf(section), named((Map<?, ?>) entries)));
            } else if (word.isMap() && word.leaf().isRecord()) {
                sections.put(word.key(), named((Map<?, ?>) java.util.Objects.requireNonNull(value)));
            }
        }
    }

    private static Map<String, Object> named(Map<?, ?> entries) {
        Map<String, Object> named = new LinkedHashMap<>();
        entries.forEach((name, entry) -> named.put(String.valueOf(name), entry));
        return named;
    }
}
