package jackwork.price;

import java.math.BigDecimal;

/**
 * What an hour of hands costs.
 *
 * @param onCosts on top of the wage, percent
 * @param productive share of paid time, percent
 * @param cost wage · (1 + on-costs) / productive share
 * @param overhead of an hour at work, besides
 */
public record HourCost(
        BigDecimal wage, double onCosts, double productive, BigDecimal cost, BigDecimal overhead, String formula) {

    static HourCost of(Rates rates, int places) {
        BigDecimal cost = Money.shown(rates.hourCost(), places);
        return new HourCost(
                Money.shown(rates.money("wage"), places),
                rates.number("on-costs"),
                rates.number("productive"),
                cost,
                Money.shown(rates.money("overhead"), places),
                rates.money("wage").toPlainString() + " · (1 + "
                        + Money.plain(rates.share("on-costs")) + ") / "
                        + Money.plain(rates.share("productive")) + " = " + cost);
    }
}
