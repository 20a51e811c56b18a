package jackwork.design;

import java.util.List;
import java.util.Map;

/**
 * {@code design.yaml}: a box with a figure on it.
 *
 * @param box path of the box file, from this file's folder
 * @param figure path of the figure file, likewise
 * @param coins codes of the coins it must take
 * @param gestures what the figure must do
 * @param change numbers that differ from the box and figure files: {@code figure.weights.tail.count: 2}
 */
@About("A design: a box with a figure on it, the coins it takes and what the figure must do.")
public record DesignFile(
        int format,
        String name,
        String box,
        String figure,
        List<String> coins,
        Map<String, GestureEntry> gestures,
        Map<String, Object> change) {}
