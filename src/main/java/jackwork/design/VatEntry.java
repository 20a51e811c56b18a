package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param registered whether the maker charges VAT and reclaims what was paid
 * @param rate charged on what is sold where VAT is charged; ask the local office, percent
 * @param paid contained in what stock and machines cost, percent
 */
@About("Value-added tax; local rules decide.")
public record VatEntry(
        @Nullable Boolean registered,
        @Unit("%") @Nullable Uncertain rate,
        @Unit("%") @Nullable Uncertain paid) {}
