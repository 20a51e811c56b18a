package jackwork.stock;

import java.math.BigDecimal;

/** The coins Jackwork knows. */
public final class Coins {

    private static final Catalogue<Coin> CATALOGUE = new Catalogue<>(Table.read("coins.csv").rows().stream()
            .map(row -> new Coin(
                    row.text("code"),
                    row.text("currency"),
                    new BigDecimal(row.text("denomination")),
                    row.number("diameter_mm"),
                    row.number("thickness_mm"),
                    row.number("mass_g"),
                    row.number("least_across_mm"),
                    row.flag("round"),
                    row.text("shape"),
                    row.text("material"),
                    row.text("magnetic"),
                    row.text("source"),
                    row.text("status")))
            .toList());

    private Coins() {}

    public static Catalogue<Coin> catalogue() {
        return CATALOGUE;
    }
}
