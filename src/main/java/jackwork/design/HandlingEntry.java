package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/** What the workshop says of {@link Handling}. */
@About("How pieces are used, and what the drawings do not say of them; what is absent is guessed.")
public record HandlingEntry(
        @About("Of the finger on the lever.") @Unit("mm/s") @Nullable
        Uncertain pressSpeed,

        @About("Of the coin when it is let go.") @Unit("mm/s") @Nullable
        Uncertain dropSpeed,

        @About("Of the table, in the mechanism's plane.") @Unit("deg") @Nullable
        Uncertain tilt,

        @About("Share of a coin's speed that comes back from wood.") @Unit("1") @Nullable
        Uncertain rebound,

        @About("Of coins in circulation, as a share of a new one's.") @Unit("1") @Nullable
        Uncertain coinMass,

        @About("Of the wood, of its dry mass.") @Unit("%") @Nullable
        Uncertain moisture,

        @About("Paint or varnish on both faces together.") @Unit("g/m²") @Nullable
        Uncertain finish,

        @About("That a piece has behind it.") @Unit("1") @Nullable
        Uncertain presses) {}
