package jackwork.builds;

import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.motion.CycleResult;
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
        String force = Words.number(strongest) + " N";
        return List.of(new Finding(
                "shove",
                "Does the catch hold a shove without a coin?",
                status,
                null,
                strongest,
                null,
                "N",
                new Where("strut", 0.0, visitor.assembly.coinWorks().strut()),
                switch (status) {
                    case PASS, OPEN -> "pushed with " + force + " it stays locked, on a level table and one that leans";
                    case DOUBTFUL -> "a push of " + force + " could not be computed";
                    case FAIL ->
                        "pushed with " + force + " on a table that leans by " + Words.number(at)
                                + " degrees it gives way";
                },
                status == Status.FAIL ? "Let tooth and strut overlap more, or add to the counterweight." : "",
                "the push in time, as numbered, table at " + Words.number(tilt.low()) + ", "
                        + Words.number(tilt.value()) + " and " + Words.number(tilt.high()) + " degrees",
                List.of()));
    }
}
