package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param people who come
 * @param fee each pays
 * @param room room, tea, insurance
 * @param hours the day itself, hours
 * @param preparing before and after it, hours
 */
@About("People pay to make their own.")
public record WorkshopDayEntry(
        @Unit("1") @Nullable Uncertain people,
        @Unit("1") @Nullable Uncertain fee,
        @Unit("1") @Nullable Uncertain room,
        @Unit("h") @Nullable Uncertain hours,
        @Unit("h") @Nullable Uncertain preparing) {}
