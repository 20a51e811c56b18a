package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param price of what is bought at once, as paid, VAT contained
 * @param holds how much of the bill's unit that is: mm of rod or cord, g of filament or glue, pieces, pages, cm² of
 *     paint or cloth; one sheet; the kind's usual when absent
 */
@About("What is bought at once: its price as paid, and how much of the bill's unit it holds.")
public record StockPriceEntry(
        @Unit("1") Uncertain price, @Unit("1") @Nullable Uncertain holds) {}
