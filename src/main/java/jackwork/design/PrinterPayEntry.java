package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param price bought for
 * @param hours hours it lasts, hours
 * @param upkeep nozzles, plates for an hour
 * @param power drawn while it runs
 * @param attention share of its running time that hands can do nothing else, percent
 * @param speed printed in an hour
 */
@About("What the printer costs to run.")
public record PrinterPayEntry(
        @Unit("1") @Nullable Uncertain price,
        @Unit("h") @Nullable Uncertain hours,
        @Unit("1") @Nullable Uncertain upkeep,
        @Unit("kW") @Nullable Uncertain power,
        @Unit("%") @Nullable Uncertain attention,
        @Unit("g/h") @Nullable Uncertain speed) {}
