package jackwork.check;

import static jackwork.check.Measure.newtonMillimetres;
import static jackwork.check.Sentence.say;

import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.coin.Visit;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import java.util.List;

/**
 * Each coin's weight tips the bucket, laid in at rest, against counterweight and bearing friction. Where it does not, its fall
 * may: then it is tried in time, as builds try it, so that both say the same of one coin.
 */
public final class CoinTrips implements OfWeight {

    /**
     * The balance of one coin where it is tightest over the tip.
     *
     * @param share of the tip at which it is tightest
     * @param tripMoment of the coin, N·mm
     * @param needMoment of counterweight and friction together, N·mm
     */
    public record Balance(double share, double tripMoment, double needMoment) {

        public double surplus() {
            return tripMoment - needMoment;
        }
    }

    @Override
    public List<Finding> ask(Subject subject) {
        return subject.coins().stream().map(coin -> find(subject, coin)).toList();
    }

    /** Moments of a coin about the bucket's pivot. */
    public static Balance balance(Assembly assembly, Coin coin) {
        return balance(assembly, coin.mass(), coin.radius());
    }

    /** The same of anything round, mass in g, radius in mm. */
    public static Balance balance(Assembly assembly, double mass, double radius) {
        Balance worst = balance(assembly, mass, radius, 0);
        for (int i = 1; i <= CoinSeat.STEPS; i++) {
            Balance now = balance(assembly, mass, radius, (double) i / CoinSeat.STEPS);
            if (now.surplus() < worst.surplus()) {
                worst = now;
            }
        }
        return worst;
    }

    static Balance balance(Assembly assembly, double mass, double radius, double share) {
        double need = CoinSeat.closingMoment(assembly, share) + CoinSeat.frictionMoment(assembly, mass);
        return new Balance(share, CoinSeat.coinMoment(assembly.coinWorks(), mass, radius, share), need);
    }

    private static Finding find(Subject subject, Coin coin) {
        Assembly assembly = subject.assembly();
        Balance balance = balance(assembly, coin);
        double margin = balance.surplus();
        double dragged = balance(PivotDrag.in(assembly), coin).surplus();
        Spread spread = subject.balanceSpread(a -> balance(a, coin).surplus())
                .reserve(PivotDrag.reserve(assembly, dragged, "N·mm"), dragged);
        double friction = CoinSeat.frictionMoment(assembly, coin.mass());
        boolean byFall = spread.status() == Status.FAIL && freesByFall(assembly, coin);
        Status status = byFall ? Status.DOUBTFUL : spread.status();
        return Finding.ask(Topic.COIN_TRIPS, coin.code(), say("Does {} tip the bucket?", coin.code()))
                .answer(status, balance.tripMoment(), balance.needMoment(), margin, "N·mm")
                .at(Where.bucket(assembly))
                .because(
                        why(coin, balance, byFall),
                        status == Status.PASS
                                ? Sentence.NOTHING
                                : Double.isNaN(balance.tripMoment())
                                        ? say("Mark heel and toe on the floor, and the lip above the toe.")
                                        : say("Take weight off the counterweight, or move it nearer the pivot."),
                        "m g a = " + Words.number(coin.mass()) + " g · 9.81 m/s² · "
                                + Words.number(balance.tripMoment() / CoinSeat.weight(coin.mass())) + " mm = "
                                + Words.number(balance.tripMoment()) + " N·mm; need = counterweight "
                                + Words.number(balance.needMoment() - friction) + " + friction µ r W "
                                + Words.number(friction) + " N·mm",
                        spread);
    }

    private static Sentence why(Coin coin, Balance balance, boolean byFall) {
        if (Double.isNaN(balance.tripMoment())) {
            return say("where {} would lie cannot be told: floor and lip of the bucket leave it no seat", coin.code());
        }
        return byFall
                ? say(
                        "let fall from the slot it frees the lever, laid in gently it would not tip all the way: {} turns"
                                + " the bucket with {} where {} are needed",
                        coin.code(),
                        newtonMillimetres(balance.tripMoment()),
                        newtonMillimetres(balance.needMoment()))
                : say(
                        "{} turns the bucket with {} where {} are needed",
                        coin.code(),
                        newtonMillimetres(balance.tripMoment()),
                        newtonMillimetres(balance.needMoment()));
    }

    private static boolean freesByFall(Assembly assembly, Coin coin) {
        CycleResult result =
                CoinCycle.until(CycleStage.FREES, CycleRig.of(assembly, 0, 0), Visit.asNumbered(assembly, coin));
        return result.times().containsKey(CycleStage.FREES);
    }
}
