package jackwork.bench;

import java.math.BigDecimal;
import java.util.Currency;

/**
 * @param amount 0 or more, at most four places
 * @param currency by its three letters (ISO 4217)
 */
public record Money(BigDecimal amount, String currency) {

    private static final BigDecimal MOST = new BigDecimal("1000000000");

    public Money {
        if (amount.signum() < 0 || amount.scale() > 4 || amount.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("the amount reads " + amount + ", expected 0 to " + MOST.toPlainString()
                    + " with at most four places, as in 41.20");
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

    /** @throws IllegalArgumentException when no coins make that amount: 41.205 EUR, 100.50 JPY */
    void requireCoins() {
        int places = places();
        if (amount.stripTrailingZeros().scale() > places) {
            throw new IllegalArgumentException("the amount reads " + this + ", expected "
                    + (places == 0 ? "no places" : places + " places") + " after the point at most: " + currency
                    + " has no smaller coin. Count it again");
        }
    }

    /** After the point (ISO 4217, as Java has it); two for a currency that it does not know. */
    private int places() {
        try {
            return Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits());
        } catch (IllegalArgumentException e) {
            return 2;
        }
    }

    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency;
    }
}
