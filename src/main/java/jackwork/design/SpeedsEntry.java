package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/** What the workshop says of {@link Speeds}. */
@About("How fast the laser's head moves; what is absent is guessed.")
public record SpeedsEntry(
        @About("Along an engraved line.")
        @Quantity(
                unit = "mm/s",
                least = 0.1,
                most = 20000,
                usualFrom = 5,
                usualTo = 2000,
                why = "a head that stands still does nothing")
        @Nullable
        Uncertain engrave,

        @About("Through this workshop's usual sheets.")
        @Quantity(
                unit = "mm/s",
                least = 0.05,
                most = 2000,
                usualFrom = 0.5,
                usualTo = 200,
                why = "a head that stands still burns, one too fast does not cut through")
        @Nullable
        Uncertain cut,

        @About("Between lines, beam off.")
        @Quantity(
                unit = "mm/s",
                least = 1,
                most = 50000,
                usualFrom = 20,
                usualTo = 5000,
                why = "a head that stands still does nothing")
        @Nullable
        Uncertain travel) {}
