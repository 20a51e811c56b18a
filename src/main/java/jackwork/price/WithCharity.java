package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Placed where coins are given to somebody else: two purses, a month. The charity's: visitors · share who give · mean gift
 * · uptime − host's share − coin banking − theft, and the gain over a plain box. The maker's: fee or sponsorship − visits
 * and counting − repairs − loss rate · replacement; paid back after, or never.
 */
final class WithCharity {

    static final String AT = "ways.charity.";
    private static final double DAYS_A_MONTH = 30.4;

    private WithCharity() {}

    static WayResult of(Costing costing, BigDecimal price, WayFacts facts) {
        Rates rates = costing.rates();
        double heap = facts.heap() == null ? rates.number(AT + "heap") : facts.heap();
        double days = everyDays(rates, heap);
        double visits = DAYS_A_MONTH / days;
        BigDecimal visit = rates.money(AT + "visit")
                .add(Money.minutes(
                        rates.number(AT + "visit-minutes") + rates.number(AT + "counting"), rates.hourCost()));
        BigDecimal net = Money.divided(rates.money(AT + "fee"), BigDecimal.ONE.add(rates.vat()));
        double minutes = visits * (rates.number(AT + "visit-minutes") + rates.number(AT + "counting"));
        Sum makers = new Sum()
                .plus("fee or sponsorship", rates.money(AT + "fee"))
                .minus("VAT", rates.money(AT + "fee").subtract(net))
                .minus("visits and counting", visit.multiply(Money.of(visits)))
                .minus("repairs", rates.money(AT + "repairs"))
                .minus("loss rate · replacement", rates.share(AT + "loss").multiply(costing.floor()));
        return makers.result(
                "charity",
                "Placed with a charity",
                "a month",
                Money.divided(Money.of(minutes), Money.HOUR),
                rates,
                purses(rates),
                List.of(),
                words(costing, makers.left(), heap, days));
    }

    private static List<WayResult.Purse> purses(Rates rates) {
        Sum charity = charity(rates);
        BigDecimal plain = rates.money(AT + "visitors")
                .multiply(rates.share(AT + "plain-give"))
                .multiply(rates.money(AT + "plain-gift"));
        Sum gain = new Sum().plus("the charity's purse", charity.left()).minus("what a plain box would bring", plain);
        return List.of(charity.purse("the charity's"), gain.purse("its gain over a plain box"));
    }

    static Sum charity(Rates rates) {
        BigDecimal gifts = rates.money(AT + "visitors")
                .multiply(rates.share(AT + "give"))
                .multiply(rates.money(AT + "gift"))
                .multiply(rates.share(AT + "uptime"));
        return new Sum()
                .plus("given", gifts)
                .minus("the host's share", gifts.multiply(rates.share(AT + "host")))
                .minus("paying coins in", gifts.multiply(rates.share(AT + "banking")))
                .minus("stolen", gifts.multiply(rates.share(AT + "theft")));
    }

    /** Emptied at the lesser of agreement and heap / daily coins. */
    static double everyDays(Rates rates, double heap) {
        double daily = rates.number(AT + "visitors")
                / DAYS_A_MONTH
                * rates.number(AT + "give")
                / 100
                * rates.number(AT + "coins")
                * rates.number(AT + "uptime")
                / 100;
        double agreed = rates.number(AT + "visits");
        double byAgreement = agreed > 0 ? DAYS_A_MONTH / agreed : Double.POSITIVE_INFINITY;
        double byHeap = daily > 0 ? heap / daily : Double.POSITIVE_INFINITY;
        double days = Math.min(byAgreement, byHeap);
        return Double.isFinite(days) ? days : DAYS_A_MONTH;
    }

    private static List<String> words(Costing costing, BigDecimal aMonth, double heap, double days) {
        List<String> words = new ArrayList<>();
        words.add(
                aMonth.signum() > 0
                        ? "The piece is paid back after " + Money.shown(Money.divided(costing.floor(), aMonth), 1)
                                + " months."
                        : "The piece is never paid back.");
        words.add(String.format(
                Locale.ROOT,
                "Emptied every %.0f days: it holds some %.0f coins before they reach the works.",
                days,
                heap));
        words.add("Where the charity itself pays the fee, take it off its purse; a sponsor's leaves the purse whole.");
        words.add(
                "A coin that you keep is trading income, whoever it was meant for; collecting from the public is licensed"
                        + " in many places. Ask first.");
        return words;
    }
}
