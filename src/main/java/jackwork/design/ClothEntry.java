package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("A piece of cloth on a figure: its pattern is printed, and it is checked to be long enough.")
public record ClothEntry(
        @About("The part that carries it, for whoever sews; need not be said.")
        @Names(value = NameKind.PART, whose = Names.Whose.OWN)
        @Nullable
        String on,

        @About("Its closed outline in the drawing, as it is once sewn.") @Names(NameKind.OUTLINE)
        String outline,

        @About("Beyond the seam; 6 when left out.")
        @Quantity(unit = "mm", least = 0, most = 100, usualTo = 30, why = "it is turned under")
        @Nullable
        Double hem,

        @About("Direction of its threads, counter-clockwise from the right; 90 when left out.")
        @Quantity(unit = "deg", least = -360, most = 360, why = "a full turn holds every direction")
        @Nullable
        Double grain,

        @About("Where it is fixed to a part.") @Nullable PointOf from,

        @About("Where else it is fixed, to the same part or another.") @Nullable
        PointOf to,

        @About("Of cloth between the two; as drawn when left out.")
        @Quantity(unit = "mm", least = 1, most = 5000, usualTo = 600, why = "a cape, not a curtain")
        @Nullable
        Double length)
        implements Entry {

    private static final double USUAL_HEM = 6;
    private static final double UP = 90;

    /** mm. */
    public double hemOrUsual() {
        return hem == null ? USUAL_HEM : hem;
    }

    /** Degrees. */
    public double grainOrUsual() {
        return grain == null ? UP : grain;
    }

    @Override
    public void check(String path, Around around) {
        if ((from == null) != (to == null)) {
            around.problem(path, "expected both from and to, or neither");
        }
        tie(path + ".from", from, around);
        tie(path + ".to", to, around);
    }

    private static void tie(String path, @Nullable PointOf tie, Around around) {
        if (tie != null && !around.works().parts().containsKey(tie.part())) {
            around.problem(
                    path + ".part",
                    "read \"" + tie.part() + "\", expected a part of this file"
                            + NearestWord.hint(
                                    tie.part(), around.works().parts().keySet()));
        }
    }
}
