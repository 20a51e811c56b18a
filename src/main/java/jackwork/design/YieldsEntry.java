package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param cut cut parts that are good, percent
 * @param print printed parts that are good, percent
 * @param dress figures that leave pictures, paint and cloth unspoiled, percent
 * @param build pieces that leave the bench unspoiled, percent
 * @param firstTime pieces that pass their trial at once; virtual builds replace it, percent
 * @param rework on a piece that does not, minutes
 * @param scrap share of those that is given up after all, percent
 * @param salvage what a piece that is given up leaves to be used again
 */
@About("What is spoiled on the way to a good piece.")
public record YieldsEntry(
        @Unit("%") @Nullable Uncertain cut,
        @Unit("%") @Nullable Uncertain print,
        @Unit("%") @Nullable Uncertain dress,
        @Unit("%") @Nullable Uncertain build,
        @Unit("%") @Nullable Uncertain firstTime,
        @Unit("min") @Nullable Uncertain rework,
        @Unit("%") @Nullable Uncertain scrap,
        @Unit("1") @Nullable Uncertain salvage) {}
