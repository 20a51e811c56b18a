package jackwork.check;

import static java.util.Map.entry;

import jackwork.stock.Basis;
import java.util.List;
import java.util.Map;

/** The one short measurement that would settle most of a doubt. */
public final class Measurement {

    /** How a maker measures a number, by the first word of its name. */
    private static final Map<String, String> HOW = Map.ofEntries(
            entry("friction", "lay one on the other and tilt until it slides; the slope's tangent is the coefficient"),
            entry(
                    "grip",
                    "tilt one on the other until it slides, then find the slope on which, once pushed, it goes on sliding; it is"
                            + " the one slope's tangent over the other's"),
            entry("drag", "hang grams on a long arm of the finished joint, level, until it starts to turn"),
            entry("warp", "lay a rule across the sheet and gauge what is under it over the length of the part"),
            entry("roundness", "turn the rod between the jaws of a calliper"),
            entry("weight", "put it on a letter scale"),
            entry("thickness", "put a calliper on the sheet, in five places"),
            entry("density", "weigh a cut rectangle of known size"),
            entry("mass", "weigh ten together"),
            entry("kerf", "cut a square of known size and measure what comes out"),
            entry("diameter", "put a calliper on ten of them, two ways across each"),
            entry("printed", "print a hole of known size and measure what comes out"),
            entry("press", "try rods in a row of holes that grow by 0.05 mm"),
            entry("running", "try rods in a row of holes that grow by 0.05 mm"),
            entry("comfortable", "press a kitchen scale and see what feels light"),
            entry("strongest", "let the strongest visitor press a scale"),
            entry("rebound", "drop a coin on it from 100 mm; the share is the root of how much of that it comes back"),
            entry("tilt", "lay a level on the tables where it will stand"),
            entry("wear,", "press one a thousand times and gauge its holes again"),
            entry("speed", "film it beside a rule, and count pictures from mark to mark"),
            entry("moisture", "hold a moisture meter to the sheet, or weigh an offcut now and once it is dried"),
            entry("paint", "weigh a square of known size before it is painted, and when it is dry"),
            entry("length", "hang a weight on a metre of it, dry and damp, and hold a rule to it"),
            entry("place", "put a calliper on how far its edge stands from where it is drawn"),
            entry("strength", "press a kitchen scale as the lever would be pressed"));

    private Measurement() {}

    /** A sentence, or nothing when all that matters is measured here already. */
    static String toSettle(List<Ground> grounds) {
        return grounds.stream()
                .filter(ground -> ground.number().basis() != Basis.MEASURED)
                .findFirst()
                .map(ground -> " " + first(ground.name()))
                .orElse("");
    }

    /** The sentence for one number. */
    public static String first(String name) {
        return "Measure the " + name + " first: " + how(name) + ".";
    }

    private static String how(String name) {
        return how(name.split(" ")[0], "it moves this answer most");
    }

    /**
     * How a number is measured.
     *
     * @param word that its name begins with
     * @param otherwise where we know no way
     */
    public static String how(String word, String otherwise) {
        return HOW.getOrDefault(word, otherwise);
    }
}
