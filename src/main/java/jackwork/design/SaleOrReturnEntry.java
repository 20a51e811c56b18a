package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param share of the ticket that the shop keeps, percent
 * @param sold of what was sent is sold, percent
 * @param back to fetch one that was not
 * @param refurbish to make it as new
 * @param loss of what was sent is lost or broken, percent
 * @param months until the shop sends back what is left
 * @param later from a sale to its payment
 */
@About("Sent to a shop that pays for what it sells and sends back the rest.")
public record SaleOrReturnEntry(
        @Unit("%") @Nullable Uncertain share,
        @Unit("%") @Nullable Uncertain sold,
        @Unit("1") @Nullable Uncertain back,
        @Unit("1") @Nullable Uncertain refurbish,
        @Unit("%") @Nullable Uncertain loss,
        @Unit("1") @Nullable Uncertain months,
        @Unit("1") @Nullable Uncertain later) {}
