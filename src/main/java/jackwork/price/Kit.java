package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Parts to put together at home: finished − buyer's steps + picking + coin works tried before they go + missing-part rate
 * · replacement + support minutes.
 */
final class Kit {

    static final String AT = "ways.kit.";
    private static final Set<Stage> BUYERS = Set.of(Stage.DRESS, Stage.BUILD, Stage.TRY);

    private Kit() {}

    static WayResult of(Costing costing, BigDecimal price, WayFacts facts) {
        Rates rates = costing.rates();
        BigDecimal asked = price.multiply(rates.share(AT + "price"));
        BigDecimal net = Money.divided(asked, BigDecimal.ONE.add(rates.vat()));
        double buyers = buyers(costing);
        double makers = rates.number(AT + "picking") + rates.number(AT + "works") + rates.number(AT + "support");
        BigDecimal minute = costing.aMinute();
        BigDecimal hours = Money.divided(Money.of(costing.minutes() - buyers + makers), Money.HOUR);
        List<String> words = new ArrayList<>();
        words.add(String.format(Locale.ROOT, "The buyer works %.0f minutes of yours, slower.", buyers));
        Double pass = facts.beginners();
        words.add(
                pass == null
                        ? "Whether it passes under a beginner's spreads was not computed: draw virtual builds."
                        : String.format(
                                Locale.ROOT,
                                "Under a beginner's spreads %.0f of 100 virtual builds pass with every coin.",
                                100 * pass));
        return new Sum()
                .plus("price", asked)
                .minus("VAT", asked.subtract(net))
                .minus("cost of a finished piece", costing.floor())
                .plus("steps the buyer does", minute.multiply(Money.of(buyers)))
                .minus("picking", minute.multiply(rates.money(AT + "picking")))
                .minus("coin works put together and tried", minute.multiply(rates.money(AT + "works")))
                .minus("what is missing", rates.share(AT + "missing").multiply(rates.money(AT + "replacement")))
                .minus("support", minute.multiply(rates.money(AT + "support")))
                .result("kit", "As a kit", "a kit", hours, rates, words);
    }

    /** Minutes that the buyer spends in the maker's place. */
    static double buyers(Costing costing) {
        return costing.tasks().stream()
                .filter(task -> BUYERS.contains(task.stage()) && !task.perBatch())
                .filter(task -> !task.operation().equals("print-page"))
                .mapToDouble(Task::minutes)
                .sum();
    }
}
