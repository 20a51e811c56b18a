package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param rate average time when the number of pieces doubles, as a share of before, percent
 * @param ends pieces after which no more is learnt
 */
@About("How hands get quicker (Wright): machines do not.")
public record LearningEntry(
        @Unit("%") @Nullable Uncertain rate,
        @Unit("1") @Nullable Uncertain ends) {}
