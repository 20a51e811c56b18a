package jackwork.stock;

/** Wages, prices, taxes, fees and habits of buyers: our own inventions, one guess a line, for a workshop to replace. */
public final class PayNumbers {

    private static final Catalogue<PayNumber> CATALOGUE = new Catalogue<>(Table.read("pay.csv").rows().stream()
            .map(row -> new PayNumber(
                    row.text("name"),
                    row.uncertain("value", "low", "high", row.text("unit")),
                    row.number("least"),
                    row.number("most"),
                    row.text("what")))
            .toList());

    private PayNumbers() {}

    public static Catalogue<PayNumber> catalogue() {
        return CATALOGUE;
    }
}
