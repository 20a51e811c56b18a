package jackwork.motion.coin;

import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import jackwork.motion.time.Shake;
import java.util.List;

/**
 * What a visitor does with a box.
 *
 * @param coins let go one after the other, a little apart; none for a press without a coin
 * @param press pushes the lever when it is free
 * @param leansFirst whether the finger pushes already while the coins fall
 * @param shake of the box all the while; with any, no part of the figure is folded
 */
public record Visit(List<CoinDrop> coins, Press press, boolean leansFirst, Shake shake) {

    public Visit {
        coins = List.copyOf(coins);
    }

    /** One coin, then the press. */
    public static Visit of(CoinDrop coin, Press press) {
        return new Visit(List.of(coin), press, false, Shake.NONE);
    }
}
