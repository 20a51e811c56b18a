package jackwork.builds;

import static jackwork.check.Measure.degrees;
import static jackwork.check.Measure.newtons;
import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Measure;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.motion.coin.CycleResult;
import jackwork.stock.Uncertain;
import java.util.List;

/** The strongest push without a coin, on a level table and on one that leans either way. */
final class Shoves implements Mishap {

    @Override
    public List<Finding> ask(Visitor visitor) {
        double strongest = visitor.assembly.workshop().finger().strongest().high();
        Uncertain tilt = visitor.assembly.workshop().handlingOrGuess().tilt();
        Status status = Status.PASS;
        double at = 0;
        for (double leaning : new double[] {tilt.value(), tilt.low(), tilt.high()}) {
            CycleResult result = visitor.pushes(strongest, leaning);
            Status now = !result.computed() ? Status.DOUBTFUL : Visitor.isRefused(result) ? Status.PASS : Status.FAIL;
            if (now.compareTo(status) > 0) {
                status = now;
                at = leaning;
            }
        }
        Measure force = newtons(strongest);
        return List.of(Finding.ask(Topic.SHOVE, say("Does the catch hold a shove without a coin?"))
                .answer(status, null, strongest, null, "N")
                .at(new Where("strut", 0.0, visitor.assembly.coinWorks().strut()))
                .because(
                        switch (status) {
                            case PASS, OPEN ->
                                say("pushed with {} it stays locked, on a level table and one that leans", force);
                            case DOUBTFUL -> say("a push of {} could not be computed", force);
                            case FAIL ->
                                say(
                                        "pushed with {} on a table that leans by {} degrees it gives way",
                                        force,
                                        degrees(at).bare());
                        },
                        status == Status.FAIL
                                ? say("Let tooth and strut overlap more, or add to the counterweight.")
                                : Sentence.NOTHING,
                        "the push in time, as numbered, table at " + Words.number(tilt.low()) + ", "
                                + Words.number(tilt.value()) + " and " + Words.number(tilt.high()) + " degrees"));
    }
}
