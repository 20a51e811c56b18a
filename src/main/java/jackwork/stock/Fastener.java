package jackwork.stock;

/**
 * A nut or washer used as a weight.
 *
 * @param across across flats (nut) or outside diameter (washer), mm
 * @param height mm
 * @param hole nominal thread or hole diameter, mm
 * @param mass g
 */
public record Fastener(String name, String kind, double across, double height, double hole, Uncertain mass)
        implements Catalogue.Entry {

    static Fastener of(Table.Row row) {
        return new Fastener(
                row.text("name"),
                row.text("kind"),
                row.number("across_mm"),
                row.number("height_mm"),
                row.number("hole_mm"),
                new Uncertain(
                        row.number("mass_g"),
                        row.number("mass_low"),
                        row.number("mass_high"),
                        "g",
                        Basis.PUBLISHED,
                        row.text("source")));
    }
}
