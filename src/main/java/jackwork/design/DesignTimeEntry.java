package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param hours spent on inventing it, hours
 * @param pieces pieces that must bear them
 */
@About("Time spent on inventing a design, and the pieces that bear it.")
public record DesignTimeEntry(
        @Unit("h") @Nullable Uncertain hours,
        @Unit("1") @Nullable Uncertain pieces) {}
