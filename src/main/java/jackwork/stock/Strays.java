package jackwork.stock;

/** What else people put into slots. */
public final class Strays {

    private static final Catalogue<Stray> CATALOGUE = new Catalogue<>(Table.read("strays.csv").rows().stream()
            .map(row -> new Stray(
                    row.text("name"),
                    row.text("words"),
                    row.number("diameter_mm"),
                    row.number("thickness_mm"),
                    row.number("mass_g"),
                    row.number("friction"),
                    row.number("rebound"),
                    row.text("source")))
            .toList());

    private Strays() {}

    public static Catalogue<Stray> catalogue() {
        return CATALOGUE;
    }
}
