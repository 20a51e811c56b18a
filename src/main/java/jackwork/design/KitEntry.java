package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param price of the finished piece's price, percent
 * @param picking picking and bagging, minutes
 * @param works coin works put together and tried before they go, minutes
 * @param missing kits in which something is missing or breaks, percent
 * @param replacement to send it
 * @param support answering builders, a kit, minutes
 * @param spread a beginner's holes, glue and paint spread so much wider
 */
@About("Sold as parts, its coin works put together and tried.")
public record KitEntry(
        @Unit("%") @Nullable Uncertain price,
        @Unit("min") @Nullable Uncertain picking,
        @Unit("min") @Nullable Uncertain works,
        @Unit("%") @Nullable Uncertain missing,
        @Unit("1") @Nullable Uncertain replacement,
        @Unit("min") @Nullable Uncertain support,
        @Unit("1") @Nullable Uncertain spread) {}
