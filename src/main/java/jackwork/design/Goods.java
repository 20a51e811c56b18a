package jackwork.design;

import jackwork.stock.Fasteners;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What is bought, by the names that bills and shopping lists have: what a shelf can hold. A price may be written for what is
 * bought another time as well.
 */
public final class Goods {

    public static final String FILAMENT = "filament";
    public static final String GLUE = "wood glue";
    public static final String PAPER = "paper";
    public static final String PAINT = "paint";
    public static final String CLOTH = "cloth";
    public static final String CARTON = "carton";

    /** Those that are named by their size: as {@link #screw} and {@link #weight} write them. */
    private static final Pattern SIZED = Pattern.compile("screw-m3x\\d{1,4}|weight of \\d{1,6}\\.\\d g");

    private Goods() {}

    /** @param length mm, whole */
    public static String screw(double length) {
        return String.format(Locale.ROOT, "screw-m3x%.0f", length);
    }

    /**
     * A weight that is no fastener.
     *
     * @param mass g
     */
    public static String weight(double mass) {
        return String.format(Locale.ROOT, "weight of %.1f g", mass);
    }

    private static List<String> names(WorkshopFile workshop) {
        List<String> names = new ArrayList<>(workshop.sheets().keySet());
        names.addAll(workshop.rods().keySet());
        names.addAll(workshop.cords().keySet());
        names.addAll(Fasteners.catalogue().names());
        names.addAll(List.of(FILAMENT, GLUE, PAPER, PAINT, CLOTH, CARTON));
        return names;
    }

    /** What is on the shelf must be something that a shopping list can name: nobody would look for it else. */
    static void check(WorkshopFile workshop, YamlFile file) {
        List<String> names = names(workshop);
        workshop.have().keySet().forEach(name -> known("have." + name, name, names, file));
    }

    private static void known(String path, String name, List<String> known, YamlFile file) {
        if (!known.contains(name) && !SIZED.matcher(name).matches()) {
            file.problem(
                    path,
                    "read \"" + name + "\", expected something that is bought, by its name on the shopping list, as "
                            + screw(12) + " or " + weight(28)
                            + NearestWord.hint(name, known));
        }
    }
}
