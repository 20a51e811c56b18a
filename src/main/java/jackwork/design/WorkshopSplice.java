package jackwork.design;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Any value of a {@code workshop.yaml} written, added or taken out; comments and order stay byte for byte. What comes out
 * is read again as a workshop.
 */
public final class WorkshopSplice {

    private WorkshopSplice() {}

    /**
     * A number as it was typed.
     *
     * @param unit of bare numbers
     * @throws DesignException when one of the three is no number of that unit, or they are not in order
     */
    public static Uncertain typed(String unit, String value, String low, String high, Basis basis, String source) {
        double[] read = {number(unit, "value", value), number(unit, "low", low), number(unit, "high", high)};
        if (read[1] > read[0] || read[0] > read[2]) {
            throw DesignException.of(
                    WorkshopReader.FILE,
                    "value " + value + " must lie between low " + low + " and high " + high
                            + "; write the interval that holds it 95 times in 100");
        }
        return new Uncertain(read[0], read[1], read[2], unit, basis, source.strip());
    }

    /** A bare number as it was typed. */
    public static double number(String unit, String name, String text) {
        return Numbers.read(text, unit)
                .orElseThrow(() -> DesignException.of(
                        WorkshopReader.FILE, name + ": read \"" + text + "\", expected " + Numbers.expected(unit)));
    }

    /** Puts a number, with its interval and basis, where there may be one already. */
    public static String number(String text, String path, Uncertain value) {
        return says(text, path) ? measured(text, path, value) : value(text, path, written(value));
    }

    /**
     * Puts a number in place of one that the file has; where its interval stands line by line, what is missing of it is
     * added behind the others.
     *
     * @param path {@code laser.kerf}
     * @throws DesignException when it has none there, or it cannot be changed without changing others
     */
    public static String measured(String text, String path, Uncertain value) {
        List<String> words = words(path);
        Object there = YamlEdit.valueAt(WorkshopReader.FILE, text, words);
        if (there == null) {
            throw DesignException.of(WorkshopReader.FILE, "has no " + path + " to put a measured value in");
        }
        if (there instanceof List<?>) {
            throw DesignException.of(WorkshopReader.FILE, path + " is no number");
        }
        if (!(there instanceof Map<?, ?>)) {
            return read(YamlEdit.set(WorkshopReader.FILE, text, words, written(value)));
        }
        String after = text;
        for (Map.Entry<String, String> field : fields(value).entrySet()) {
            List<String> place = new ArrayList<>(words);
            place.add(field.getKey());
            after = YamlEdit.set(WorkshopReader.FILE, after, place, field.getValue());
        }
        return read(after);
    }

    /** Friction of two surfaces: in place of what the file has for them, in either order, else behind the others. */
    public static String friction(String text, String a, String b, Uncertain value) {
        List<WorkshopFile.FrictionEntry> known = WorkshopReader.parse(text).friction();
        for (int i = 0; i < known.size(); i++) {
            List<String> between = known.get(i).between();
            if (between.equals(List.of(a, b)) || between.equals(List.of(b, a))) {
                return measured(text, "friction." + i + ".coefficient", value);
            }
        }
        String entry = "{between: [" + YamlWords.quoted(a) + ", " + YamlWords.quoted(b) + "], coefficient: "
                + written(value) + "}";
        List<String> list = List.of("friction");
        boolean isList = YamlEdit.valueAt(WorkshopReader.FILE, text, list) instanceof List<?>;
        return read(
                isList
                        ? YamlEdit.set(
                                WorkshopReader.FILE, text, List.of("friction", String.valueOf(known.size())), entry)
                        : YamlEdit.set(WorkshopReader.FILE, text, list, "[" + entry + "]"));
    }

    private static Map<String, String> fields(Uncertain value) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("value", DesignEdit.words(value.value()));
        fields.put("low", DesignEdit.words(value.low()));
        fields.put("high", DesignEdit.words(value.high()));
        fields.put("basis", value.basis().name().toLowerCase(Locale.ROOT));
        fields.put("source", YamlWords.quoted(value.source()));
        return fields;
    }

    private static String written(Uncertain value) {
        return fields(value).entrySet().stream()
                .map(field -> field.getKey() + ": " + field.getValue())
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /**
     * Puts a value as it is written in the file: {@code A4}, {@code [400, 300]}, {@code {kind: birch-ply, …}}. Mappings
     * that it belongs into and that are not there are made.
     */
    public static String value(String text, String path, String yaml) {
        return read(put(text, words(path), yaml));
    }

    public static String remove(String text, String path) {
        return read(YamlEdit.remove(WorkshopReader.FILE, text, words(path)));
    }

    /** Whether the file says anything there. */
    public static boolean says(String text, String path) {
        return YamlEdit.has(WorkshopReader.FILE, text, words(path));
    }

    private static String put(String text, List<String> path, String yaml) {
        int there = path.size() - 1;
        while (there > 0 && !YamlEdit.has(WorkshopReader.FILE, text, path.subList(0, there))) {
            there--;
        }
        // A first mapping that is not there yet is made by the splicing itself.
        int own = Math.max(Math.min(2, path.size()), there + 1);
        StringBuilder value = new StringBuilder(yaml);
        for (int i = path.size() - 1; i >= own; i--) {
            value.insert(0, "{" + YamlWords.quoted(path.get(i)) + ": ").append("}");
        }
        return YamlEdit.set(WorkshopReader.FILE, text, path.subList(0, own), value.toString());
    }

    private static List<String> words(String path) {
        return List.of(path.split("\\.", -1));
    }

    private static String read(String after) {
        WorkshopReader.parse(after);
        return after;
    }
}
