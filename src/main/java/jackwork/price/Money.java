package jackwork.price;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Amounts in decimals. Inside, 34 digits are kept; what is shown is rounded once, half up, to the smallest coin of the
 * currency, and lines that are shown with their sum are rounded so that they add up to it.
 */
public final class Money {

    /** All divisions. */
    static final MathContext EXACT = MathContext.DECIMAL128;

    static final BigDecimal HOUR = BigDecimal.valueOf(60);
    static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int USUAL_PLACES = 2;

    private Money() {}

    /** As it was written: the shortest decimals of a number. */
    static BigDecimal of(double number) {
        return BigDecimal.valueOf(number);
    }

    static BigDecimal divided(BigDecimal amount, BigDecimal by) {
        return amount.divide(by, EXACT);
    }

    /** Minutes at so much an hour. */
    static BigDecimal minutes(double minutes, BigDecimal anHour) {
        return divided(of(minutes).multiply(anHour), HOUR);
    }

    /** Places behind the point of a currency's smallest coin (ISO 4217); two for one that Java does not know. */
    public static int places(String currency) {
        try {
            int places = Currency.getInstance(currency).getDefaultFractionDigits();
            return places < 0 ? USUAL_PLACES : places;
        } catch (IllegalArgumentException e) {
            return USUAL_PLACES;
        }
    }

    /** As written into a formula: all its places, and no more. */
    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** As shown. */
    static BigDecimal shown(BigDecimal amount, int places) {
        return amount.setScale(places, RoundingMode.HALF_UP);
    }

    /**
     * The same amounts rounded so that they add up to their rounded sum: each down first, then the smallest coins left go
     * to those that lost most.
     */
    static List<BigDecimal> shown(List<BigDecimal> amounts, int places) {
        BigDecimal sum = amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        List<BigDecimal> down = new ArrayList<>(amounts.stream()
                .map(amount -> amount.setScale(places, RoundingMode.FLOOR))
                .toList());
        BigDecimal coin = BigDecimal.ONE.movePointLeft(places);
        BigDecimal left = shown(sum, places).subtract(down.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        List<Integer> order = IntStream.range(0, amounts.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> down.get(i).subtract(amounts.get(i))))
                .toList();
        int coins = left.divide(coin, MathContext.UNLIMITED).intValueExact();
        for (int i = 0; i < coins; i++) {
            down.set(order.get(i), down.get(order.get(i)).add(coin));
        }
        return down;
    }
}
