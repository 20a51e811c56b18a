package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/** People pay to make their own: people · fee / (1 + v) − people · parts − room − hours. */
final class WorkshopDay {

    static final String AT = "ways.day.";

    private WorkshopDay() {}

    static WayResult of(Costing costing, BigDecimal price, WayFacts facts) {
        Rates rates = costing.rates();
        BigDecimal people = rates.money(AT + "people");
        BigDecimal taken = people.multiply(rates.money(AT + "fee"));
        BigDecimal net = Money.divided(taken, BigDecimal.ONE.add(rates.vat()));
        double buyers = Kit.buyers(costing);
        BigDecimal parts = costing.floor().subtract(costing.aMinute().multiply(Money.of(buyers)));
        BigDecimal hours = rates.money(AT + "hours").add(rates.money(AT + "preparing"));
        BigDecimal ownHours = hours.add(
                Money.divided(Money.of(costing.minutes() - buyers), Money.HOUR).multiply(people));
        return new Sum()
                .plus("fees of all who come", taken)
                .minus("VAT", taken.subtract(net))
                .minus("parts, cut and printed, for each", parts.multiply(people))
                .minus("room", rates.money(AT + "room"))
                .minus(
                        "the day and what is before and after it",
                        rates.hourCost().multiply(hours))
                .result(
                        "workshop-day",
                        "A workshop day",
                        "a day",
                        ownHours,
                        rates,
                        List.of("At the bench the piece takes you " + Math.round(buyers)
                                + " minutes; count beginners at twice that before you promise a finished piece."));
    }
}
