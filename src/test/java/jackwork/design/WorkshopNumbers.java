package jackwork.design;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** What the numbers that a workshop's file says may be, for tests of the page. */
public final class WorkshopNumbers {

    /**
     * Of one number.
     *
     * @param least lower is refused, in the number's unit
     * @param most higher is refused
     * @param whole whether only whole numbers go
     */
    public record Bounds(double least, double most, boolean whole) {}

    private WorkshopNumbers() {}

    /** By path, as the page names it. */
    public static Map<String, Bounds> of(Path folder) {
        String text = WorkshopReader.text(folder);
        WorkshopFile workshop = WorkshopReader.parse(text);
        Map<String, Bounds> bounds = new TreeMap<>();
        Walk.over(
                workshop,
                "",
                (path, entry, word, value) -> Range.of(word)
                        .filter(range -> !word.isList() && WorkshopSplice.says(text, path))
                        .ifPresent(range -> bounds.put(
                                asOnThePage(workshop, path), new Bounds(range.least(), range.most(), word.isWhole()))));
        return bounds;
    }

    /** Friction goes by its two materials there. */
    private static String asOnThePage(WorkshopFile workshop, String path) {
        if (!path.startsWith("friction.")) {
            return path;
        }
        int index = Integer.parseInt(path.split("\\.", -1)[1]);
        return "friction." + String.join(",", workshop.friction().get(index).between());
    }
}
