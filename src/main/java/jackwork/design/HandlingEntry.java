package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/** What the workshop says of {@link Handling}. */
@About("How pieces are used, and what the drawings do not say of them; what is absent is guessed.")
public record HandlingEntry(
        @About("Of the finger on the lever.")
        @Quantity(
                unit = "mm/s",
                least = 1,
                most = 5000,
                usualFrom = 10,
                usualTo = 1000,
                why = "slower is no press, faster is a blow")
        @Nullable
        Uncertain pressSpeed,

        @About("Of the coin when it is let go.")
        @Quantity(unit = "mm/s", least = 0, most = 5000, usualTo = 600, why = "a coin is let go, not thrown")
        @Nullable
        Uncertain dropSpeed,

        @About("Of the table, in the mechanism's plane.")
        @Quantity(unit = "deg", least = -45, most = 45, usualFrom = -6, usualTo = 6, why = "pieces stand on it")
        @Nullable
        Uncertain tilt,

        @About("Share of a coin's speed that comes back from wood.")
        @Quantity(least = 0, most = 0.95, usualTo = 0.7, why = "nothing jumps back as fast as it came")
        @Nullable
        Uncertain rebound,

        @About("Of coins in circulation, as a share of a new one's.")
        @Quantity(
                least = 0.5,
                most = 1.5,
                usualFrom = 0.9,
                usualTo = 1.05,
                usualSpread = 0.3,
                mostSpread = 0.8,
                why = "coins wear by some percent")
        @Nullable
        Uncertain coinMass,

        @About("Of the wood, of its dry mass.")
        @Quantity(
                unit = "%",
                least = 0,
                most = 60,
                usualFrom = 3,
                usualTo = 20,
                why = "wood that is drier than dry does not exist, wetter is not worked")
        @Nullable
        Uncertain moisture,

        @About("Paint or varnish on both faces together.")
        @Quantity(unit = "g/m²", least = 0, most = 5000, usualTo = 600, why = "paint adds weight")
        @Nullable
        Uncertain finish,

        @About("That a piece has behind it.")
        @Quantity(least = 0, most = 10000000, usualTo = 200000, why = "it was pressed so often")
        @Nullable
        Uncertain presses,

        @About("Moment that turns a bearing while it bears nothing: layers that rub, paint or glue in its hole.")
        @Quantity(unit = "N·mm", least = 0, most = 1000, usualTo = 20, why = "what drags more is stuck")
        @Nullable
        Uncertain drag) {}
