package jackwork.check;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import jackwork.stock.Coin;
import java.util.List;

/**
 * The kicker's sweep carries each coin over the lip: somewhere on the press its tip comes closer
 * than a coin's radius to the place where the coin's centre stands plumb over the tipped lip's corner. Geometry
 * of a slow push; speed only helps.
 */
final class CoinThrownClear implements OfWeight {

    @Override
    public List<Finding> ask(Subject subject) {
        return subject.coins().stream()
                .map(coin -> find(subject.assembly(), coin))
                .toList();
    }

    /** How far past the lip the kicker carries the coin, mm, with the bucket tipped. */
    private static double past(Assembly assembly, Coin coin) {
        CoinWorks works = assembly.coinWorks();
        Lever lever = assembly.lever();
        Point over = CoinSeat.overLip(works, coin.radius());
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= CoinSeat.STEPS; i++) {
            Point tip = works.kicker().turnedAbout(lever.pivot(), lever.turn() * i / CoinSeat.STEPS);
            nearest = Math.min(nearest, tip.distance(over));
        }
        return coin.radius() - nearest;
    }

    private static Finding find(Assembly assembly, Coin coin) {
        double past = past(assembly, coin);
        CoinWorks works = assembly.coinWorks();
        Spread spread = new Spread(past)
                .add(
                        "kerf",
                        assembly.workshop().laser().kerf(),
                        k -> past
                                - Math.abs(
                                        k - assembly.workshop().laser().kerf().value()));
        double nearest = coin.radius() - past;
        return new Finding(
                "coin-thrown-clear/" + coin.code(),
                "Does the kicker throw " + coin.code() + " out of the bucket?",
                spread.status(),
                nearest,
                coin.radius(),
                past,
                "mm",
                new Where("kicker", 1.0, works.lip()),
                past > 0
                        ? "a full press carries " + coin.code() + " " + Words.number(past) + " mm past the lip"
                        : "at full press " + coin.code() + " is still " + Words.number(-past) + " mm short of the lip",
                spread.status() == Status.PASS ? "" : "Lengthen the kicker, or lower the bucket's lip.",
                "past the lip = radius " + Words.number(coin.radius())
                        + " − nearest distance of the kicker's tip to the" + " coin's centre over the lip "
                        + Words.number(nearest) + " = " + Words.number(past) + " mm",
                spread.grounds());
    }
}
