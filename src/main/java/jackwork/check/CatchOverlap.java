package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import java.util.List;

/** Without a coin, the tooth stands well on the strut. */
final class CatchOverlap implements OfWeight {

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        CoinWorks works = assembly.coinWorks();
        double overlap = works.sense() * (works.strut().x() - works.tooth().x());
        double slop = PivotPlay.of(assembly);
        double margin = overlap - slop;
        Spread spread = PivotPlay.spread(assembly, overlap, -1);
        return List.of(Finding.ask(Topic.CATCH_OVERLAP, say("Does the lever stand well on its catch without a coin?"))
                .answer(spread.status(), overlap, slop, margin, "mm")
                .at(new Where("tooth", 0.0, works.tooth()))
                .because(
                        say("tooth and strut overlap by {}, the pins' play takes {}", mm(overlap), mm(slop)),
                        spread.status() == Status.PASS ? Sentence.NOTHING : say("Let tooth and strut overlap more."),
                        "overlap = " + Words.number(overlap) + " mm; play = half the clearance of each of two pins = "
                                + Words.number(slop) + " mm",
                        spread));
    }
}
