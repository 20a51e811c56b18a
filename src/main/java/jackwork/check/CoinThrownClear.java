package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

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
        return Finding.ask(
                        Topic.COIN_THROWN_CLEAR,
                        coin.code(),
                        say("Does the kicker throw {} out of the bucket?", coin.code()))
                .answer(spread.status(), nearest, coin.radius(), past, "mm")
                .at(new Where("kicker", 1.0, works.lip()))
                .because(
                        past > 0
                                ? say("a full press carries {} {} past the lip", coin.code(), mm(past))
                                : say("at full press {} is still {} short of the lip", coin.code(), mm(-past)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Lengthen the kicker, or lower the bucket's lip."),
                        "past the lip = radius " + Words.number(coin.radius())
                                + " − nearest distance of the kicker's tip to the" + " coin's centre over the lip "
                                + Words.number(nearest) + " = " + Words.number(past) + " mm",
                        spread);
    }
}
