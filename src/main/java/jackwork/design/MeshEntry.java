package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

@About("Two gears whose teeth run in each other.")
public record MeshEntry(
        @About("Two gears; the module follows from their distance and teeth.") @Names(NameKind.GEAR)
        List<String> between,

        @About("20 when left out.")
        @Quantity(
                unit = "deg",
                least = 10,
                most = 35,
                usualFrom = 14.5,
                usualTo = 30,
                why = "teeth are undercut below, pointed above")
        @Nullable
        Double pressureAngle,

        @About("Taken off each tooth; 0.1 when left out.")
        @Quantity(
                unit = "mm",
                least = 0,
                most = 2,
                usualFrom = 0.02,
                usualTo = 0.6,
                why = "less than nothing lets the teeth dig into each other")
        @Nullable
        Double play)
        implements JointEntry {

    @Override
    public void check(String path, Around around) {
        if (between.size() != 2 || between.get(0).equals(between.get(1))) {
            around.problem(path + ".between", "expected two gears");
        }
    }
}
