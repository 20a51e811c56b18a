package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param price a set of files
 * @param fee of it for payment and listing, percent
 * @param fixed for each sale besides
 * @param sold in a year
 * @param hours to write and photograph them once, hours
 * @param support answering, a set, minutes
 */
@About("Sold as files.")
public record PlansEntry(
        @Unit("1") @Nullable Uncertain price,
        @Unit("%") @Nullable Uncertain fee,
        @Unit("1") @Nullable Uncertain fixed,
        @Unit("1") @Nullable Uncertain sold,
        @Unit("h") @Nullable Uncertain hours,
        @Unit("min") @Nullable Uncertain support) {}
