package jackwork.design;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Takes an entry out of one file, and then whatever names it: a pin that joins nothing any more, a stop about that pin. */
final class Removal {

    private static final String PARTS = "parts";
    private static final String PINS = "pins";
    /** Lists of parts of which one may go while the others stay. */
    private static final Set<String> THINNED = Set.of(PINS, "mounts");

    private final String name;
    private String text;
    private final Set<String> gone = new LinkedHashSet<>();

    Removal(String name, String text) {
        this.name = name;
        this.text = text;
    }

    String text() {
        return text;
    }

    /** What went, as {@code section.name}. */
    Set<String> gone() {
        return gone;
    }

    void entry(String section, String entry) {
        if (YamlEdit.has(name, text, List.of(section, entry))) {
            text = YamlEdit.remove(name, text, List.of(section, entry));
        }
        gone.add(section + "." + entry);
        if (section.equals(PARTS)) {
            List.of("fixed", "glued").forEach(list -> thin(List.of(list), entry));
            entriesThatName(entry);
        } else if (section.equals(PINS)) {
            entriesThatName(entry);
        }
    }

    /** Everything of the file that names what went, one after another: places shift with each. */
    private void entriesThatName(String word) {
        Map<?, ?> file = (Map<?, ?>) YamlEdit.values(name, text);
        for (Object section : List.copyOf(file.keySet())) {
            if (file.get(section) instanceof Map<?, ?> entries && !section.equals(PARTS)) {
                for (Object entry : List.copyOf(entries.keySet())) {
                    if (entry.equals(word) && section.equals("pictures")) {
                        entry(section.toString(), word);
                    } else if (names(entries.get(entry), word)) {
                        thinOrTake(section.toString(), entry.toString(), word);
                    }
                }
            }
        }
    }

    private void thinOrTake(String section, String entry, String word) {
        List<String> list = List.of(section, entry, PARTS);
        int least = section.equals(PINS) ? 3 : 2;
        boolean thins = THINNED.contains(section)
                && YamlEdit.valueAt(name, text, list) instanceof List<?> parts
                && parts.size() >= least
                && !names(YamlEdit.valueAt(name, text, List.of(section, entry, "tight")), word);
        if (thins) {
            thin(list, word);
        } else {
            entry(section, entry);
        }
    }

    /** Takes a word out of a list, or out of the lists in it; a list of fewer than two glued parts goes too. */
    private void thin(List<String> path, String word) {
        if (!(YamlEdit.valueAt(name, text, path) instanceof List<?> list)) {
            return;
        }
        for (int i = list.size() - 1; i >= 0; i--) {
            List<String> item = new ArrayList<>(path);
            item.add(String.valueOf(i));
            if (list.get(i) instanceof List<?> inner && names(inner, word)) {
                if (inner.size() <= 2) {
                    text = YamlEdit.remove(name, text, item);
                } else {
                    thin(item, word);
                }
            } else if (names(list.get(i), word) && !(list.get(i) instanceof Collection<?>)) {
                text = YamlEdit.remove(name, text, item);
            }
        }
    }

    /** Whether a value is that word or holds it. */
    private static boolean names(@org.jspecify.annotations.Nullable Object value, String word) {
        if (value instanceof Map<?, ?> map) {
            return map.values().stream().anyMatch(inner -> names(inner, word));
        }
        if (value instanceof Collection<?> list) {
            return list.stream().anyMatch(inner -> names(inner, word));
        }
        return value != null && value.toString().endsWith(" " + word);
    }
}
