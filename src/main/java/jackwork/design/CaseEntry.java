package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The case around the coin works, from its inside. The works stand against its near wall; the coins heap up behind and
 * beneath them.
 */
@About("The case around the coin works: panels that slot together.")
public record CaseEntry(
        @About("Of its panels.") @Names(NameKind.SHEET) String stock,

        @About("Inside of the left wall, from the origin.")
        @Quantity(
                unit = "mm",
                least = -2000,
                most = 2000,
                usualFrom = -300,
                usualTo = 300,
                why = "the works stand in it")
        double left,

        @About("The floor's upper side, from the origin; negative when it lies lower.")
        @Quantity(
                unit = "mm",
                least = -2000,
                most = 2000,
                usualFrom = -300,
                usualTo = 300,
                why = "the works stand in it")
        double floor,

        @About("Inside.")
        @Quantity(
                unit = "mm",
                least = 20,
                most = 2000,
                usualFrom = 50,
                usualTo = 600,
                why = "coins and a hand's work go in, and one carries it")
        double width,

        @About("Inside, from floor to lid.")
        @Quantity(
                unit = "mm",
                least = 20,
                most = 2000,
                usualFrom = 50,
                usualTo = 600,
                why = "coins and a hand's work go in, and one carries it")
        double height,

        @About("Inside, from far to near wall.")
        @Quantity(
                unit = "mm",
                least = 20,
                most = 2000,
                usualFrom = 30,
                usualTo = 400,
                why = "coins and a hand's work go in, and one carries it")
        double depth,

        @About("How far the walls stand free of the table between their corners; 3 when left out.")
        @Quantity(unit = "mm", least = 0, most = 40, usualTo = 20, why = "feet, not legs")
        @Nullable
        Double feet,

        @About("How far its long walls reach beyond the case at the table; not at all when left out.") @Nullable
        Toes toes,

        @About("How long a tab is, about; 12 when left out.")
        @Quantity(unit = "mm", least = 8, most = 100, usualTo = 40, why = "a nut must fit between two tabs")
        @Nullable
        Double tab,

        @About("glue when left out, or screws: nuts caught in the panels, no glue.")
        @OneOf({"glue", "screws"})
        @Nullable
        String joined,

        @About("Where the cash comes out; none when left out.") @Nullable
        Door door,

        @About("Where the works are screwed to the near wall.")
        List<Place> screws) {

    private static final double USUAL_FEET = 3;
    private static final double USUAL_TAB = 12;

    @About("Feet that reach out, so that a press beside the case does not tip it.")
    public record Toes(
            @About("Beyond the left end; 0 when left out.")
            @Quantity(unit = "mm", least = 0, most = 200, usualTo = 60, why = "a foot, not a plank")
            @Nullable
            Double left,

            @About("Beyond the right end; 0 when left out.")
            @Quantity(unit = "mm", least = 0, most = 200, usualTo = 60, why = "a foot, not a plank")
            @Nullable
            Double right) {}

    @About("An opening in the far wall with a plate that a button holds.")
    public record Door(
            @About("Its lower left corner, seen from the near side.")
            Place at,

            @About("Of the opening.")
            @Quantity(unit = "mm", least = 20, most = 2000, usualTo = 400, why = "fingers go in")
            double width,

            @About("Of the opening.")
            @Quantity(unit = "mm", least = 20, most = 2000, usualTo = 400, why = "fingers go in")
            double height) {}

    /** mm. */
    public double feetOrUsual() {
        return feet == null ? USUAL_FEET : feet;
    }

    /** mm. */
    public double tabOrUsual() {
        return tab == null ? USUAL_TAB : tab;
    }

    /** mm. */
    public double toeLeft() {
        return toes == null || toes.left() == null ? 0 : toes.left();
    }

    /** mm. */
    public double toeRight() {
        return toes == null || toes.right() == null ? 0 : toes.right();
    }

    /** Whether nuts caught in the panels hold it, not glue. */
    public boolean screwed() {
        return "screws".equals(joined);
    }
}
