package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("A pawl and the ratchet wheel that it drives or holds.")
public record PawlEntry(
        @About("The pawl and the centre of its rounded tip.")
        PointOf tip,

        @About("Of the rounding.")
        @Quantity(
                unit = "mm",
                least = 0.1,
                most = 20,
                usualTo = 5,
                why = "a point breaks off, a ball does not enter the teeth")
        double tipRadius,

        @About("The ratchet; its outline is made from its teeth.")
        @Names(value = NameKind.PART, whose = Names.Whose.OWN, shapes = true)
        String wheel,

        @About("The ratchet's centre; the circle with the pawl's own name when left out.") @OwnCircle @Nullable
        Place at,

        @About("Number of teeth.")
        @Quantity(
                least = 3,
                most = 200,
                usualFrom = 6,
                usualTo = 60,
                why = "fewer make no wheel, more are too fine to cut")
        int teeth,

        @About("Over the teeth's tips.")
        @Quantity(
                unit = "mm",
                least = 3,
                most = 300,
                usualFrom = 6,
                usualTo = 80,
                why = "a wheel needs room for its axle, and must fit on a figure")
        double radius,

        @About("Of the teeth.")
        @Quantity(
                unit = "mm",
                least = 0.3,
                most = 30,
                usualFrom = 1,
                usualTo = 10,
                why = "shallower ones slip, deeper ones leave no wheel")
        double depth,

        @About("Whether the pawl drives (or lets) it turn clockwise.") @Nullable
        Boolean clockwise,

        @About("Direction of the first tooth's tip from the centre; 0 when left out.")
        @Quantity(unit = "deg", least = -360, most = 360, why = "a full turn holds every direction")
        @Nullable
        Double first)
        implements JointEntry {

    @Override
    public void check(String path, Around around) {
        if (!(radius > depth)) {
            around.problem(path + ".radius", "read " + radius + ", expected more than the teeth's depth");
        }
    }
}
