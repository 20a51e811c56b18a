package jackwork.builds;

import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.model.CoinDrop;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.util.ArrayList;
import java.util.List;

/** Coins of the same money that the design does not ask for: kept out, or harmless, also to the coin after them. */
final class OtherCoins implements Mishap {

    @Override
    public List<Finding> ask(Visitor visitor) {
        List<String> money =
                visitor.coins.stream().map(Coin::currency).distinct().toList();
        List<Finding> findings = new ArrayList<>();
        for (Coin coin : Coins.catalogue().all()) {
            if (money.contains(coin.currency()) && !visitor.coins.contains(coin)) {
                findings.add(find(
                        visitor, coin.code(), visitor.goesIn(coin.diameter(), coin.thickness()), visitor.drop(coin)));
            }
        }
        return findings;
    }

    /**
     * Never a failure: nobody is asked to put it in.
     *
     * @param name as the finding's question names it
     */
    static Finding find(Visitor visitor, String name, boolean goesIn, CoinDrop drop) {
        if (!goesIn) {
            return finding(visitor, name, Status.PASS, say("{} does not go through the slot", name));
        }
        CycleResult alone = visitor.puts(drop);
        if (alone.passes()) {
            return finding(visitor, name, Status.PASS, say("{} works it like a coin that is asked for", name));
        }
        if (!alone.computed()) {
            return finding(visitor, name, Status.DOUBTFUL, say("what comes of {} could not be computed", name));
        }
        if (alone.times().containsKey(CycleStage.FREES)) {
            Sentence why = visitor.tipsLaidIn(drop)
                    ? say("{} frees the lever, and then {}", name, Visitor.missed(alone))
                    : say(
                            "{} frees the lever by its fall, laid in gently it would not, and then {}",
                            name,
                            Visitor.missed(alone));
            return finding(visitor, name, Status.DOUBTFUL, why);
        }
        String next = visitor.lightest().code();
        CycleResult after = visitor.puts(drop, visitor.drop(visitor.lightest()));
        boolean harmless = after.passes();
        return finding(
                visitor,
                name,
                harmless ? Status.PASS : Status.DOUBTFUL,
                harmless
                        ? say("{} does not free the lever; {} after it does, and both are thrown", name, next)
                        : after.computed()
                                ? say(
                                        "{} does not free the lever; with {} after it {}",
                                        name,
                                        next,
                                        Visitor.missed(after))
                                : say(
                                        "{} does not free the lever; what comes of {} after it could not be computed",
                                        name,
                                        next));
    }

    private static Finding finding(Visitor visitor, String name, Status status, Sentence why) {
        return Finding.ask(Topic.OTHER, name.replace(' ', '-'), say("What of {} in the slot?", name))
                .answer(status, null, null, null, "")
                .at(new Where("slot", null, visitor.assembly.coinWorks().slotAt()))
                .because(
                        why,
                        status == Status.PASS
                                ? Sentence.NOTHING
                                : visitor.assembly.coinWorks().bridges()
                                        ? say("Leave a gap in the ledge through which what is too small falls, or make"
                                                + " the slot refuse it.")
                                        : say("Let the bucket's floor fall so that it rolls out by itself, or make the"
                                                + " slot refuse it."),
                        "the whole visit in time, as numbered; before "
                                + visitor.lightest().code() + " where it stays");
    }
}
