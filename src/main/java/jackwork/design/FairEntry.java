package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param stall for the pitch
 * @param travel there and back
 * @param hours at the stall and on the road, hours
 * @param fee for taking cards, percent
 * @param pieces sold there
 */
@About("Sold at a stall.")
public record FairEntry(
        @Unit("1") @Nullable Uncertain stall,
        @Unit("1") @Nullable Uncertain travel,
        @Unit("h") @Nullable Uncertain hours,
        @Unit("%") @Nullable Uncertain fee,
        @Unit("1") @Nullable Uncertain pieces) {}
