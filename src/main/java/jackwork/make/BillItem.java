package jackwork.make;

import jackwork.design.Design;
import jackwork.design.Goods;
import jackwork.drawing.CutSheet;
import jackwork.parts.Artwork;
import jackwork.parts.Assembly;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of the bill of materials.
 *
 * @param item the name by which the workshop keeps it
 * @param kind what it is priced as when it has no price of its own: {@code sheet}, {@code rod}, {@code cord}, …
 * @param amount for the whole batch; whole sheets: what of them is kept stands in {@link SheetUse}
 * @param testing of it, used up by test pieces
 * @param unit of both
 */
public record BillItem(String item, String kind, double amount, double testing, String unit) {

    static List<BillItem> of(
            Design design,
            Assembly assembly,
            List<PlannedSheet> sheets,
            List<Needs.Need> needs,
            int pages,
            int quantity) {
        List<BillItem> items = new ArrayList<>();
        for (Needs.Need need : needs) {
            boolean sheet = need.unit().equals("sheets");
            double testing = sheet ? testing(need.item(), design, sheets) : 0;
            items.add(new BillItem(need.item(), kind(need, design), need.amount(), testing, need.unit()));
        }
        items.add(new BillItem(Goods.PAPER, "paper", (double) quantity * pages, 0, "pages"));
        double paint = 2
                * Quantities.painted(assembly).stream()
                        .mapToDouble(part -> part.section().area())
                        .sum();
        double cloth = 0;
        for (Artwork.Cloth piece : assembly.artwork().cloths()) {
            var bounds = piece.outline().offset(piece.hem()).bounds();
            cloth += bounds.width() * bounds.height();
        }
        if (paint > 0) {
            items.add(new BillItem(Goods.PAINT, "paint", quantity * paint / 100, 0, "cm²"));
        }
        if (cloth > 0) {
            items.add(new BillItem(Goods.CLOTH, "cloth", quantity * cloth / 100, 0, "cm²"));
        }
        items.add(new BillItem(Goods.CARTON, "carton", quantity, 0, "pieces"));
        return items;
    }

    /** What the stock's test pieces take of a sheet. */
    private static double testing(String stock, Design design, List<PlannedSheet> sheets) {
        CutSheet piece = TestPieces.sheets(List.of(stock), design.workshop()).get(0);
        CutSheet sheet = sheets.stream()
                .filter(one -> one.stock().equals(stock))
                .findFirst()
                .orElseThrow()
                .sheet();
        return piece.width() * piece.height() / (sheet.width() * sheet.height());
    }

    private static String kind(Needs.Need need, Design design) {
        String item = need.item();
        if (need.unit().equals("sheets")) {
            return "sheet";
        } else if (design.workshop().rods().containsKey(item)) {
            return "rod";
        } else if (design.workshop().cords().containsKey(item)) {
            return "cord";
        } else if (item.equals(Goods.FILAMENT)) {
            return "filament";
        } else if (item.equals(Goods.GLUE)) {
            return "glue";
        }
        return item.startsWith("weight of ") ? "weight" : "fastener";
    }
}
