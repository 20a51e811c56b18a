package jackwork.bench;

import jackwork.design.WorkshopSplice;
import jackwork.stock.Uncertain;
import java.util.List;

/** Slopes at which one thing slid off another ({@link FrictionBySlope}). */
final class FrictionForm implements Form {

    @Override
    public String kind() {
        return "friction";
    }

    @Override
    public List<String> names() {
        return List.of("slope", "step");
    }

    @Override
    public void check(Measured measured) {
        surfaces(measured.about());
        Forms.requireStep(measured);
        FrictionBySlope.check(measured.all("slope"));
    }

    @Override
    public Uncertain of(List<Measured> same) {
        return FrictionBySlope.of(Forms.all(same, "slope"), Forms.coarsest(same, m -> m.one("step")));
    }

    @Override
    public String place(String about) {
        return "friction of " + String.join(" on ", surfaces(about));
    }

    @Override
    public String edit(String workshop, String about, Uncertain value) {
        List<String> surfaces = surfaces(about);
        return WorkshopSplice.friction(workshop, surfaces.get(0), surfaces.get(1), value);
    }

    /** {@code coin,wood}. */
    static List<String> surfaces(String about) {
        if (!about.matches("[a-z][a-z0-9-]*,[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException(
                    "read \"" + about + "\", expected two surfaces as `jackwork stock` names them, as in coin,wood");
        }
        return List.of(about.split(","));
    }
}
