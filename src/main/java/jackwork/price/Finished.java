package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/** The finished piece, from the maker's own hand: price less VAT and cost. What channels take stands in their ladders. */
final class Finished {

    private Finished() {}

    static WayResult of(Costing costing, BigDecimal price, WayFacts facts) {
        Rates rates = costing.rates();
        BigDecimal net = Money.divided(price, BigDecimal.ONE.add(rates.vat()));
        return new Sum()
                .plus("price", price)
                .minus("VAT", price.subtract(net))
                .minus("cost of a good piece", costing.floor())
                .result(
                        "finished",
                        "Finished, from your own hand",
                        "a piece",
                        Money.divided(Money.of(costing.minutes()), Money.HOUR),
                        rates,
                        List.of("Without the time of selling; each channel's own ladder has what it takes."));
    }
}
