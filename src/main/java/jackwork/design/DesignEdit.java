package jackwork.design;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Puts numbers into the text of a design's {@code change}, and touches nothing else: comments stay. */
public final class DesignEdit {

    private DesignEdit() {}

    /** @param numbers by their path, {@code box.lever.throw} */
    public static String with(String text, Map<String, Double> numbers) {
        String now = text;
        for (Map.Entry<String, Double> number : numbers.entrySet()) {
            now = with(now, number.getKey(), words(number.getValue()));
        }
        return now;
    }

    /** @param value as it is written: a number, {@code [3, 4]} */
    public static String with(String text, String path, String value) {
        return YamlEdit.set(DesignReader.FILE, text, List.of("change", path), value);
    }

    /** The same with words: {@code box.parts.hub-far.printed}. */
    public static String withWords(String text, Map<String, String> words) {
        String now = text;
        for (Map.Entry<String, String> word : words.entrySet()) {
            now = with(now, word.getKey(), word.getValue());
        }
        return now;
    }

    /** As it is written: no more places than can be cut. */
    public static String words(double value) {
        String words = String.format(Locale.ROOT, "%.3f", value);
        return words.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
