package jackwork.design;

import org.jspecify.annotations.Nullable;

/** Other ways of selling than the finished piece over a counter. */
@About("Other ways of selling than the finished piece over a counter.")
public record WaysEntry(
        @Key("return") @Nullable SaleOrReturnEntry saleOrReturn,
        @Nullable KitEntry kit,
        @Nullable PlansEntry plans,
        @Nullable OrderEntry order,
        @Nullable WorkshopDayEntry day,
        @Nullable CharityEntry charity) {}
