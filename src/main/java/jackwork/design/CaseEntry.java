package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The case around the coin works, from its inside. The works stand against its near wall; the coins heap up behind and
 * beneath them.
 *
 * @param stock of its panels
 * @param left inside of the left wall, from the origin
 * @param floor the floor's upper side, from the origin; negative when it lies lower
 * @param width inside
 * @param height inside, from floor to lid
 * @param depth inside, from far to near wall
 * @param feet how far the walls stand free of the table between their corners; 3 when absent
 * @param tab how long a tab is, about; 12 when absent
 * @param joined {@code glue} when absent, or {@code screws}: nuts caught in the panels, no glue
 * @param door where the cash comes out; none when absent
 * @param screws where the works are screwed to the near wall, so that they come out for service
 */
@About("The case around the coin works: panels that slot together.")
public record CaseEntry(
        String stock,
        @Unit("mm") double left,
        @Unit("mm") double floor,
        @Unit("mm") double width,
        @Unit("mm") double height,
        @Unit("mm") double depth,
        @Unit("mm") @Nullable Double feet,
        @Unit("mm") @Nullable Double tab,
        @Nullable String joined,
        @Nullable Door door,
        List<Place> screws) {

    /** Ways to hold the panels together. */
    static final List<String> JOINED = List.of("glue", "screws");

    private static final double USUAL_FEET = 3;
    private static final double USUAL_TAB = 12;

    /**
     * An opening in the far wall with a plate that a button holds.
     *
     * @param at its lower left corner, seen from the near side
     */
    public record Door(
            Place at, @Unit("mm") double width, @Unit("mm") double height) {}

    /** mm. */
    public double feetOrUsual() {
        return feet == null ? USUAL_FEET : feet;
    }

    /** mm. */
    public double tabOrUsual() {
        return tab == null ? USUAL_TAB : tab;
    }

    /** Whether nuts caught in the panels hold it, not glue. */
    public boolean screwed() {
        return "screws".equals(joined);
    }

    void check(WorkshopFile workshop, jackwork.drawing.Drawing drawing, YamlFile yaml) {
        References.known("case.stock", stock, workshop.sheets().keySet(), "a sheet of workshop.yaml", yaml);
        size("case.width", width, yaml);
        size("case.height", height, yaml);
        size("case.depth", depth, yaml);
        if (!(feetOrUsual() >= 0 && feetOrUsual() < 100)) {
            yaml.problem("case.feet", "read " + feet + ", expected 0 to 100 mm");
        }
        if (!(tabOrUsual() >= 8 && tabOrUsual() <= 100)) {
            yaml.problem("case.tab", "read " + tab + ", expected 8 to 100 mm: a nut must fit between two tabs");
        }
        if (joined != null) {
            References.known("case.joined", joined, JOINED, "glue or screws", yaml);
        }
        if (door != null) {
            References.place("case.door.at", door.at(), "", drawing, yaml);
            size("case.door.width", door.width(), yaml);
            size("case.door.height", door.height(), yaml);
        }
        for (int i = 0; i < screws.size(); i++) {
            References.place("case.screws." + i, screws.get(i), "", drawing, yaml);
        }
    }

    private static void size(String path, double value, YamlFile yaml) {
        if (!(value >= 20 && value <= 2000)) {
            yaml.problem(path, "read " + value + ", expected 20 to 2000 mm");
        }
    }
}
