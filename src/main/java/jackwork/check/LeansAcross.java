package jackwork.check;

import static jackwork.check.Measure.newtonMillimetres;
import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import jackwork.stock.Uncertain;
import java.util.Comparator;
import java.util.List;

/**
 * On a table that leans across the mechanism's plane the bucket lies against what keeps it sideways: a ring of radius ρ
 * rubs with a moment of {@code µ W sin φ ρ} more. The lightest coin must still tip it.
 */
final class LeansAcross implements OfWeight {

    /** Radius of the ring in radii of the rod: a spacer as thick as the rod is round. A guess. */
    private static final double RING = 2;

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        Coin coin = subject.coins().stream()
                .min(Comparator.comparingDouble(Coin::mass))
                .orElseThrow();
        Uncertain tilt = assembly.workshop().handlingOrGuess().tilt();
        double lean = Math.max(Math.abs(tilt.low()), Math.abs(tilt.high()));
        double more = sideways(assembly, coin, lean);
        double surplus = CoinTrips.balance(assembly, coin).surplus();
        Spread spread = subject.balanceSpread(a -> CoinTrips.balance(a, coin).surplus() - sideways(a, coin, lean));
        return List.of(Finding.ask(
                        Topic.LEANS_ACROSS,
                        say("Does the lightest coin tip the bucket on a table that leans sideways?"))
                .answer(spread.status(), surplus, more, surplus - more, "N·mm")
                .at(Where.bucket(assembly))
                .because(
                        say(
                                "{} has {} to spare, lying sideways takes {}",
                                coin.code(),
                                newtonMillimetres(surplus),
                                newtonMillimetres(more)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Take weight off the counterweight, or wax the bucket's spacers."),
                        "µ W sin φ ρ = " + Words.number(more) + " N·mm, φ = " + Words.number(lean) + " degrees, ρ = "
                                + Words.number(RING) + " rod radii (a guess)",
                        spread));
    }

    private static double sideways(Assembly assembly, Coin coin, double lean) {
        CoinWorks works = assembly.coinWorks();
        double load = CoinSeat.weight(assembly.body(works.bucket()).mass() + coin.mass());
        // The ring rubs wood on wood, as tooth and strut do.
        double friction = works.catchFriction().coefficient().value();
        return friction * load * Math.sin(Math.toRadians(lean)) * RING * works.rodRadius();
    }
}
