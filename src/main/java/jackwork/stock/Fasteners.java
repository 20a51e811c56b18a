package jackwork.stock;

/** Nuts and washers. */
public final class Fasteners {

    private static final Catalogue<Fastener> CATALOGUE = new Catalogue<>(Table.read("fasteners.csv").rows().stream()
            .map(row -> new Fastener(
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
                            row.text("source"))))
            .toList());

    private Fasteners() {}

    public static Catalogue<Fastener> catalogue() {
        return CATALOGUE;
    }
}
