package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A shop pays for what it sells and sends back the rest: s · payout − (1 − s) · (return + refurbish) − loss, for each
 * piece sent, less what those cost that are sold; what comes back is stock again.
 */
final class SaleOrReturn {

    static final String AT = "ways.return.";

    private SaleOrReturn() {}

    static WayResult of(Costing costing, BigDecimal price, WayFacts facts) {
        Rates rates = costing.rates();
        BigDecimal sold = rates.share(AT + "sold");
        BigDecimal payout = payout(rates, price);
        BigDecimal back =
                BigDecimal.ONE.subtract(sold).multiply(rates.money(AT + "back").add(rates.money(AT + "refurbish")));
        BigDecimal hours =
                Money.divided(Money.of(costing.minutes()), Money.HOUR).multiply(sold);
        List<BigDecimal> months = months(costing, payout);
        return new Sum()
                .plus("paid for those sold", sold.multiply(payout))
                .minus("fetching and mending those that come back", back)
                .minus("lost or broken", rates.share(AT + "loss").multiply(costing.floor()))
                .minus("cost of those sold", sold.multiply(costing.floor()))
                .result(
                        "sale-or-return",
                        "Sale or return",
                        "a piece sent",
                        hours,
                        rates,
                        List.of(),
                        months,
                        List.of("Paid " + Money.shown(rates.money(AT + "later"), 1)
                                + " months after each sale; sales taken as even over the months."));
    }

    /** S · (1 / (1 + v) − c). */
    static BigDecimal payout(Rates rates, BigDecimal price) {
        BigDecimal left =
                Money.divided(BigDecimal.ONE, BigDecimal.ONE.add(rates.vat())).subtract(rates.share(AT + "share"));
        return price.multiply(left);
    }

    /** The whole batch: made and paid for in the first month, sold evenly, each paid later, the rest fetched at the end. */
    static List<BigDecimal> months(Costing costing, BigDecimal payout) {
        Rates rates = costing.rates();
        int selling = (int) Math.max(1, Math.round(rates.number(AT + "months")));
        int later = (int) Math.round(rates.number(AT + "later"));
        BigDecimal pieces = BigDecimal.valueOf(costing.pieces());
        BigDecimal sold = rates.share(AT + "sold");
        BigDecimal monthly = Money.divided(pieces.multiply(sold).multiply(payout), BigDecimal.valueOf(selling));
        List<BigDecimal> months = new ArrayList<>();
        for (int month = 0; month <= selling + later; month++) {
            boolean paid = month >= 1 + later && month <= selling + later;
            months.add(paid ? monthly : BigDecimal.ZERO);
        }
        months.set(0, months.get(0).subtract(pieces.multiply(costing.outlay())));
        BigDecimal fetching = pieces.multiply(BigDecimal.ONE.subtract(sold))
                .multiply(rates.money(AT + "back").add(rates.money(AT + "refurbish")));
        months.set(selling, months.get(selling).subtract(fetching));
        return months;
    }

    /** The deepest that the running sum goes below nothing. */
    static BigDecimal peak(List<BigDecimal> months) {
        BigDecimal running = BigDecimal.ZERO;
        BigDecimal deepest = BigDecimal.ZERO;
        for (BigDecimal month : months) {
            running = running.add(month);
            deepest = deepest.min(running);
        }
        return deepest.negate();
    }
}
