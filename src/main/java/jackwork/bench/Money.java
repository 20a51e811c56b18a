package jackwork.bench;

import java.math.BigDecimal;

/**
 * @param amount 0 or more, at most four places
 * @param currency by its three letters (ISO 4217)
 */
public record Money(BigDecimal amount, String currency) {

    private static final BigDecimal MOST = new BigDecimal("1000000000");

    public Money {
        if (amount.signum() < 0 || amount.scale() > 4 || amount.compareTo(MOST) > 0) {
            throw new IllegalArgumentException(
                    "the amount reads " + amount + ", expected 0 or more with at most four places, as in 41.20");
        }
        if (!currency.matches("[A-Z]{3}")) {
            throw new IllegalArgumentException(
                    "the currency reads \"" + currency + "\", expected three letters, as in EUR");
        }
    }

    /** @throws IllegalArgumentException when it is no amount */
    public static Money of(String amount, String currency) {
        if (!amount.matches("\\d{1,10}(\\.\\d{1,4})?")) {
            throw new IllegalArgumentException("the amount reads \"" + amount + "\", expected one as in 41.20");
        }
        return new Money(new BigDecimal(amount), currency);
    }

    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency;
    }
}
