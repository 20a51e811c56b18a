package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param price bought for
 * @param hours hours it lasts, hours
 * @param upkeep lenses, filters, tube for an hour
 * @param power drawn while it runs, extraction as well
 * @param attention share of its running time that hands can do nothing else; never leave it alone, percent
 */
@About("What the laser costs to run.")
public record LaserPayEntry(
        @Unit("1") @Nullable Uncertain price,
        @Unit("h") @Nullable Uncertain hours,
        @Unit("1") @Nullable Uncertain upkeep,
        @Unit("kW") @Nullable Uncertain power,
        @Unit("%") @Nullable Uncertain attention) {}
