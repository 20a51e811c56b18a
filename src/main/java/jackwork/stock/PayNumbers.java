package jackwork.stock;

/** Wages, prices, taxes, fees and habits of buyers: our own inventions, one guess a line, for a workshop to replace. */
public final class PayNumbers {

    private static final Catalogue<PayNumber> CATALOGUE = Catalogue.read("pay.csv", PayNumber::of);

    private PayNumbers() {}

    public static Catalogue<PayNumber> catalogue() {
        return CATALOGUE;
    }
}
