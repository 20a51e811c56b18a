package jackwork.design;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.List;
import java.util.Locale;

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
        List<String> words = words(path);
        String after = YamlEdit.has(WorkshopReader.FILE, text, words)
                ? WorkshopEdit.with(text, path, value)
                : put(text, words, WorkshopEdit.words(value));
        return read(after);
    }

    /**
     * Puts a value as it is written in the file: {@code A4}, {@code [400, 300]}, {@code {kind: birch-ply, …}}. Mappings
     * that it belongs into and that are not there are made.
     */
    public static String value(String text, String path, String yaml) {
        return read(put(text, words(path), yaml));
    }

    /** Text as a value. */
    public static String quoted(String words) {
        return "\"" + words.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
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
            value.insert(0, "{" + key(path.get(i)) + ": ").append("}");
        }
        return YamlEdit.set(WorkshopReader.FILE, text, path.subList(0, own), value.toString());
    }

    private static String key(String word) {
        return word.toLowerCase(Locale.ROOT).matches("[a-z][a-z0-9 -]*[a-z0-9]|[a-z]") ? word : quoted(word);
    }

    private static List<String> words(String path) {
        return List.of(path.split("\\.", -1));
    }

    private static String read(String after) {
        WorkshopReader.parse(after);
        return after;
    }
}
