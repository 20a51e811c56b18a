package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("A bar with teeth on which a gear rolls.")
public record RackEntry(
        @About("The gear that rolls on it.") @Names(NameKind.GEAR)
        String gear,

        @About("The bar; gaps between its teeth are cut from its outline.")
        @Names(value = NameKind.PART, whose = Names.Whose.OWN)
        String part,

        @About("Direction from the gear's centre to the bar (0 right, 90 up).")
        @Quantity(unit = "deg", least = -360, most = 360, why = "a full turn holds every direction")
        double toward,

        @About("Size of the teeth.")
        @Quantity(
                unit = "mm",
                least = 0.3,
                most = 20,
                usualFrom = 0.8,
                usualTo = 6,
                why = "finer teeth burn away, coarser ones are no teeth on a figure")
        double module,

        @About("Number cut on either side of the place of touch.")
        @Quantity(least = 1, most = 200, usualTo = 60, why = "it needs one to roll on")
        int teeth,

        @About("20 when left out.")
        @Quantity(
                unit = "deg",
                least = 10,
                most = 35,
                usualFrom = 14.5,
                usualTo = 30,
                why = "teeth are undercut below, pointed above")
        @Nullable
        Double pressureAngle)
        implements JointEntry {

    @Override
    public void check(String path, Around around) {
        TeethAgree.check(this, path, around);
    }
}
