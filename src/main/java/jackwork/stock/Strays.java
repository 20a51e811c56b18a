package jackwork.stock;

/** What else people put into slots. */
public final class Strays {

    private static final Catalogue<Stray> CATALOGUE = Catalogue.read("strays.csv", Stray::of);

    private Strays() {}

    public static Catalogue<Stray> catalogue() {
        return CATALOGUE;
    }
}
