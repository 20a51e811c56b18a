package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import java.util.List;

/** With the bucket tipped, the strut stands clear of the tooth all the way down. */
final class CatchFrees implements OfWeight {

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        CoinWorks works = assembly.coinWorks();
        Lever lever = assembly.lever();
        double strut = CoinSeat.tipped(works, works.strut(), 1).x();
        double least = Double.POSITIVE_INFINITY;
        double atStroke = 0;
        for (int i = 0; i <= CoinSeat.STEPS; i++) {
            double stroke = (double) i / CoinSeat.STEPS;
            Point tooth = works.tooth().turnedAbout(lever.pivot(), lever.turn() * stroke);
            double clear = works.sense() * (tooth.x() - strut);
            if (clear < least) {
                least = clear;
                atStroke = stroke;
            }
        }
        double slop = PivotPlay.of(assembly);
        double margin = least - slop;
        // Both edges draw back by half of it.
        Spread spread = PivotPlay.spread(assembly, least, 1);
        return List.of(Finding.ask(Topic.CATCH_FREES, say("Does the tipped bucket leave the lever free?"))
                .answer(spread.status(), least, slop, margin, "mm")
                .at(new Where("tooth", atStroke, works.tooth()))
                .because(
                        say("tipped, the strut stands {} clear of the tooth at its closest", mm(least)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Let the bucket tip farther, or take some off the strut's end."),
                        "least gap of the marks of strut and tooth over the press = " + Words.number(least)
                                + " mm; play of both pins " + Words.number(slop) + " mm",
                        spread));
    }
}
