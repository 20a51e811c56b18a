package jackwork.stock;

/** Nuts and washers. */
public final class Fasteners {

    private static final Catalogue<Fastener> CATALOGUE = Catalogue.read("fasteners.csv", Fastener::of);

    private Fasteners() {}

    public static Catalogue<Fastener> catalogue() {
        return CATALOGUE;
    }
}
