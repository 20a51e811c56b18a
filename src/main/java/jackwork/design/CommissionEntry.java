package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param share of the ticket that the gallery keeps, percent
 */
@About("A gallery that is paid by a share of the ticket.")
public record CommissionEntry(@Unit("%") @Nullable Uncertain share) {}
