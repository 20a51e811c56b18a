package jackwork.motion.coin;

import jackwork.design.Handling;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import jackwork.motion.time.Shake;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
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

    /** Someone lets a coin go in the middle of the slot and presses comfortably, all as numbered. */
    public static Visit asNumbered(Assembly assembly, Coin coin) {
        Handling handling = assembly.workshop().handlingOrGuess();
        CoinWorks works = assembly.coinWorks();
        CoinDrop drop = new CoinDrop(
                coin.mass() * handling.coinMass().value(),
                coin.radius(),
                0,
                handling.dropSpeed().value(),
                works.coinFriction().coefficient().value(),
                handling.rebound().value(),
                works.rebound().value());
        double force = assembly.workshop().finger().comfortable().value();
        return of(drop, new Press(force, handling.pressSpeed().value()));
    }

    /** One coin, then the press. */
    public static Visit of(CoinDrop coin, Press press) {
        return new Visit(List.of(coin), press, false, Shake.NONE);
    }
}
