package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import java.util.List;

/** With the lever at rest, the kicker leaves each coin room in the bucket, tipped or not. */
final class CoinLands implements OfWeight {

    @Override
    public List<Finding> ask(Subject subject) {
        return subject.coins().stream().map(coin -> find(subject, coin)).toList();
    }

    private static Finding find(Subject subject, Coin coin) {
        CoinWorks works = subject.assembly().coinWorks();
        double distance = Double.POSITIVE_INFINITY;
        Point centre = CoinSeat.atLip(works, coin.radius());
        for (int i = 0; i <= CoinSeat.STEPS; i++) {
            double share = (double) i / CoinSeat.STEPS;
            Point now = CoinSeat.tipped(works, centre, share);
            // While the floor still falls away from the lip it lies at the other end, nearer to the kicker.
            Point rolled = CoinSeat.centre(works, coin.radius(), share);
            distance = Math.min(distance, now.distance(works.kicker()));
            distance = Math.min(distance, rolled.distance(works.kicker()));
        }
        double room = distance - coin.radius();
        return Finding.ask(Topic.COIN_LANDS, coin.code(), say("Has {} room in the bucket?", coin.code()))
                .answer(room > 0 ? Status.PASS : Status.FAIL, distance, coin.radius(), room, "mm")
                .at(new Where("kicker", 0.0, works.kicker()))
                .because(
                        Double.isNaN(room)
                                ? say(
                                        "where {} would lie cannot be told: floor and lip of the bucket leave it no seat",
                                        coin.code())
                                : say("between {} and the waiting kicker {} are left", coin.code(), mm(room)),
                        room > 0
                                ? Sentence.NOTHING
                                : Double.isNaN(room)
                                        ? say("Mark heel and toe on the floor, and the lip above the toe.")
                                        : say("Set the kicker's tip farther from the bucket's lip."),
                        "room = distance of kicker and coin's centre " + Words.number(distance) + " − radius "
                                + Words.number(coin.radius()) + " = " + Words.number(room) + " mm, least over the tip");
    }
}
