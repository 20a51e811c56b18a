package jackwork.builds;

import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleStage;
import jackwork.stock.Coin;
import java.util.List;
import java.util.Optional;

/** Two coins one after the other before anyone presses: both must leave, and the lever lock again. */
final class TwoCoins implements Mishap {

    @Override
    public List<Finding> ask(Visitor visitor) {
        return visitor.coins.stream().map(coin -> find(visitor, coin)).toList();
    }

    private static Finding find(Visitor visitor, Coin coin) {
        CycleResult result = visitor.puts(visitor.drop(coin), visitor.drop(coin));
        boolean staysIn = result.firstMissed().equals(Optional.of(CycleStage.THROWN));
        Status status = result.passes() ? Status.PASS : staysIn || !result.computed() ? Status.DOUBTFUL : Status.FAIL;
        return Finding.ask(Topic.TWO_COINS, coin.code(), say("What of two {} before one press?", coin.code()))
                .answer(status, null, null, null, "")
                .at(new Where("slot", null, visitor.assembly.coinWorks().slotAt()))
                .because(
                        result.passes()
                                ? say("both are thrown by one press, and the lever locks again")
                                : result.computed() && staysIn
                                        ? say("one of them stays, and the next press costs nothing")
                                        : Sentence.plain(Visitor.missed(result)),
                        status == Status.PASS || !result.computed()
                                ? Sentence.NOTHING
                                : say("Leave a second coin no room: shorten the floor, or bring the slot lower."),
                        "the whole visit in time, as numbered, coins 0.4 s apart");
    }
}
