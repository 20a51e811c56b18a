package jackwork.price;

import jackwork.check.Finding;
import jackwork.check.Ground;
import jackwork.check.Status;
import jackwork.check.Where;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Will it pay? Findings of the same kind as all others, in the workshop's currency. */
final class PayFindings {

    /** Numbers that move a margin less than this share of it are not named. */
    private static final double NAMED = 0.01;

    private static final int MOST_NAMED = 6;

    private final Costing costing;
    private final BigDecimal asked;
    private final String currency;
    private final int places;
    private final Channel best;

    private PayFindings(Costing costing, Channel best, BigDecimal asked, String currency, int places) {
        this.costing = costing;
        this.best = best;
        this.asked = asked;
        this.currency = currency;
        this.places = places;
    }

    static List<Finding> ask(Costing costing, BigDecimal asked, String currency, int places) {
        Channel best = best(costing.rates(), asked);
        if (best == null) {
            return List.of();
        }
        PayFindings findings = new PayFindings(costing, best, asked, currency, places);
        List<Finding> all = new ArrayList<>();
        all.add(findings.cost());
        all.add(findings.minutes());
        all.add(findings.firstTime());
        all.add(findings.batch());
        Channels.of(costing.rates()).stream()
                .filter(Channel::possible)
                .forEach(channel -> all.add(findings.price(channel)));
        return all;
    }

    /** The channel that leaves the maker most of a price; null when none leaves anything. */
    static @Nullable Channel best(Rates rates, BigDecimal asked) {
        Channel best = null;
        for (Channel channel : Channels.of(rates)) {
            if (channel.possible() && (best == null || channel.net(asked).compareTo(best.net(asked)) > 0)) {
                best = channel;
            }
        }
        return best;
    }

    private BigDecimal margin(Rates rates, Channel channel) {
        Channel then = same(rates, channel);
        BigDecimal mayCost = Backwards.mayCost(then.net(asked), rates);
        return mayCost.subtract(costing.with(rates).floor());
    }

    private static Channel same(Rates rates, Channel channel) {
        return Channels.of(rates).stream()
                .filter(other ->
                        other.kind().equals(channel.kind()) && other.name().equals(channel.name()))
                .findFirst()
                .orElseThrow();
    }

    private String money(BigDecimal amount) {
        return Money.shown(amount, places) + " " + currency;
    }

    private Finding cost() {
        BigDecimal mayCost = Backwards.mayCost(best.net(asked), costing.rates());
        BigDecimal margin = mayCost.subtract(costing.floor());
        List<Ground> grounds = grounds(rates -> margin(rates, best), margin);
        return new Finding(
                "pay-cost",
                "Does the price pay for the piece?",
                status(margin, grounds),
                costing.floor().doubleValue(),
                mayCost.doubleValue(),
                margin.doubleValue(),
                currency,
                new Where(null, null, null),
                "a good piece costs " + money(costing.floor()) + ", and of " + money(asked) + " through " + best.name()
                        + " " + money(mayCost) + " is left for it",
                margin.signum() > 0 ? "" : "See what is in the way, and the quicker ways of making.",
                "floor = set-up / pieces + Σ stage cost / yields − salvage = " + Money.shown(costing.floor(), places)
                        + "; left = W · (1 − " + costing.rates().share("profit").toPlainString() + "), "
                        + best.formula(),
                named(grounds, margin));
    }

    private Finding minutes() {
        BigDecimal mayCost = Backwards.mayCost(best.net(asked), costing.rates());
        BigDecimal may = Backwards.mayTake(costing, mayCost);
        double takes = costing.minutes();
        double margin = may.doubleValue() - takes;
        return new Finding(
                "pay-minutes",
                "Does a piece take no more time than its price pays for?",
                margin > 0 ? Status.PASS : Status.FAIL,
                takes,
                may.doubleValue(),
                margin,
                "min",
                new Where(null, null, null),
                String.format(
                        Locale.ROOT,
                        "a good piece takes %.0f minutes of hands, and %s through %s pays for %.0f",
                        takes,
                        money(asked),
                        best.name(),
                        Math.max(0, may.doubleValue())),
                margin > 0 ? "" : "Begin with " + costing.tasks().get(0).operation() + ", which takes most.",
                "minutes = (left − " + Money.shown(costing.withoutMinutes(), places) + ") / "
                        + Money.shown(costing.aMinute(), 4) + " a minute",
                List.of());
    }

