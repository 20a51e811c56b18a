package jackwork.design;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Every place of a text where something is named, and what kind of thing: told by the vocabulary, not by how it is spelt. A
 * text is looked at as it is written, so that what a design's {@code change} hides is seen as well.
 */
final class Mentions {

    /**
     * @param path from the text's root
     * @param names what is named there
     * @param isKey whether the path's last word itself is the name
     */
    record Mention(List<String> path, Names names, String name, boolean isKey) {

        NameKind kind() {
            return names.value();
        }
    }

    private final List<Mention> found = new ArrayList<>();

    private Mentions() {}

    /** @param values of a box's or figure's text, as {@link YamlEdit#values} has them */
    static List<Mention> in(Class<? extends Record> file, Object values) {
        Mentions mentions = new Mentions();
        mentions.record(file, values, List.of());
        return mentions.found;
    }

    /** Those of a design's text, with what its {@code change} says of box and figure. */
    static List<Mention> inDesign(Object values) {
        Mentions mentions = new Mentions();
        mentions.record(DesignFile.class, values, List.of());
        if (values instanceof Map<?, ?> map && map.get("change") instanceof Map<?, ?> changes) {
            changes.forEach((key, value) -> mentions.change(String.valueOf(key), value));
        }
        return mentions.found;
    }

    private void change(String key, @Nullable Object value) {
        String file = key.substring(0, Math.max(0, key.indexOf('.')));
        Class<? extends Record> type = Vocabulary.FILES.get(file);
        if (type != null && value != null) {
            Typed typed = Typed.at(type, key.substring(file.length() + 1));
            if (typed != null) {
                value(typed.type(), typed.word(), value, List.of("change", key));
            }
        }
    }

    private void record(Class<?> type, @Nullable Object values, List<String> path) {
        if (!(values instanceof Map<?, ?> map)) {
            return;
        }
        Map<String, Word> words = new HashMap<>();
        Vocabulary.flat(type).forEach(word -> words.put(word.key(), word));
        map.forEach((key, value) -> {
            Word word = words.get(String.valueOf(key));
            if (word != null && value != null) {
                value(word.type(), word, value, with(path, String.valueOf(key)));
            }
        });
    }

    private void value(Type type, Word word, Object value, List<String> path) {
        if (type instanceof ParameterizedType generic) {
            Type[] arguments = generic.getActualTypeArguments();
            Type inner = arguments[arguments.length - 1];
            if (value instanceof Map<?, ?> map) {
                map.forEach((key, item) -> {
                    List<String> at = with(path, String.valueOf(key));
                    word.names().ifPresent(names -> found.add(new Mention(at, names, String.valueOf(key), true)));
                    value(inner, word, item, at);
                });
            } else if (value instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    value(inner, word, list.get(i), with(path, String.valueOf(i)));
                }
            }
        } else if (type instanceof Class<?> plain && Vocabulary.isBound(plain)) {
            record(plain, value, path);
        } else if (type == String.class && !word.isMap()) {
            plain(value)
                    .ifPresent(
                            name -> word.names().ifPresent(names -> found.add(new Mention(path, names, name, false))));
        }
    }

    /** A single value without its kind. */
    static Optional<String> plain(Object value) {
        return value instanceof String text ? Optional.of(text.substring(text.indexOf(' ') + 1)) : Optional.empty();
    }

    static List<String> with(List<String> path, String word) {
        List<String> longer = new ArrayList<>(path);
        longer.add(word);
        return List.copyOf(longer);
    }

    /** A place of a file, by what may stand there. */
    record Typed(Type type, Word word) {

        /** @return null when no file has such a place */
        static @Nullable Typed at(Class<?> record, String path) {
            Class<?> in = record;
            Type type = record;
            Word word = null;
            for (String step : path.split("\\.", -1)) {
                if (type instanceof ParameterizedType generic) {
                    Type[] arguments = generic.getActualTypeArguments();
                    type = arguments[arguments.length - 1];
                } else if (in == Object.class) {
                    return null;
                } else {
                    word = Vocabulary.flat(in).stream()
                            .filter(one -> one.key().equals(step))
                            .findFirst()
                            .orElse(null);
                    if (word == null) {
                        return null;
                    }
                    type = word.type();
                }
                if (type instanceof Class<?> plain) {
                    if (!Vocabulary.isBound(plain)) {
                        in = Object.class;
                        continue;
                    }
                    in = plain;
                }
            }
            return word == null ? null : new Typed(type, word);
        }
    }
}
