package jackwork.stock;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The coins Jackwork knows. */
public final class Coins {

    private static final Coins CATALOGUE = new Coins(Table.read("coins.csv").rows().stream()
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

    private final List<Coin> all;

    private Coins(List<Coin> all) {
        this.all = all;
    }

    public static Coins catalogue() {
        return CATALOGUE;
    }

    public List<Coin> all() {
        return all;
    }

    public Optional<Coin> find(String code) {
        return all.stream().filter(coin -> coin.code().equals(code)).findFirst();
    }

    public List<Coin> ofCurrency(String currency) {
        return all.stream().filter(coin -> coin.currency().equals(currency)).toList();
    }

    public List<String> codes() {
        return all.stream().map(Coin::code).toList();
    }
}
