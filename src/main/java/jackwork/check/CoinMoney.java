package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.List;

/**
 * The coins are of one money, and of that in which the workshop counts. One slot for two currencies, or earnings in one
 * that is never put in, is a slip most often; at a border it may be meant.
 */
final class CoinMoney implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        List<Coin> coins = subject.coins();
        List<Finding> findings = new ArrayList<>();
        if (coins.isEmpty()) {
            return findings;
        }
        String first = coins.get(0).currency();
        for (int i = 1; i < coins.size(); i++) {
            Coin coin = coins.get(i);
            if (!coin.currency().equals(first)) {
                findings.add(finding(
                        coin.code(),
                        say("Are coins of two currencies meant?"),
                        say(
                                "coins.{} of design.yaml is {}, and coins.0 is {}",
                                i,
                                coin.code(),
                                coins.get(0).code()),
                        say("Keep the coins of one currency, or look at each finding about both.")));
            }
        }
        String counted = subject.design().workshop().currency();
        if (coins.stream().noneMatch(coin -> coin.currency().equals(counted))) {
            findings.add(finding(
                    "",
                    say("Are the coins of the workshop's money?"),
                    say("workshop.yaml has currency {}, and every coin of design.yaml is {}", counted, first),
                    say("Name coins of {}, or write the currency of the coins in workshop.yaml.", counted)));
        }
        return findings;
    }

    private static Finding finding(String about, Sentence question, Sentence why, Sentence remedy) {
        return Finding.ask(Topic.COIN_MONEY, about, question)
                .answer(Status.DOUBTFUL, null, null, null, "")
                .at(Where.nowhere())
                .because(why, remedy, "");
    }
}
