package jackwork.design;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The three texts of a design while one change after another is made in them; each by its short name: design, box, figure. */
final class DesignTexts {

    static final String DESIGN = "design";
    static final String BOX = "box";
    static final String FIGURE = "figure";

    private final Map<String, Path> paths = new LinkedHashMap<>();
    private final Map<String, String> texts = new LinkedHashMap<>();

    DesignTexts(DesignFiles files, Map<Path, String> texts) {
        paths.put(BOX, files.box());
        paths.put(FIGURE, files.figure());
        paths.put(DESIGN, files.design());
        paths.forEach((file, path) -> this.texts.put(file, Objects.requireNonNull(texts.get(path))));
    }

    /** Puts the texts as they are by now where they came from. */
    void into(Map<Path, String> all) {
        paths.forEach((file, path) -> all.put(path, text(file)));
    }

    String text(String file) {
        return Objects.requireNonNull(texts.get(file));
    }

    private String name(String file) {
        return Objects.requireNonNull(paths.get(file)).getFileName().toString();
    }

    boolean has(String file, List<String> path) {
        return YamlEdit.has(name(file), text(file), path);
    }

    /** How many items the list at a path has; 0 when there is no list. */
    int size(String file, List<String> path) {
        return YamlEdit.valueAt(name(file), text(file), path) instanceof List<?> list ? list.size() : 0;
    }

    void set(String file, List<String> path, String value) {
        texts.put(file, YamlEdit.set(name(file), text(file), path, value));
    }

    void remove(String file, List<String> path) {
        texts.put(file, YamlEdit.remove(name(file), text(file), path));
    }

    void renameKey(String file, List<String> path, String key) {
        texts.put(file, YamlEdit.renameKey(name(file), text(file), path, key));
    }

    /** What a file's text says, as plain values. */
    Map<?, ?> values(String file) {
        return YamlEdit.values(name(file), text(file)) instanceof Map<?, ?> map ? map : Map.of();
    }

    /** The keys of a design's change that begin with that path or are it. */
    List<String> changesBelow(String path) {
        List<String> below = new ArrayList<>();
        if (values(DESIGN).get("change") instanceof Map<?, ?> changes) {
            for (Object key : changes.keySet()) {
                String change = String.valueOf(key);
                if (change.equals(path) || change.startsWith(path + ".")) {
                    below.add(change);
                }
            }
        }
        return below;
    }

    /** A design's adjusters that change what is below that path: their numbers by their names. */
    Map<String, String> adjustersBelow(String path) {
        Map<String, String> below = new LinkedHashMap<>();
        if (values(DESIGN).get("adjusters") instanceof Map<?, ?> adjusters) {
            adjusters.forEach((name, entry) -> {
                if (entry instanceof Map<?, ?> said && said.get("number") instanceof String typed) {
                    // A word is told with its type before it.
                    String number = typed.substring(typed.indexOf(' ') + 1);
                    if (number.startsWith(path + ".")) {
                        below.put(String.valueOf(name), number);
                    }
                }
            });
        }
        return below;
    }

    /** Where the named thing of one file is named: in this file, in what stands on it, and in the design. */
    List<Named> mentions(String file, NameKind kind, String name) {
        List<Named> found = new ArrayList<>();
        for (String in : file.equals(BOX) ? List.of(BOX, FIGURE, DESIGN) : List.of(FIGURE, DESIGN)) {
            List<Mentions.Mention> all = in.equals(DESIGN)
                    ? Mentions.inDesign(values(DESIGN))
                    : Mentions.in(Vocabulary.file(in), values(in));
            all.stream()
                    .filter(mention -> mention.kind() == kind && mention.name().equals(name))
                    .forEach(mention -> found.add(new Named(in, mention)));
        }
        return found;
    }

    /** A mention, and the file whose text it is in. */
    record Named(String file, Mentions.Mention mention) {

        /** Of which file it says something: a design's change speaks of another. */
        String about() {
            return isChange() ? key().substring(0, key().indexOf('.')) : file;
        }

        /** Where it would stand in the file that it is about. */
        List<String> place() {
            if (!isChange()) {
                return mention.path();
            }
            List<String> place = new ArrayList<>(List.of(key().split("\\.")));
            place.remove(0);
            place.addAll(mention.path().subList(2, mention.path().size()));
            return place;
        }

        private boolean isChange() {
            return file.equals(DESIGN) && mention.path().get(0).equals("change");
        }

        private String key() {
            return mention.path().get(1);
        }
    }
}
