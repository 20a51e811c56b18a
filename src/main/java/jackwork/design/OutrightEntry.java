package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param markup that the shop puts on what it pays, percent
 * @param vat that the shop charges; 0 when it charges none, percent
 * @param reclaims whether the shop gets back the VAT that the maker charges it
 */
@About("A shop that buys pieces and sells them.")
public record OutrightEntry(
        @Unit("%") @Nullable Uncertain markup,
        @Unit("%") @Nullable Uncertain vat,
        @Nullable Boolean reclaims) {}
