package jackwork.design;

import jackwork.geometry.Point;
import java.util.List;
import java.util.Optional;
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

    /** Where no pressure angle is written, of a mesh or a rack, degrees. */
    public static final double USUAL_ANGLE = 20;

    /** Centres that are drawn as near as this are one, mm. */
    private static final double ONE = 0.01;

    @Override
    public void check(String path, Around around) {
        if (between.size() != 2) {
            around.problem(path + ".between", "read " + between.size() + " names, expected two gears");
        } else if (between.get(0).equals(between.get(1))) {
            around.problem(
                    path + ".between",
                    "read \"" + between.get(0) + "\" twice, expected two gears: none runs in itself; name its mate");
        } else {
            checkCentres(path, around);
            TeethAgree.check(this, path, around);
        }
    }

    /** Whether it names two gears; one that does not is said where it stands. */
    boolean isPair() {
        return between.size() == 2 && !between.get(0).equals(between.get(1));
    }

    private void checkCentres(String path, Around around) {
        Optional<Point> a = around.centre(between.get(0));
        Optional<Point> b = around.centre(between.get(1));
        if (a.isPresent() && b.isPresent() && a.get().distance(b.get()) < ONE) {
            around.problem(
                    path + ".between",
                    "read \"" + between.get(0) + "\" and \"" + between.get(1)
                            + "\", which have one centre, so that no teeth fit between; expected two that stand apart: move one of them, its `at` or its"
                            + " circle in the drawing");
        }
    }
}
