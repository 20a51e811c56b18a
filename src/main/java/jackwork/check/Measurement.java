package jackwork.check;

import jackwork.stock.Basis;
import java.util.List;
import java.util.Map;

/** The one short measurement that would settle most of a doubt. */
final class Measurement {

    /** How a maker measures a number, by the first word of its name. */
    private static final Map<String, String> HOW = Map.of(
            "friction", "lay one on the other and tilt until it slides; the slope's tangent is the coefficient",
            "thickness", "put a calliper on the sheet, in five places",
            "density", "weigh a cut rectangle of known size",
            "mass", "weigh ten together",
            "kerf", "cut a square of known size and measure what comes out",
            "running", "try rods in a row of holes that grow by 0.05 mm",
            "comfortable", "press a kitchen scale and see what feels light",
            "strongest", "let the strongest visitor press a scale");

    private Measurement() {}

    /** A sentence, or nothing when all that matters is measured here already. */
    static String toSettle(List<Ground> grounds) {
        return grounds.stream()
                .filter(ground -> ground.number().basis() != Basis.MEASURED)
                .findFirst()
                .map(ground -> " Measure the " + ground.name() + " first: " + how(ground.name()) + ".")
                .orElse("");
    }

    private static String how(String name) {
        String how = HOW.get(name.split(" ")[0]);
        return how == null ? "it moves this answer most" : how;
    }
}
