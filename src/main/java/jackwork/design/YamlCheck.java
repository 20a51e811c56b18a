package jackwork.design;

import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** An edited {@code workshop.yaml} read again and held against what was meant. */
final class YamlCheck {

    private YamlCheck() {}

    /** All of it is as before but the value at one path, and that is the one given. */
    static void onlyChanged(String before, String after, String path, Uncertain value) {
        Map<String, String> old = leaves(before);
        Map<String, String> now = leaves(after);
        old.keySet().removeIf(key -> within(key, path));
        now.keySet().removeIf(key -> within(key, path));
        if (!old.equals(now)) {
            throw DesignException.of(
                    WorkshopReader.FILE,
                    path + " cannot be changed without changing other values; put this in yourself: "
                            + WorkshopEdit.words(value));
        }
        require(after, path + ".value", value);
    }

    /** As {@link #onlyChanged}, for a pair that had no entry. */
    static void onlyAdded(String before, String after, String a, String b, Uncertain value) {
        WorkshopFile old = WorkshopReader.parse(before);
        WorkshopFile now = WorkshopReader.parse(after);
        List<WorkshopFile.FrictionEntry> rest = new ArrayList<>(now.friction());
        rest.removeIf(entry -> entry.between().equals(List.of(a, b)));
        Map<String, String> others = leaves(before);
        Map<String, String> othersNow = leaves(after);
        others.keySet().removeIf(key -> within(key, "friction"));
        othersNow.keySet().removeIf(key -> within(key, "friction"));
        if (!rest.equals(old.friction()) || !others.equals(othersNow)) {
            throw DesignException.of(
                    WorkshopReader.FILE,
                    "friction cannot be added without changing other values; put this in yourself: "
                            + WorkshopEdit.words(value));
        }
    }

    private static void require(String after, String path, Uncertain value) {
        // Reading it whole says when the workshop cannot be used with it.
        WorkshopReader.parse(after);
        String read = leaves(after).get(path);
        if (!DesignEdit.words(value.value()).equals(read)) {
            throw DesignException.of(
                    WorkshopReader.FILE, path + " reads " + read + " after the change; nothing written");
        }
    }

    private static boolean within(String key, String path) {
        return key.equals(path) || key.startsWith(path + ".");
    }

    private static Map<String, String> leaves(String text) {
        return YamlLeaves.of(YamlFile.parse(WorkshopReader.FILE, text, new ArrayList<>()));
    }
}
