package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.design.CoinWorksEntry;
import jackwork.parts.CoinWorks;
import jackwork.stock.Basis;
import jackwork.stock.Coin;
import jackwork.stock.Uncertain;
import java.util.Comparator;
import java.util.List;

/**
 * Coins thrown into the box heap up beneath the lip; how many of the largest does the cash room hold before the heap
 * reaches the bucket? The heap falls away from its top at the angle at which coins rest, as far as the walls.
 */
final class HeapGrows implements Question {

    /** Fewer are a nuisance to empty: a guess. */
    private static final int WANTED = 30;
    /** Share of a heap that is metal, and the slope at which coins rest, degrees: guesses. */
    private static final Uncertain METAL = new Uncertain(0.5, 0.4, 0.6, "1", Basis.GUESS, "common practice, no source");

    private static final Uncertain SLOPE = new Uncertain(25, 15, 35, "deg", Basis.GUESS, "common practice, no source");

    @Override
    public List<Finding> ask(Subject subject) {
        CoinWorks works = subject.assembly().coinWorks();
        CoinWorksEntry.CashRoom room = works.cashRoom();
        if (room == null) {
            return List.of();
        }
        Coin coin = subject.coins().stream()
                .max(Comparator.comparingDouble(HeapGrows::volume))
                .orElseThrow();
        double held = held(room, coin, METAL.value(), SLOPE.value());
        Spread spread = new Spread(held - WANTED)
                .add("metal in a heap of coins", METAL, v -> held(room, coin, v, SLOPE.value()) - WANTED)
                .add("slope of a heap of coins", SLOPE, v -> held(room, coin, METAL.value(), v) - WANTED);
        // A nuisance, never a failure.
        Status status = spread.status() == Status.FAIL ? Status.DOUBTFUL : spread.status();
        return List.of(Finding.ask(Topic.HEAP, say("How many coins does it hold before the heap reaches the bucket?"))
                .answer(status, held, (double) WANTED, held - WANTED, "coins")
                .at(new Where("cash room", null, works.lip()))
                .because(
                        say(
                                "some {} of {} heap up beneath the lip before they reach the bucket",
                                Measure.of(Math.floor(held), "coins").to(0).bare(),
                                coin.code()),
                        status == Status.PASS
                                ? Sentence.NOTHING
                                : say("Make the cash room deeper, or empty it sooner and say so on the card."),
                        "heap " + Words.number(area(room, SLOPE.value()) / 100) + " cm² · depth "
                                + Words.number(room.depth())
                                + " mm · " + Words.number(METAL.value()) + " of it metal / "
                                + Words.number(volume(coin) / 1000)
                                + " cm³ a coin, up to the lip as drawn: that the tipped bucket comes"
                                + " down lower is left out; " + WANTED + " wanted (a guess)",
                        spread));
    }

    private static double volume(Coin coin) {
        return Math.PI * coin.radius() * coin.radius() * coin.thickness();
    }

    private static double held(CoinWorksEntry.CashRoom room, Coin coin, double metal, double slope) {
        return area(room, slope) * room.depth() * metal / volume(coin);
    }

    /** Of the heap in the mechanism's plane, mm². */
    private static double area(CoinWorksEntry.CashRoom room, double slope) {
        double fall = Math.tan(Math.toRadians(slope));
        return side(room.toLeft(), room.below(), fall) + side(room.toRight(), room.below(), fall);
    }

    /** From the heap's top to the wall, or to where it runs out. */
    private static double side(double wall, double height, double fall) {
        double way = Math.min(wall, height / fall);
        return way * (height - way * fall / 2);
    }
}
