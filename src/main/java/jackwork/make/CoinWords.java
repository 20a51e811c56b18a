package jackwork.make;

import jackwork.stock.Coin;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Coins as a buyer reads them. */
final class CoinWords {

    /** Sign before whole units, word after hundredths; currencies not here are written by their code. */
    private record Signs(String whole, String hundredth) {}

    private static final Map<String, Signs> SIGNS = Map.of(
            "EUR", new Signs("€", " c"),
            "GBP", new Signs("£", "p"),
            "USD", new Signs("$", "¢"));

    private CoinWords() {}

    /** "20 c, 50 c, €1, €2". */
    static String of(List<Coin> coins) {
        return coins.stream().map(CoinWords::of).collect(Collectors.joining(", "));
    }

    private static String of(Coin coin) {
        Signs signs = SIGNS.get(coin.currency());
        BigDecimal value = coin.denomination();
        if (signs == null) {
            return coin.currency() + " " + value.toPlainString();
        }
        return value.compareTo(BigDecimal.ONE) < 0
                ? value.movePointRight(2).stripTrailingZeros().toPlainString() + signs.hundredth()
                : signs.whole() + value.stripTrailingZeros().toPlainString();
    }
}
