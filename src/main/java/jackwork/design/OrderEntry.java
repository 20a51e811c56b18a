package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param surcharge on the price, for being made for one buyer, percent
 * @param talk agreeing on it, minutes
 * @param deposit paid before work begins, percent
 */
@About("Made for one buyer.")
public record OrderEntry(
        @Unit("%") @Nullable Uncertain surcharge,
        @Unit("min") @Nullable Uncertain talk,
        @Unit("%") @Nullable Uncertain deposit) {}
