package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * From a price on a shelf back to what a piece may take.
 *
 * @param net what the maker gets of it
 * @param mayCost of that, without the profit
 * @param mayTake minutes of hands for which that is enough; negative when stock and machines alone cost more
 * @param takes minutes now
 * @param paysWage the wage at which the piece as it is costs just that; negative when nothing is left for hands
 * @param inTheWay the operations that take most
 * @param shareInTheWay of all minutes
 */
public record Backwards(
        String channel,
        BigDecimal shelf,
        BigDecimal net,
        BigDecimal mayCost,
        BigDecimal mayTake,
        double takes,
        BigDecimal paysWage,
        List<String> inTheWay,
        double shareInTheWay,
        String words) {

    private static final int MOST_STEPS = 5;

    static List<Backwards> of(Costing costing, BigDecimal shelf, int places, String currency) {
        List<Backwards> all = new ArrayList<>();
        for (Channel channel : costing.channels()) {
            if (channel.possible()) {
                all.add(of(costing, channel, shelf, places, currency));
            }
        }
        return all;
    }

    private static Backwards of(Costing costing, Channel channel, BigDecimal shelf, int places, String currency) {
        BigDecimal net = channel.net(shelf);
        BigDecimal mayCost = mayCost(net, costing.rates());
        BigDecimal mayTake = mayTake(costing, mayCost);
        List<Task> most = costing.tasks().stream().limit(MOST_STEPS).toList();
        double share = most.stream().mapToDouble(Task::share).sum();
        List<String> names = most.stream().map(Task::operation).toList();
        String words =
                words(channel, Money.shown(shelf, places) + " " + currency, mayTake, costing.minutes(), names, share);
        return new Backwards(
                channel.name(),
                Money.shown(shelf, places),
                Money.shown(net, places),
                Money.shown(mayCost, places),
                Money.shown(mayTake, 1),
                costing.minutes(),
                Money.shown(paysWage(costing, channel, shelf), places),
                names,
                share,
                words);
    }

    /** W · (1 − p). */
    static BigDecimal mayCost(BigDecimal net, Rates rates) {
        return net.multiply(BigDecimal.ONE.subtract(rates.share("profit")));
    }

    /** (what it may cost − what does not grow with the minutes) / what a minute adds. */
    static BigDecimal mayTake(Costing costing, BigDecimal mayCost) {
        return Money.divided(mayCost.subtract(costing.withoutMinutes()), costing.aMinute());
    }

    /**
     * Floor and price are both straight lines over the wage (at a stall the day is paid by it as well), so where they
     * meet follows from two of their points.
     */
    static BigDecimal paysWage(Costing costing, Channel channel, BigDecimal shelf) {
        BigDecimal none = left(costing, channel, shelf, 0);
        BigDecimal one = left(costing, channel, shelf, 1);
        return Money.divided(none, none.subtract(one));
    }

    private static BigDecimal left(Costing costing, Channel channel, BigDecimal shelf, double wage) {
        Costing at = costing.with(costing.rates().with("wage", wage));
        return mayCost(at.channel(channel).net(shelf), at.rates()).subtract(at.floor());
    }

    private static String words(
            Channel channel, String price, BigDecimal mayTake, double takes, List<String> names, double share) {
        String steps = String.format(
                Locale.ROOT,
                "these %d steps take %.0f %% of the time: %s",
                names.size(),
                100 * share,
                String.join(", ", names));
        if (mayTake.signum() < 0) {
            return String.format(
                    Locale.ROOT,
                    "at %s through %s stock, machines and fees alone cost more than is left; it takes %.0f minutes, and %s",
                    price,
                    channel.name(),
                    takes,
                    steps);
        }
        return String.format(
                Locale.ROOT,
                "to sell at %s through %s a piece may take %.0f minutes; it takes %.0f; %s",
                price,
                channel.name(),
                mayTake.doubleValue(),
                takes,
                steps);
    }
}
