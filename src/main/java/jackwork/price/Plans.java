package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/** Files alone: sets a year · (price · (1 / (1 + v) − f) − fixed − support); the hours to write them come once. */
final class Plans {

    static final String AT = "ways.plans.";
    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

    private Plans() {}

    static WayResult of(Costing costing, BigDecimal price, WayFacts facts) {
        Rates rates = costing.rates();
        BigDecimal sold = rates.money(AT + "sold");
        BigDecimal asked = rates.money(AT + "price");
        BigDecimal net = Money.divided(asked, BigDecimal.ONE.add(rates.vat()));
        BigDecimal writing = rates.hourCost().multiply(rates.money(AT + "hours"));
        BigDecimal support =
                Money.divided(rates.money(AT + "support"), Money.HOUR).multiply(rates.hourCost());
        BigDecimal each = net.subtract(asked.multiply(rates.share(AT + "fee")))
                .subtract(rates.money(AT + "fixed"))
                .subtract(support);
        BigDecimal hours = rates.money(AT + "hours")
                .add(Money.divided(rates.money(AT + "support"), Money.HOUR).multiply(sold));
        BigDecimal aYear = each.multiply(sold);
        String back = aYear.signum() > 0
                ? "The writing is paid back after " + Money.shown(Money.divided(writing.multiply(TWELVE), aYear), 1)
                        + " months."
                : "The writing is never paid back.";
        return new Sum()
                .plus("price of all sets", asked.multiply(sold))
                .minus("VAT", asked.subtract(net).multiply(sold))
                .minus(
                        "fees",
                        asked.multiply(rates.share(AT + "fee"))
                                .add(rates.money(AT + "fixed"))
                                .multiply(sold))
                .minus("support", support.multiply(sold))
                .minus("writing them, in the first year", writing)
                .result("plans", "As plans", "the first year", hours, rates, List.of(back));
    }
}
