package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/** What the workshop says of {@link Speeds}. */
@About("How fast the laser's head moves; what is absent is guessed.")
public record SpeedsEntry(
        @About("Along an engraved line.") @Unit("mm/s") @Nullable
        Uncertain engrave,

        @About("Through this workshop's usual sheets.") @Unit("mm/s") @Nullable
        Uncertain cut,

        @About("Between lines, beam off.") @Unit("mm/s") @Nullable
        Uncertain travel) {}
