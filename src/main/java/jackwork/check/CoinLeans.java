package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import java.util.List;

/**
 * Each coin in the gap between its walls: it must have room, and lean so little that the walls hardly hold it. Leaning by
 * α it lies on them with {@code m g sin α}, and they drag with µ times that.
 */
final class CoinLeans implements Question {

    /** Share of its weight that may be lost to the walls: a guess. */
    private static final double MAY_DRAG = 0.1;

    @Override
    public List<Finding> ask(Subject subject) {
        return subject.coins().stream().map(coin -> find(subject, coin)).toList();
    }

    private static Finding find(Subject subject, Coin coin) {
        Assembly assembly = subject.assembly();
        double gap = assembly.coinGap();
        double play = gap - coin.thickness();
        double drag = drag(assembly, coin);
        boolean hasRoom = play > 0;
        double margin = hasRoom ? MAY_DRAG - drag : play;
        Spread spread = subject.balanceSpread(
                a -> a.coinGap() > coin.thickness() ? MAY_DRAG - drag(a, coin) : a.coinGap() - coin.thickness());
        return Finding.ask(Topic.COIN_LEANS, coin.code(), say("Does {} run free in its gap?", coin.code()))
                .answer(
                        hasRoom ? spread.status() : Status.FAIL,
                        hasRoom ? drag : play,
                        hasRoom ? MAY_DRAG : 0,
                        margin,
                        hasRoom ? "1" : "mm")
                .at(new Where("gap", null, assembly.coinWorks().slotAt()))
                .because(
                        hasRoom
                                ? say(
                                        "{} has {} of play, and its walls take {} of its weight",
                                        coin.code(),
                                        mm(play),
                                        Measure.of(100 * drag, "%"))
                                : say("{} is {} thicker than its gap", coin.code(), mm(-play)),
                        spread.status() == Status.PASS && hasRoom
                                ? Sentence.NOTHING
                                : hasRoom && play > 1
                                        ? say("Make the gap narrower.")
                                        : say(
                                                "Widen the gap with a shim of card, or measure the sheet before cutting."),
                        "drag = µ sin((w − t)/d) with w = " + Words.number(gap) + ", t = "
                                + Words.number(coin.thickness()) + ", d = " + Words.number(coin.diameter()) + " mm: "
                                + Words.number(drag),
                        spread);
    }

    private static double drag(Assembly assembly, Coin coin) {
        double friction = assembly.coinWorks().coinFriction().coefficient().value();
        return friction * Math.sin(CoinWorks.lean(assembly.coinGap(), coin.thickness(), coin.diameter()));
    }
}
