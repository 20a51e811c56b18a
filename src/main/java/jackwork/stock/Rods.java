package jackwork.stock;

/** Rods and wires. */
public final class Rods {

    private static final Catalogue<RodKind> CATALOGUE = Catalogue.read("rods.csv", RodKind::of);

    private Rods() {}

    public static Catalogue<RodKind> catalogue() {
        return CATALOGUE;
    }
}
