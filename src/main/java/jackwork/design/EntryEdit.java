package jackwork.design;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

/** Whole entries of a box's or figure's file: parts, pins, strings, weights; listed, added, taken out. */
public final class EntryEdit {

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");
    /** Words that name no part and no joint. */
    private static final Set<String> OTHER_WORDS =
            Set.of("stock", "rod", "cord", "what", "paint", "file", "law", "turns", "printed", "drawn", "outline");
    /** Sections without which there is no figure on a box. */
    private static final Set<String> KEPT = Set.of("mounts");

    private EntryEdit() {}

    /**
     * @param path {@code figure.pins.hip}
     * @param about the names it holds: parts it joins
     */
    public record Entry(String path, String section, String name, List<String> about) {}

    /** All entries of the box and the figure, in the files' order. */
    public static List<Entry> entries(Design design) {
        List<Entry> entries = new ArrayList<>();
        addAll(entries, "box", design.box());
        addAll(entries, "figure", design.figure());
        return entries;
    }

    private static void addAll(List<Entry> entries, String file, Record works) {
        for (RecordComponent component : works.getClass().getRecordComponents()) {
            String section = Binder.key(component);
            if (value(works, component) instanceof Map<?, ?> map && !KEPT.contains(section)) {
                map.forEach((name, entry) -> {
                    Set<String> words = new LinkedHashSet<>();
                    collect(entry, words);
                    entries.add(new Entry(
                            file + "." + section + "." + name, section, String.valueOf(name), List.copyOf(words)));
                });
            }
        }
    }

    private static void collect(Object value, Set<String> words) {
        if (value instanceof String word) {
            words.add(word);
        } else if (value instanceof Collection<?> list) {
            list.forEach(item -> collect(item, words));
        } else if (value instanceof Record record && !(value instanceof Place)) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                Object inner = OTHER_WORDS.contains(Binder.key(component)) ? null : value(record, component);
                if (inner != null) {
                    collect(inner, words);
                }
            }
        }
    }

    /**
     * Adds an entry to the box's or the figure's text.
     *
     * @param texts by file; changed
     * @param path {@code figure.weights.nose}
     * @throws DesignException when there is one of that name, or the name is none
     */
    public static void add(DesignFiles files, Map<Path, String> texts, String path, String value) {
        List<String> words = words(path);
        String name = words.get(words.size() - 1);
        if (!NAME.matcher(name).matches()) {
            throw DesignException.of(
                    path, "\"" + name + "\" is no name; expected small letters, digits and hyphens: tail-2");
        }
        Path file = file(files, words);
        String text = Objects.requireNonNull(texts.get(file));
        if (has(text, words.subList(1, words.size()))) {
            throw DesignException.of(path, "there is one already; choose another name");
        }
        texts.put(file, YamlEdit.set(shortName(file), text, words.subList(1, words.size()), value));
    }

    /**
     * Takes an entry out of its file, with what cannot be without it: a part's pins, a pin's stops, what a design
     * changes of them.
     *
     * @param texts by file; changed
     */
    public static void remove(Design design, DesignFiles files, Map<Path, String> texts, String path) {
        List<String> words = words(path);
        Path file = file(files, words);
        String text = Objects.requireNonNull(texts.get(file));
        Removal removal = new Removal(shortName(file), text);
        removal.entry(words.get(1), words.get(2));
        texts.put(file, removal.text());
        String ofDesign = Objects.requireNonNull(texts.get(files.design()));
        for (String gone : removal.gone()) {
            String prefix = words.get(0) + "." + gone;
            for (String change : design.file().change().keySet()) {
                if (change.equals(prefix) || change.startsWith(prefix + ".")) {
                    ofDesign = without(ofDesign, List.of("change", change));
                }
            }
            if (gone.startsWith("parts.")) {
                for (Map.Entry<String, GestureEntry> gesture :
                        design.file().gestures().entrySet()) {
                    if (gesture.getValue().part().equals(gone.substring("parts.".length()))) {
                        ofDesign = without(ofDesign, List.of("gestures", gesture.getKey()));
                    }
                }
            }
        }
        texts.put(files.design(), ofDesign);
    }

    private static String without(String text, List<String> path) {
        return has(text, path) ? YamlEdit.remove(DesignReader.FILE, text, path) : text;
    }

    static boolean has(String text, List<String> path) {
        return YamlEdit.has("", text, path);
    }

    private static List<String> words(String path) {
        List<String> words = List.of(path.split("\\.", -1));
        if (words.size() != 3 || !(words.get(0).equals("box") || words.get(0).equals("figure"))) {
            throw DesignException.of(path, "expected a section and a name of box or figure: figure.weights.tail");
        }
        return words;
    }

    private static Path file(DesignFiles files, List<String> words) {
        return words.get(0).equals("box") ? files.box() : files.figure();
    }

    private static String shortName(Path file) {
        return file.getFileName().toString();
    }

    private static @org.jspecify.annotations.Nullable Object value(Record record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(Objects.toString(component), e);
        }
    }
}
