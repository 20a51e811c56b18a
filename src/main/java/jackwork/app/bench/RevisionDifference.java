package jackwork.app.bench;

import jackwork.design.DesignException;
import jackwork.design.YamlDifference;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;

/**
 * A file that differs between two states of a design.
 *
 * @param how {@code new}, {@code gone}, {@code changed}, or {@code worded otherwise}: only comments or order
 * @param values that differ, for YAML
 */
public record RevisionDifference(String file, String how, List<YamlDifference.Change> values) {

    static List<RevisionDifference> between(SortedMap<String, byte[]> before, SortedMap<String, byte[]> after) {
        TreeSet<String> names = new TreeSet<>(before.keySet());
        names.addAll(after.keySet());
        List<RevisionDifference> differences = new ArrayList<>();
        for (String name : names) {
            byte[] old = before.get(name);
            byte[] now = after.get(name);
            if (old == null) {
                differences.add(new RevisionDifference(name, "new", List.of()));
            } else if (now == null) {
                differences.add(new RevisionDifference(name, "gone", List.of()));
            } else if (!Arrays.equals(old, now)) {
                differences.add(changed(name, old, now));
            }
        }
        return List.copyOf(differences);
    }

    private static RevisionDifference changed(String name, byte[] old, byte[] now) {
        if (!name.endsWith(".yaml")) {
            return new RevisionDifference(name, "changed", List.of());
        }
        try {
            List<YamlDifference.Change> values = YamlDifference.between(
                    name, new String(old, StandardCharsets.UTF_8), new String(now, StandardCharsets.UTF_8));
            return new RevisionDifference(name, values.isEmpty() ? "worded otherwise" : "changed", values);
        } catch (DesignException e) {
            return new RevisionDifference(name, "changed", List.of());
        }
    }

    /** One line for the file, one for each value. */
    public List<String> words() {
        List<String> words = new ArrayList<>();
        words.add(file + ": " + how);
        for (YamlDifference.Change value : values) {
            words.add("    " + value.path() + ": " + (value.before() == null ? "nothing" : value.before()) + " -> "
                    + (value.after() == null ? "nothing" : value.after()));
        }
        return words;
    }
}
