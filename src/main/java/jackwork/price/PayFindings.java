package jackwork.price;

import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Ground;
import jackwork.check.Margins;
import jackwork.check.Measure;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.check.Where;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
    private final List<Ends> numbers;

    private PayFindings(
            Costing costing, Channel best, List<Ends> numbers, BigDecimal asked, String currency, int places) {
        this.costing = costing;
        this.numbers = numbers;
        this.best = best;
        this.asked = asked;
        this.currency = currency;
        this.places = places;
    }

    static List<Finding> ask(Costing costing, List<Ends> numbers, BigDecimal asked, String currency, int places) {
        Channel best = best(costing, asked);
        if (best == null) {
            return List.of();
        }
        PayFindings findings = new PayFindings(costing, best, numbers, asked, currency, places);
        List<Finding> all = new ArrayList<>();
        all.add(findings.cost());
        all.add(findings.minutes());
        all.add(findings.firstTime());
        all.add(findings.batch());
        costing.channels().stream().filter(Channel::possible).forEach(channel -> all.add(findings.price(channel)));
        return all;
    }

    /** The channel that leaves the maker most of a price; null when none leaves anything. */
    static @Nullable Channel best(Costing costing, BigDecimal asked) {
        Channel best = null;
        for (Channel channel : costing.channels()) {
            if (channel.possible() && (best == null || channel.net(asked).compareTo(best.net(asked)) > 0)) {
                best = channel;
            }
        }
        return best;
    }

    /** What of the best channel's price is left beyond the floor. */
    private BigDecimal margin(Costing then) {
        return Backwards.mayCost(then.channel(best).net(asked), then.rates()).subtract(then.floor());
    }

    private BigDecimal marginWhere(double passAtOnce) {
        return margin(costing.with(costing.rates().with("yields.first-time", passAtOnce)));
    }

    private String money(BigDecimal amount) {
        return Money.shown(amount, places) + " " + currency;
    }

    private Finding cost() {
        BigDecimal mayCost = Backwards.mayCost(best.net(asked), costing.rates());
        BigDecimal margin = mayCost.subtract(costing.floor());
        List<Ground> grounds = grounds(this::margin, margin);
        return Finding.ask(Topic.PAY_COST, say("Does the price pay for the piece?"))
                .answer(
                        status(margin, grounds),
                        costing.floor().doubleValue(),
                        mayCost.doubleValue(),
                        margin.doubleValue(),
                        currency)
                .at(new Where(null, null, null))
                .because(
                        say(
                                "a good piece costs {}, and of {} through {} {} is left for it",
                                money(costing.floor()),
                                money(asked),
                                best.name(),
                                money(mayCost)),
                        margin.signum() > 0
                                ? Sentence.NOTHING
                                : say("See what is in the way, and the quicker ways of making."),
                        "floor = set-up / pieces + Σ stage cost / yields − salvage = "
                                + Money.shown(costing.floor(), places)
                                + "; left = W · (1 − "
                                + Money.plain(costing.rates().share("profit")) + "), "
                                + best.formula(),
                        named(grounds, margin),
                        margins(grounds, margin));
    }

    private Finding minutes() {
        BigDecimal mayCost = Backwards.mayCost(best.net(asked), costing.rates());
        BigDecimal may = Backwards.mayTake(costing, mayCost);
        double takes = costing.minutes();
        double margin = may.doubleValue() - takes;
        return Finding.ask(Topic.PAY_MINUTES, say("Does a piece take no more time than its price pays for?"))
                .answer(margin > 0 ? Status.PASS : Status.FAIL, takes, may.doubleValue(), margin, "min")
                .at(new Where(null, null, null))
                .because(
                        say(
                                "a good piece takes {} minutes of hands, and {} through {} pays for {}",
                                minutes(takes),
                                money(asked),
                                best.name(),
                                minutes(Math.max(0, may.doubleValue()))),
                        margin > 0
                                ? Sentence.NOTHING
                                : say(
                                        "Begin with {}, which takes most.",
                                        costing.tasks().get(0).operation()),
                        "minutes = (left − " + Money.shown(costing.withoutMinutes(), places) + ") / "
                                + Money.shown(costing.aMinute(), 4) + " a minute");
    }

    /** The least share of pieces that must pass their trial at once for the price to bear it. */
    private Finding firstTime() {
        double now = costing.rates().number("yields.first-time");
        Double least = least();
        double margin = least == null ? Double.NaN : now - least;
        return Finding.ask(Topic.PAY_BUILDS, say("Does the price bear the pieces that fail?"))
                .answer(margin > 0 ? Status.PASS : Status.FAIL, now, least, least == null ? null : margin, "%")
                .at(new Where(null, null, null))
                .because(
                        least == null
                                ? say("even if every piece passed its trial at once, the price would not pay")
                                : say(
                                        "{} of 100 pieces pass their trial at once, and the price bears it down to {}",
                                        Measure.of(now, "%").to(0).bare(),
                                        Measure.of(least, "%").to(0).bare()),
                        margin > 0 ? Sentence.NOTHING : say("Look at the virtual builds before you look at the price."),
                        String.format(
                                Locale.ROOT,
                                "rework = (1 − %.3f) · %.0f min; given up = (1 − %.3f) · %.3f",
                                now / 100,
                                costing.rates().number("yields.rework"),
                                now / 100,
                                costing.yields().scrap()));
    }

    private @Nullable Double least() {
        if (marginWhere(100).signum() <= 0) {
            return null;
        }
        double low = 0;
        double high = 100;
        if (marginWhere(low).signum() > 0) {
            return low;
        }
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            if (marginWhere(middle).signum() > 0) {
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
        return Finding.ask(Topic.PAY_BATCH, say("Is the batch large enough?"))
                .answer(
                        fine ? Status.PASS : Status.FAIL,
                        (double) costing.pieces(),
                        turns == null ? null : turns.doubleValue(),
                        turns == null ? null : (double) costing.pieces() - turns,
                        "pieces")
                .at(new Where(null, null, null))
                .because(
                        turns == null
                                ? say("no batch up to a thousand makes it pay at {}", money(asked))
                                : say(
                                        "from batches of {} on it pays at {} through {}",
                                        turns,
                                        money(asked),
                                        best.name()),
                        fine || turns == null ? Sentence.NOTHING : say("Make {} at once, if you can sell them.", turns),
                        "smallest N with floor(N) ≤ left; now N = " + costing.pieces());
    }

    private Finding price(Channel channel) {
        BigDecimal shelf = channel.shelf(Ladder.net(costing.floor(), costing.rates()));
        BigDecimal margin = asked.subtract(shelf);
        List<Ground> grounds = grounds(
                other -> {
                    Channel then = other.channel(channel);
                    return then.possible()
                            ? asked.subtract(then.shelf(Ladder.net(other.floor(), other.rates())))
                            : asked.negate();
                },
                margin);
        return Finding.ask(
                        Topic.PAY_PRICE,
                        channel.name(),
                        say("Is the price through {} one that people pay?", channel.name()))
                .answer(
                        status(margin, grounds),
                        shelf.doubleValue(),
                        asked.doubleValue(),
                        margin.doubleValue(),
                        currency)
                .at(new Where(null, null, null))
                .because(
                        say(
                                "sold through {} it must cost {}; {} is what is paid",
                                channel.name(),
                                money(shelf),
                                money(asked)),
                        Sentence.NOTHING,
                        channel.formula() + "; W = "
                                + Money.shown(Ladder.net(costing.floor(), costing.rates()), places),
                        named(grounds, margin),
                        margins(grounds, margin));
    }

    /** Each number alone at both its ends: how much of the margin its worse end takes. */
    private List<Ground> grounds(Function<Costing, BigDecimal> answer, BigDecimal margin) {
        return Swing.of(numbers, answer, places + 2).stream()
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

    private static Status status(BigDecimal margin, List<Ground> grounds) {
        if (margin.signum() <= 0) {
            return Status.FAIL;
        }
        return margin.doubleValue() > rootOfSquares(grounds, Ground::drop) ? Status.PASS : Status.DOUBTFUL;
    }

    /** What the status is decided on: all grounds, not those alone that are named. */
    private static @Nullable Margins margins(List<Ground> grounds, BigDecimal margin) {
        return grounds.isEmpty()
                ? null
                : new Margins(
                        margin.doubleValue() - rootOfSquares(grounds, Ground::drop),
                        margin.doubleValue() + rootOfSquares(grounds, Ground::gain));
    }

    /** Drops and gains are added so (JCGM 100:2008, 5.1.2, for independent inputs). */
    private static double rootOfSquares(List<Ground> grounds, ToDoubleFunction<Ground> of) {
        return Math.sqrt(grounds.stream()
                .mapToDouble(ground -> of.applyAsDouble(ground) * of.applyAsDouble(ground))
                .sum());
    }

    private static Measure minutes(double minutes) {
        return Measure.of(minutes, "min").to(0).bare();
    }

    private static List<Ground> named(List<Ground> grounds, BigDecimal margin) {
        return grounds.stream()
                .filter(ground -> ground.drop() > NAMED * Math.abs(margin.doubleValue()))
                .limit(MOST_NAMED)
                .toList();
    }
}
