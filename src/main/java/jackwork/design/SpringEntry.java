package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("A spring or an elastic band between two parts.")
public record SpringEntry(
        @About("Where one end is held.") PointOf from,

        @About("Where the other is held.") PointOf to,

        @About("How much harder it pulls for each mm.")
        @Quantity(
                unit = "N/mm",
                least = 0.0001,
                most = 100,
                usualFrom = 0.002,
                usualTo = 5,
                why = "softer ones do nothing, harder ones no finger moves")
        double stiffness,

        @About("Length at which it bears nothing.")
        @Quantity(unit = "mm", least = 0, most = 1000, usualTo = 300, why = "no length is less than 0")
        double free,

        @About("true for an elastic band, which only pulls.") @Nullable
        Boolean band)
        implements JointEntry {}
