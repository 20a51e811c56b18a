package jackwork.stock;

/** Rods and wires. */
public final class Rods {

    private static final Catalogue<RodKind> CATALOGUE = new Catalogue<>(Table.read("rods.csv").rows().stream()
            .map(row -> new RodKind(
                    row.text("name"),
                    row.text("label"),
                    row.text("surface"),
                    row.uncertain("density_g_per_cm3", "density_low", "density_high", "g/cm3"),
                    row.number("diameter_spread_mm"),
                    row.text("note")))
            .toList());

    private Rods() {}

    public static Catalogue<RodKind> catalogue() {
        return CATALOGUE;
    }
}
