package jackwork.design;

import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What every word of every file is. It is read off the records that the files are bound to, where each word stands with its
 * meaning, unit, bounds and what it names, so that there is one table and no second list: reading, its errors, references,
 * removal, renaming, the schemas and the page's fields come from here.
 */
final class Vocabulary {

    /** The files that makers write, by name. */
    static final Map<String, Class<? extends Record>> FILES = Stream.of(FileKind.values())
            .collect(Collectors.toUnmodifiableMap(kind -> kind.name().toLowerCase(Locale.ROOT), FileKind::record));

    /** The record that a file is read into. */
    static Class<? extends Record> file(String name) {
        return Named.in(FILES, name);
    }

    private static final ClassValue<List<Word>> WORDS = new ClassValue<>() {
        @Override
        protected List<Word> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents()).map(Word::of).toList();
        }
    };

    private static final ClassValue<List<Word>> FLAT = new ClassValue<>() {
        @Override
        protected List<Word> computeValue(Class<?> type) {
            List<Word> flat = new ArrayList<>();
            for (Word word : of(type)) {
                if (!word.isInline()) {
                    flat.add(word);
                } else if (word.isMap()) {
                    JointKinds.all().forEach(kind -> flat.add(word.section(kind)));
                } else {
                    flat.addAll(flat(word.leaf()));
                }
            }
            return List.copyOf(flat);
        }
    };

    private Vocabulary() {}

    /** A record's own words, in order; those of a record that is inline stand behind that one word. */
    static List<Word> of(Class<?> record) {
        return WORDS.get(record);
    }

    /** Every word that may stand where this record is read. */
    static List<Word> flat(Class<?> record) {
        return FLAT.get(record);
    }

    /** The keys of those. */
    static List<String> keys(Class<?> record) {
        return flat(record).stream().map(Word::key).toList();
    }

    /** What became of keys that a record once had, by the key. */
    static Map<String, String> formerKeys(Class<?> record) {
        return former(record).stream().collect(Collectors.toMap(Former::key, Former::now));
    }

    /** The keys that a record once had. */
    static List<Former> former(Class<?> record) {
        return List.of(record.getAnnotationsByType(Former.class));
    }

    /** Whether a value is a record of words, and no single value that happens to be a record. */
    static boolean isBound(Class<?> type) {
        return type.isRecord() && type != Uncertain.class && !Place.class.isAssignableFrom(type);
    }
}
