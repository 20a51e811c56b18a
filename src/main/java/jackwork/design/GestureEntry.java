package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("What a part must have done by a given stroke.")
public record GestureEntry(
        @About("The part that must move.") @Names(NameKind.PART)
        String part,

        @About("The point of it that is watched; the circle with the gesture's own name when left out.")
        @OwnCircle
        @Nullable
        Place point,

        @About("How far that point must have moved, at least.")
        @Quantity(
                unit = "mm",
                least = 0.1,
                most = 1000,
                usualFrom = 2,
                usualTo = 300,
                why = "less is not seen, and nothing moves by less than nothing")
        double distance,

        @About("Direction that counts (0 right, 90 up); any when left out.")
        @Quantity(unit = "deg", least = -360, most = 360, why = "a full turn holds every direction")
        @Nullable
        Double toward,

        @About("Stroke by which it must be there; 1 when left out.")
        @Quantity(least = 0.01, most = 1, usualFrom = 0.1, why = "0 is rest, 1 the full press")
        @Nullable
        Double by) {}
