package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param fee of all that the buyer pays, percent
 * @param fixed for each sale besides
 * @param postage what posting it really costs
 */
@About("Sold by post.")
public record WebEntry(
        @Unit("%") @Nullable Uncertain fee,
        @Unit("1") @Nullable Uncertain fixed,
        @Unit("1") @Nullable Uncertain postage) {}