    /** The least share of pieces that must pass their trial at once for the price to bear it. */
    private Finding firstTime() {
        double now = costing.rates().number("yields.first-time");
        Double least = least();
        double margin = least == null ? Double.NaN : now - least;
        return new Finding(
                "pay-builds",
                "Does the price bear the pieces that fail?",
                margin > 0 ? Status.PASS : Status.FAIL,
                now,
                least,
                least == null ? null : margin,
                "%",
                new Where(null, null, null),
                least == null
                        ? "even if every piece passed its trial at once, the price would not pay"
                        : String.format(
                                Locale.ROOT,
                                "%.0f of 100 pieces pass their trial at once, and the price bears it down to %.0f",
                                now,
                                least),
                margin > 0 ? "" : "Look at the virtual builds before you look at the price.",
                String.format(
                        Locale.ROOT,
                        "rework = (1 − %.3f) · %.0f min; given up = (1 − %.3f) · %.3f",
                        now / 100,
                        costing.rates().number("yields.rework"),
                        now / 100,
                        costing.yields().scrap()),
                List.of());
    }

    private @Nullable Double least() {
        if (margin(costing.rates().with("yields.first-time", 100), best).signum() <= 0) {
            return null;
        }
        double low = 0;
        double high = 100;
        if (margin(costing.rates().with("yields.first-time", low), best).signum() > 0) {
            return low;
        }
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            if (margin(costing.rates().with("yields.first-time", middle), best).signum() > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private Finding batch() {
        Integer turns = BatchSize.turns(costing, best, asked);
        boolean fine = turns != null && turns <= costing.pieces();
        return new Finding(
                "pay-batch",
                "Is the batch large enough?",
                fine ? Status.PASS : Status.FAIL,
                (double) costing.pieces(),
                turns == null ? null : turns.doubleValue(),
                turns == null ? null : (double) costing.pieces() - turns,
                "pieces",
                new Where(null, null, null),
                turns == null
                        ? "no batch up to a thousand makes it pay at " + money(asked)
                        : "from batches of " + turns + " on it pays at " + money(asked) + " through " + best.name(),
                fine || turns == null ? "" : "Make " + turns + " at once, if you can sell them.",
                "smallest N with floor(N) ≤ left; now N = " + costing.pieces(),
                List.of());
    }

    private Finding price(Channel channel) {
        BigDecimal shelf = channel.shelf(Ladder.net(costing.floor(), costing.rates()));
        BigDecimal margin = asked.subtract(shelf);
        Function<Rates, BigDecimal> answer = rates -> {
            Channel then = same(rates, channel);
            return then.possible()
                    ? asked.subtract(then.shelf(Ladder.net(costing.with(rates).floor(), rates)))
                    : asked.negate();
        };
        List<Ground> grounds = grounds(answer, margin);
        return new Finding(
                "pay-price/" + channel.name(),
                "Is the price through " + channel.name() + " one that people pay?",
                status(margin, grounds),
                shelf.doubleValue(),
                asked.doubleValue(),
                margin.doubleValue(),
                currency,
                new Where(null, null, null),
                "sold through " + channel.name() + " it must cost " + money(shelf) + "; " + money(asked)
                        + " is what is paid",
                "",
                channel.formula() + "; W = " + Money.shown(Ladder.net(costing.floor(), costing.rates()), places),
                named(grounds, margin));
    }

    /** Each number alone at both its ends: how much of the margin its worse end takes. */
    private List<Ground> grounds(Function<Rates, BigDecimal> answer, BigDecimal margin) {
        return Swing.of(costing.rates(), answer, places + 2).stream()
                .map(swing -> new Ground(
                        swing.name(),
                        swing.number(),
                        Math.max(
                                0,
                                margin.subtract(swing.atLow().min(swing.atHigh()))
                                        .doubleValue()),
                        Math.max(
                                0,
                                swing.atLow()
                                        .max(swing.atHigh())
                                        .subtract(margin)
                                        .doubleValue())))
                .sorted(Comparator.comparingDouble(Ground::drop).reversed())
                .toList();
    }

    /** Drops are added as a root sum of squares (JCGM 100:2008, 5.1.2, for independent inputs). */
    private static Status status(BigDecimal margin, List<Ground> grounds) {
        if (margin.signum() <= 0) {
            return Status.FAIL;
        }
        double squares = grounds.stream().mapToDouble(g -> g.drop() * g.drop()).sum();
        return margin.doubleValue() > Math.sqrt(squares) ? Status.PASS : Status.DOUBTFUL;
    }

    private static List<Ground> named(List<Ground> grounds, BigDecimal margin) {
        return grounds.stream()
                .filter(ground -> ground.drop() > NAMED * Math.abs(margin.doubleValue()))
                .limit(MOST_NAMED)
                .toList();
    }
}
