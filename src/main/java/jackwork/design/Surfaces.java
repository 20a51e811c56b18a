package jackwork.design;

import jackwork.stock.FrictionPair;
import jackwork.stock.Frictions;
import jackwork.stock.RodKind;
import jackwork.stock.Rods;
import jackwork.stock.SheetKind;
import jackwork.stock.Sheets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What rubs on what: the words by which friction pairs call the surfaces of stock, coins and cords. */
public final class Surfaces {

    private static final String COIN = "coin";
    private static final String CORD = "cord";
    private static final String PRINTED = "printed";
    /** Of nuts, washers and screws. */
    private static final String STEEL = "steel";

    private Surfaces() {}

    /** All that the catalogue knows. */
    static Set<String> known() {
        Set<String> known = new LinkedHashSet<>();
        Sheets.catalogue().all().forEach(kind -> known.add(kind.surface()));
        Rods.catalogue().all().forEach(kind -> known.add(kind.surface()));
        for (FrictionPair pair : Frictions.catalogue().all()) {
            known.add(pair.a());
            known.add(pair.b());
        }
        return known;
    }

    /** Those that something in this workshop has. */
    private static Set<String> of(WorkshopFile workshop) {
        Set<String> there = new LinkedHashSet<>(List.of(COIN, PRINTED, STEEL));
        workshop.sheets()
                .values()
                .forEach(sheet -> Sheets.catalogue()
                        .find(sheet.kind())
                        .map(SheetKind::surface)
                        .ifPresent(there::add));
        workshop.rods()
                .values()
                .forEach(rod ->
                        Rods.catalogue().find(rod.kind()).map(RodKind::surface).ifPresent(there::add));
        if (!workshop.cords().isEmpty()) {
            there.add(CORD);
        }
        return there;
    }

    /** Surfaces that the workshop gives a friction of and has nothing of, each with its path: nothing is ever worked out with it. */
    public static List<Unused> unused(WorkshopFile workshop) {
        Set<String> there = of(workshop);
        List<Unused> unused = new ArrayList<>();
        for (int i = 0; i < workshop.friction().size(); i++) {
            List<String> between = workshop.friction().get(i).between();
            for (int j = 0; j < between.size(); j++) {
                if (!there.contains(between.get(j))) {
                    unused.add(new Unused("friction." + i + ".between." + j, between.get(j), List.copyOf(there)));
                }
            }
        }
        return unused;
    }

    /**
     * A surface that nothing here has.
     *
     * @param there those that something has
     */
    public record Unused(String path, String surface, List<String> there) {}

    /** Each pair is of two surfaces that there are, and stands there once. */
    static void check(WorkshopFile workshop, YamlFile file) {
        List<WorkshopFile.FrictionEntry> friction = workshop.friction();
        List<Set<String>> seen = new ArrayList<>();
        for (int i = 0; i < friction.size(); i++) {
            String path = "friction." + i + ".between";
            List<String> between = friction.get(i).between();
            if (between.size() != 2) {
                file.problem(path, "expected two materials, as in [bamboo, wood]");
                seen.add(Set.of());
                continue;
            }
            for (int j = 0; j < 2; j++) {
                References.known(
                        path + "." + j, between.get(j), known(), "a surface that stock, coins or cords have", file);
            }
            // In either order it is the same pair.
            Set<String> pair = new LinkedHashSet<>(between);
            int first = seen.indexOf(pair);
            if (first >= 0) {
                file.problem(
                        path,
                        "read " + between.get(0) + " and " + between.get(1) + " a second time, in either order the same"
                                + " as friction." + first + "; keep one of the two");
            }
            seen.add(pair);
        }
    }
}
