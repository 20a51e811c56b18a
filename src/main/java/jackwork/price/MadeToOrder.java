package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/** One for one buyer: the cost of a batch of one and the talk, at a higher price, part of it paid before work begins. */
final class MadeToOrder {

    static final String AT = "ways.order.";

    private MadeToOrder() {}

    static WayResult of(Costing costing, BigDecimal price, WayFacts facts) {
        Costing one = costing.with(1);
        Rates rates = costing.rates();
        BigDecimal asked = price.multiply(BigDecimal.ONE.add(rates.share(AT + "surcharge")));
        BigDecimal net = Money.divided(asked, BigDecimal.ONE.add(rates.vat()));
        BigDecimal talk = rates.money(AT + "talk");
        BigDecimal deposit = asked.multiply(rates.share(AT + "deposit"));
        BigDecimal cash = CashLine.sum(CashLine.of(one));
        BigDecimal hours = Money.divided(Money.of(one.minutes()).add(talk), Money.HOUR);
        return new Sum()
                .plus("price", asked)
                .minus("VAT", asked.subtract(net))
                .minus("cost of one made by itself", one.floor())
                .minus("agreeing on it", one.aMinute().multiply(talk))
                .result(
                        "made-to-order",
                        "Made to order",
                        "a piece",
                        hours,
                        rates,
                        List.of("The deposit of " + Money.shown(deposit, facts.places())
                                + (deposit.compareTo(cash) < 0 ? " does not pay" : " pays") + " for the stock to buy, "
                                + Money.shown(cash, facts.places()) + "."));
    }
}
