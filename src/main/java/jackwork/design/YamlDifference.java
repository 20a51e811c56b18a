package jackwork.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What differs between two texts of one YAML file; comments and order do not count. */
public final class YamlDifference {

    /**
     * @param path of the value, dotted
     * @param before null when it is new
     * @param after null when it is gone
     */
    public record Change(
            String path, @Nullable String before, @Nullable String after) {}

    private YamlDifference() {}

    /** @throws DesignException when either is not YAML */
    public static List<Change> between(String name, String before, String after) {
        Map<String, String> old = YamlLeaves.of(YamlFile.parse(name, before, new ArrayList<>()));
        Map<String, String> now = YamlLeaves.of(YamlFile.parse(name, after, new ArrayList<>()));
        List<Change> changes = new ArrayList<>();
        old.forEach((path, value) -> {
            if (!value.equals(now.get(path))) {
                changes.add(new Change(path, value, now.get(path)));
            }
        });
        now.forEach((path, value) -> {
            if (!old.containsKey(path)) {
                changes.add(new Change(path, null, value));
            }
        });
        return List.copyOf(changes);
    }
}
