package jackwork.builds;

import static jackwork.check.Measure.newtons;
import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleStage;
import jackwork.stock.Coin;
import java.util.List;

/** A finger on the lever before the coin has come: up to which force does the lightest coin still free it? */
final class LeansFirst implements Mishap {

    /** A finger that only rests there, N: a guess. */
    private static final double RESTS = 0.5;

    private static final int HALVINGS = 7;

    @Override
    public List<Finding> ask(Visitor visitor) {
        Coin coin = visitor.lightest();
        double low = 0;
        double high = visitor.comfortable().force();
        Tries tries = new Tries(visitor, coin);
        boolean always = tries.frees(high);
        for (int i = 0; i < HALVINGS && !always; i++) {
            double middle = (low + high) / 2;
            if (tries.frees(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double most = always ? high : low;
        Status status = tries.computed && most >= RESTS ? Status.PASS : Status.DOUBTFUL;
        return List.of(Finding.ask(
                        Topic.LEANS_FIRST, say("What if the finger is on the lever before the coin has come?"))
                .answer(status, most, RESTS, most - RESTS, "N")
                .at(new Where("strut", 0.0, visitor.assembly.coinWorks().strut()))
                .because(
                        !tries.computed
                                ? say(
                                        "not every press could be computed; {} frees the lever under up to {} for certain",
                                        coin.code(),
                                        newtons(most))
                                : always
                                        ? say("{} frees the lever also under a comfortable press", coin.code())
                                        : say(
                                                "{} frees the lever under up to {}; pressed harder before, let go and press again",
                                                coin.code(),
                                                newtons(most)),
                        status == Status.PASS
                                ? Sentence.NOTHING
                                : say(
                                        "Let the tooth press nearer the bucket's pivot, or smooth and wax tooth and strut;"
                                                + " and tell the buyer to press after the coin has landed."),
                        "greatest force that leaves it free, in time, as numbered, against " + Words.number(RESTS)
                                + " N of a finger that rests (a guess)"));
    }

    /** Presses of any force, one after the other. */
    private static final class Tries {

        private final Visitor visitor;
        private final Coin coin;
        /** Whether every one so far could be computed: one that could not says neither yes nor no. */
        boolean computed = true;

        Tries(Visitor visitor, Coin coin) {
            this.visitor = visitor;
            this.coin = coin;
        }

        boolean frees(double force) {
            CycleResult result = visitor.leans(force, visitor.drop(coin));
            computed &= result.computed();
            return result.computed() && result.times().containsKey(CycleStage.FREES);
        }
    }
}
