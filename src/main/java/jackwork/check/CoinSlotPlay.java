package jackwork.check;

import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;

/** Room of a coin in the slot. */
public final class CoinSlotPlay {

    private CoinSlotPlay() {}

    /** In the slot's tighter direction, mm; negative when the coin does not go through. */
    public static double of(CoinWorks works, Coin coin) {
        return Math.min(works.slotLength() - coin.diameter(), works.slotWidth() - coin.thickness());
    }
}
