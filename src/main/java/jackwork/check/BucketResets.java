package jackwork.check;

import static jackwork.check.Measure.newtonMillimetres;
import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import java.util.List;

/** Empty, the bucket swings back from its tip and lies against its rest stop, friction against it. */
final class BucketResets implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        double closing = closing(assembly);
        double friction = CoinSeat.frictionMoment(assembly, 0);
        double margin = closing - friction;
        double dragged = closing - CoinSeat.frictionMoment(PivotDrag.in(assembly), 0);
        Spread spread = subject.balanceSpread(a -> closing(a) - CoinSeat.frictionMoment(a, 0))
                .reserve(PivotDrag.reserve(assembly, dragged, "N·mm"), dragged);
        return List.of(Finding.ask(
                        Topic.BUCKET_RESETS,
                        say(
                                "Does the empty {} swing back and lock again?",
                                assembly.coinWorks().bucketWord()))
                .answer(spread.status(), closing, friction, margin, "N·mm")
                .at(Where.bucket(assembly))
                .because(
                        say(
                                "the counterweight closes with at least {} against {} of friction",
                                newtonMillimetres(closing),
                                newtonMillimetres(friction)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Add weight to the counterweight, or move it farther out."),
                        "M g x = " + Words.number(closing) + " N·mm, least over the tip; µ r W = "
                                + Words.number(friction) + " N·mm",
                        spread));
    }

    private static double closing(Assembly assembly) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= CoinSeat.STEPS; i++) {
            least = Math.min(least, CoinSeat.closingMoment(assembly, (double) i / CoinSeat.STEPS));
        }
        return least;
    }
}
