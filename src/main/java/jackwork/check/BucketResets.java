package jackwork.check;

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
        Spread spread = subject.balanceSpread(a -> closing(a) - CoinSeat.frictionMoment(a, 0));
        return List.of(new Finding(
                "bucket-resets",
                "Does the empty " + assembly.coinWorks().bucketWord() + " swing back and lock again?",
                spread.status(),
                closing,
                friction,
                margin,
                "N·mm",
                new Where(
                        assembly.body(assembly.coinWorks().bucket()).name(),
                        0.0,
                        assembly.coinWorks().pivot()),
                "the counterweight closes with at least " + Words.number(closing) + " N·mm against "
                        + Words.number(friction) + " N·mm of friction",
                spread.status() == Status.PASS ? "" : "Add weight to the counterweight, or move it farther out.",
                "M g x = " + Words.number(closing) + " N·mm, least over the tip; µ r W = " + Words.number(friction)
                        + " N·mm",
                spread.grounds()));
    }

    private static double closing(Assembly assembly) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= CoinSeat.STEPS; i++) {
            least = Math.min(least, CoinSeat.closingMoment(assembly, (double) i / CoinSeat.STEPS));
        }
        return least;
    }
}
