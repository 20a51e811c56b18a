package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import jackwork.stock.Coin;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;

/**
 * A coin between kicker and gate pushes the gate, and with it the strut, out of the tooth's way before the tooth comes
 * there; without a coin, or with one too small, the kicker does not reach the gate. With n from kicker to gate:
 * <pre>
 *   push(u) = (kicker(u) − kicker(0)) · n − (distance of kicker and face − diameter)
 *   gate's turn = push / arm of n about its pivot
 * </pre>
 * at the stroke u where tooth and strut would meet.
 */
final class CoinBridges implements Question {

    @Override
    public boolean appliesTo(Subject subject) {
        return subject.assembly().coinWorks().bridges();
    }

    @Override
    public List<Finding> ask(Subject subject) {
        CoinWorks works = subject.assembly().coinWorks();
        Point face = works.face();
        if (face == null) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        for (Coin coin : subject.coins()) {
            findings.add(find(subject, works, face, coin));
        }
        findings.add(locks(subject, works));
        return findings;
    }

    private static Finding find(Subject subject, CoinWorks works, Point face, Coin coin) {
        Lever lever = subject.assembly().lever();
        double meets = meets(works, lever);
        Point kicker = works.kicker();
        Point way = face.minus(kicker);
        Point n = way.times(1 / way.length());
        double travel = travel(works, lever, way);
        double gap = way.length() - coin.diameter();
        double push = push(works, lever, way, coin.diameter());
        double clear = clear(works, lever, face, n, push);
        double play = PivotPlay.of(subject.assembly());
        double margin = clear - play;
        Uncertain kerf = subject.assembly().workshop().laser().kerf();
        Spread spread = PivotPlay.spread(
                subject.assembly(), clear, k -> clear(works, lever, face, n, Math.max(0, push - (k - kerf.value()))));
        return Finding.ask(
                        Topic.COIN_BRIDGES,
                        coin.code(),
                        say("Does {} bridge the gap and take the strut away?", coin.code()))
                .answer(spread.status(), clear, play, margin, "mm")
                .at(new Where("kicker", meets, kicker))
                .because(
                        gap < 0
                                ? say("{} has no room between kicker and gate: {} too thick", coin.code(), mm(-gap))
                                : say(
                                        "{} is pressed against the gate by {} when tooth and strut would meet, and the"
                                                + " strut is then {} out of the way",
                                        coin.code(),
                                        mm(push),
                                        mm(clear)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Set the kicker nearer the gate for this coin, or let the tooth come to the strut"
                                        + " later."),
                        "push = travel " + Words.number(travel) + " − (" + Words.number(way.length()) + " − "
                                + Words.number(coin.diameter()) + ") = " + Words.number(push) + " mm at "
                                + Words.stroke(meets) + "; play of both pins " + Words.number(play)
                                + " mm",
                        spread);
    }

    private static Finding locks(Subject subject, CoinWorks works) {
        Lever lever = subject.assembly().lever();
        double overlap = -clear(works, lever, 0);
        double slop = PivotPlay.of(subject.assembly());
        Spread spread = PivotPlay.spread(subject.assembly(), overlap, -1);
        return Finding.ask(Topic.GATE_LOCKS, say("Does the strut stand well in the tooth's way without a coin?"))
                .answer(spread.status(), overlap, slop, overlap - slop, "mm")
                .at(new Where("strut", meets(works, lever), works.strut()))
                .because(
                        say(
                                "strut and tooth overlap by {}, the pins' play takes {}; the lever goes to {} before"
                                        + " they meet",
                                mm(overlap),
                                mm(slop),
                                stroke(meets(works, lever))),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Make the strut longer, or the tooth deeper."),
                        "overlap = " + Words.number(overlap) + " mm; play = half the clearance of each of two pins = "
                                + Words.number(slop) + " mm",
                        spread);
    }

    /** Diameter of the smallest disc that takes the strut just out of the tooth's way, mm. */
    static double smallest(Assembly assembly) {
        CoinWorks works = assembly.coinWorks();
        Point face = works.face();
        if (face == null) {
            return Double.NaN;
        }
        Lever lever = assembly.lever();
        Point way = face.minus(works.kicker());
        Point n = way.times(1 / way.length());
        double low = 0;
        double high = way.length();
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (clear(works, lever, face, n, push(works, lever, way, middle)) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** How far a disc of a diameter is pressed into the gate when tooth and strut would meet, mm. */
    private static double push(CoinWorks works, Lever lever, Point way, double diameter) {
        return Math.max(0, travel(works, lever, way) - (way.length() - diameter));
    }

    /** How far the kicker goes toward the gate until tooth and strut meet, mm. */
    private static double travel(CoinWorks works, Lever lever, Point way) {
        Point kicker = works.kicker();
        return kicker.turnedAbout(lever.pivot(), lever.turn() * meets(works, lever))
                .minus(kicker)
                .dot(way.times(1 / way.length()));
    }

    /** Stroke at which the tooth comes to the strut. */
    private static double meets(CoinWorks works, Lever lever) {
        Point tooth = works.tooth().minus(lever.pivot());
        Point strut = works.strut().minus(lever.pivot());
        return Math.atan2(tooth.cross(strut), tooth.dot(strut)) / lever.turn();
    }

    private static double clear(CoinWorks works, Lever lever, Point face, Point n, double push) {
        double arm = Math.abs(face.minus(works.pivot()).cross(n));
        // At its stop it gives way no farther.
        return clear(works, lever, Math.min(push / arm, Math.abs(works.tip())));
    }

    /** How far the strut stands out of the tooth's circle when the gate has turned, mm; negative in its way. */
    private static double clear(CoinWorks works, Lever lever, double turn) {
        double tooth = works.tooth().distance(lever.pivot());
        double side = Math.signum(works.strut().distance(lever.pivot()) - tooth);
        Point strut = works.strut().turnedAbout(works.pivot(), works.sense() * turn);
        return -side * (strut.distance(lever.pivot()) - tooth);
    }
}
