package jackwork.design;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Walks what a file was read into, value by value, with what each word is. */
final class Walk {

    /** Told of each value; what is left out is null, empty lists and maps are not told. */
    interface Visitor {

        /**
         * @param path dotted, from where the walk began
         * @param entry name of the entry of a section that it stands in; empty outside
         */
        void value(String path, String entry, Word word, @Nullable Object value);

        /** @param name a key that the maker chose */
        default void key(String path, Word word, String name) {}
    }

    private final Visitor visitor;

    private Walk(Visitor visitor) {
        this.visitor = visitor;
    }

    /** @param path of the record itself; empty at a file's root */
    static void over(Record record, String path, Visitor visitor) {
        new Walk(visitor).record(record, path, "");
    }

    private void record(Record record, String path, String entry) {
        for (Word word : Vocabulary.of(record.getClass())) {
            Object value = word.in(record);
            if (!word.isInline()) {
                value(path.isEmpty() ? word.key() : path + "." + word.key(), entry, word, value);
            } else if (value instanceof Map<?, ?> sections) {
                sections.forEach((section, entries) ->
                        value(path.isEmpty() ? "" + section : path + "." + section, entry, word, entries));
            } else if (value instanceof Record inner) {
                record(inner, path, entry);
            }
        }
    }

    private void value(String path, String entry, Word word, @Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> {
                String name = String.valueOf(key);
                visitor.key(path + "." + name, word, name);
                value(path + "." + name, entry.isEmpty() ? name : entry, word, inner);
            });
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                value(path + "." + i, entry, word, list.get(i));
            }
        } else if (value instanceof Record inner && Vocabulary.isBound(inner.getClass())) {
            record(inner, path, entry);
        } else {
            visitor.value(path, entry, word, value);
        }
    }
}
