package jackwork.make;

import jackwork.design.CsvCell;
import jackwork.design.Design;
import jackwork.design.Goods;
import jackwork.design.WeightEntry;
import jackwork.design.Works;
import jackwork.parts.Assembly;
import jackwork.parts.Link;
import jackwork.parts.StringRun;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a batch needs: the bill of materials, and the shopping list less what is on the shelf. */
public final class Needs {

    /** Glue for one joint of two layers, g: a guess. */
    private static final double GLUE = 0.4;

    /**
     * @param item the name by which the workshop keeps it
     * @param amount for the whole batch
     * @param what it is for
     */
    public record Need(String item, double amount, String unit, String what) {}

    /**
     * A need less what is on the shelf.
     *
     * @param toBuy 0 where the shelf has enough
     */
    public record Shopping(Need need, double toBuy) {}

    private Needs() {}

    static List<Need> of(
            Design design,
            Assembly assembly,
            @Nullable Case housing,
            List<SheetLayout> layouts,
            List<PrintedPiece> printed,
            int quantity) {
        List<Need> needs = new ArrayList<>();
        Map<String, Integer> sheets = new LinkedHashMap<>();
        layouts.forEach(layout -> sheets.merge(layout.stock(), 1, Integer::sum));
        sheets.forEach((stock, count) -> needs.add(new Need(stock, count, "sheets", "as laid out, cut plan beside")));
        Map<String, Double> rods = new LinkedHashMap<>();
        Dowels.of(design, assembly).forEach(dowel -> rods.merge(dowel.rod(), quantity * dowel.length(), Double::sum));
        rods.forEach((rod, length) -> needs.add(new Need(rod, length, "mm", "pivots and dowels, sawing not counted")));
        Map<String, Double> cords = new LinkedHashMap<>();
        for (Link link : assembly.links()) {
            if (link instanceof StringRun string) {
                cords.merge(string.cord(), quantity * GlueUp.cut(string), Double::sum);
            }
        }
        cords.forEach((cord, length) -> needs.add(new Need(cord, length, "mm", "strings with their knots")));
        weights(design, quantity, needs);
        if (housing != null) {
            screws(housing, quantity, needs);
        }
        double filament = printed.stream()
                        .mapToDouble(piece -> piece.each() * piece.mesh().volume())
                        .sum()
                * design.workshop().printerOrGuess().density().value()
                / 1000;
        if (filament > 0) {
            needs.add(new Need(Goods.FILAMENT, quantity * filament, "g", "printed parts, supports not counted"));
        }
        needs.add(new Need(
                Goods.GLUE,
                quantity * GLUE * assembly.parts().size(),
                "g",
                "0.4 g a part, common practice, no source"));
        return needs;
    }

    private static void weights(Design design, int quantity, List<Need> needs) {
        Map<String, Double> counts = new LinkedHashMap<>();
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            for (Map.Entry<String, WeightEntry> entry : works.weights().entrySet()) {
                WeightEntry weight = entry.getValue();
                Double mass = weight.mass();
                String what = weight.what();
                Integer count = weight.count();
                if (what != null) {
                    counts.merge(what, (double) quantity * (count == null ? 1 : count), Double::sum);
                } else if (mass != null) {
                    String each = Goods.weight(mass);
                    counts.merge(each, (double) quantity * (count == null ? 1 : count), Double::sum);
                }
            }
        }
        counts.forEach((what, count) -> needs.add(new Need(what, count, "pieces", "weights in the works or figure")));
    }

    private static void screws(Case housing, int quantity, List<Need> needs) {
        int works = housing.spacers().size();
        double longer = Math.ceil(housing.screwLength());
        if (works > 0) {
            needs.add(new Need(
                    Goods.screw(longer),
                    (double) quantity * works,
                    "pieces",
                    "works to the case; the next longer will do"));
            needs.add(new Need("washer-m3", (double) quantity * works, "pieces", "behind the works"));
        }
        needs.add(new Need(
                Goods.screw(12),
                (double) quantity * (housing.caughtNuts() + housing.looseScrews()),
                "pieces",
                "the case"));
        needs.add(new Need(
                "nut-m3",
                (double) quantity * (housing.caughtNuts() + housing.looseScrews() + works),
                "pieces",
                "caught in the panels, behind the door's frame, behind the works"));
    }

    /** CSV after RFC 4180: what the batch needs. */
    static String bill(List<Need> needs) {
        StringBuilder csv = new StringBuilder("item,amount,unit,what for\r\n");
        needs.forEach(need -> csv.append(String.format(
                Locale.ROOT,
                "%s,%s,%s,%s\r\n",
                CsvCell.written(need.item()),
                amount(need.amount()),
                need.unit(),
                CsvCell.written(need.what()))));
        return csv.toString();
    }

    /** The shelf gives to whoever comes first. */
    static List<Shopping> lessShelf(List<Need> needs, Map<String, Double> have) {
        List<Shopping> list = new ArrayList<>();
        Map<String, Double> left = new LinkedHashMap<>(have);
        for (Need need : needs) {
            double shelf = Math.min(need.amount(), left.getOrDefault(need.item(), 0.0));
            left.merge(need.item(), -shelf, Double::sum);
            list.add(new Shopping(need, need.amount() - shelf));
        }
        return list;
    }

    /** Likewise: what is not on the shelf. */
    static String shopping(List<Need> needs, Map<String, Double> have) {
        StringBuilder csv = new StringBuilder("item,to buy,unit,needed,on the shelf\r\n");
        for (Shopping line : lessShelf(needs, have)) {
            Need need = line.need();
            if (line.toBuy() > 0) {
                csv.append(String.format(
                        Locale.ROOT,
                        "%s,%s,%s,%s,%s\r\n",
                        CsvCell.written(need.item()),
                        amount(line.toBuy()),
                        need.unit(),
                        amount(need.amount()),
                        amount(have.getOrDefault(need.item(), 0.0))));
            }
        }
        return csv.toString();
    }

    private static String amount(double amount) {
        return String.format(Locale.ROOT, amount == Math.rint(amount) ? "%.0f" : "%.1f", amount);
    }
}
