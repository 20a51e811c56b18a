package jackwork.design;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

/** Whole entries of a box's or figure's file: parts, pins, strings, weights; listed, added, taken out. */
public final class EntryEdit {

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");
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
        Sections.of(works).forEach((section, named) -> {
            if (!KEPT.contains(section)) {
                named.forEach((name, entry) -> entries.add(
                        new Entry(file + "." + section + "." + name, section, name, about((Record) entry))));
            }
        });
    }

    /** The names it holds of what is in box and figure. */
    private static List<String> about(Record entry) {
        Set<String> about = new LinkedHashSet<>();
        Walk.over(entry, "", (path, own, word, value) -> {
            if (value instanceof String name
                    && word.names().flatMap(names -> names.value().section()).isPresent()) {
                about.add(name);
            }
        });
        return List.copyOf(about);
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
        requireName(path, name);
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
        DesignTexts all = new DesignTexts(files, texts);
        if (!all.has(words.get(0), words.subList(1, words.size()))) {
            throw DesignException.of(path, "there is no such entry to take out");
        }
        new Removal(all, outlines(design)).entry(words.get(0), words.get(1), words.get(2));
        requireLeft(all, DesignTexts.FIGURE, "mounts", "no mount would hold the figure", path, words.get(2));
        requireLeft(all, DesignTexts.BOX, "fixed", "nothing of the box would stay where it is", path, words.get(2));
        all.into(texts);
    }

    private static void requireLeft(
            DesignTexts texts, String file, String section, String otherwise, String path, String name) {
        Object left = texts.values(file).get(section);
        boolean any = left instanceof Map<?, ?> map ? !map.isEmpty() : left instanceof List<?> list && !list.isEmpty();
        if (!any) {
            throw DesignException.of(
                    path,
                    "without \"" + name + "\" " + otherwise + ": it is the last that " + section + " of " + file
                            + ".yaml rests on; name another part there first, then take this one out");
        }
    }

    /**
     * Gives an entry another name, wherever it is named.
     *
     * @param texts by file; changed
     * @throws DesignException when there is no such entry, or the name cannot be given
     */
    public static void rename(Design design, DesignFiles files, Map<Path, String> texts, String path, String other) {
        List<String> words = words(path);
        requireName(path, other);
        DesignTexts all = new DesignTexts(files, texts);
        new Renaming(design, all).entry(words.get(0), words.get(1), words.get(2), other);
        all.into(texts);
    }

    private static Map<String, Set<String>> outlines(Design design) {
        return Map.of(
                DesignTexts.BOX,
                design.boxDrawing().outlines().keySet(),
                DesignTexts.FIGURE,
                design.figureDrawing().outlines().keySet());
    }

    private static void requireName(String path, String name) {
        if (!NAME.matcher(name).matches() || name.equals(References.GROUND)) {
            throw DesignException.of(
                    path,
                    "\"" + name
                            + "\" cannot be a name; expected small letters, digits and hyphens, other than \"box\": tail-2");
        }
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
}
