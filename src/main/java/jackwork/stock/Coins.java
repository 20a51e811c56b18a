package jackwork.stock;

/** The coins Jackwork knows. */
public final class Coins {

    private static final Catalogue<Coin> CATALOGUE = Catalogue.read("coins.csv", Coin::of);

    private Coins() {}

    public static Catalogue<Coin> catalogue() {
        return CATALOGUE;
    }
}
