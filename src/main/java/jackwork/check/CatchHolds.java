package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import jackwork.stock.Uncertain;
import java.util.List;

/**
 * The strongest press without a coin does not push the strut aside. The tooth presses straight down
 * on the strut's end, at worst at its own edge, a mm to the closing side of the bucket's pivot:
 * <pre>
 *   N a + µ N h + M ≥ 0   with N the press at the tooth, h the strut's height, M the closing moment
 * </pre>
 * so it holds while a ≥ −(µ h + M/N). With a positive no press can open it, whatever the friction. Lever and bucket lie
 * in the play of their holes to the worse side. That it stays shut is all that is asked: what such a press breaks is another
 * question, {@link PivotsBearPress} and those after it.
 */
final class CatchHolds implements OfWeight {

    /** Half a kerf is taken from the tooth's edge, which then stands farther to the closing side. */
    private static final double OF_ONE_EDGE = 0.5;

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        CoinWorks works = assembly.coinWorks();
        Uncertain strongest = assembly.workshop().finger().strongest();
        double arm = works.sense() * (works.tooth().x() - works.pivot().x());
        double press = strongest.value() * ratio(assembly.lever(), works.tooth());
        double limit = limit(assembly, works.catchFriction().coefficient().low(), press);
        double play = PivotPlay.of(assembly);
        double margin = arm - limit - play;
        Spread spread = PivotPlay.spread(assembly, arm - limit, OF_ONE_EDGE)
                .add(
                        "strongest press",
                        strongest,
                        f -> arm
                                - play
                                - limit(
                                        assembly,
                                        works.catchFriction().coefficient().low(),
                                        f * ratio(assembly.lever(), works.tooth())));
        return List.of(Finding.ask(Topic.CATCH_HOLDS, say("Does the catch hold the strongest press without a coin?"))
                .answer(spread.status(), arm, limit + play, margin, "mm")
                .at(new Where("strut", 0.0, works.strut()))
                .because(
                        arm > 0
                                ? say(
                                        "the tooth presses {} to the closing side of the bucket's pivot, so that no press"
                                                + " pushes the strut aside; whether anything breaks of it is asked of the"
                                                + " refused press",
                                        mm(arm))
                                : say("the tooth presses to the opening side of the bucket's pivot by {}", mm(-arm)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Move the tooth's edge to the closing side of the bucket's pivot."),
                        "a = " + Words.number(arm) + " mm ≥ −(µ h + M/N) = " + Words.number(limit)
                                + " mm, µ at its lowest, N = " + Words.number(press) + " N; play of both pins "
                                + Words.number(play) + " mm",
                        spread));
    }

    /** Force at the tooth for 1 N of the finger. */
    private static double ratio(Lever lever, Point tooth) {
        return Math.abs((lever.press().x() - lever.pivot().x())
                / (tooth.x() - lever.pivot().x()));
    }

    private static double limit(Assembly assembly, double friction, double press) {
        CoinWorks works = assembly.coinWorks();
        double height = works.strut().y() - works.pivot().y();
        return -(friction * height + CoinSeat.closingMoment(assembly, 0) / press);
    }
}
