package jackwork.check;

import jackwork.parts.Assembly;
import jackwork.parts.Variation;
import jackwork.stock.Uncertain;
import java.util.function.DoubleUnaryOperator;

/**
 * What the room in their holes lets lever and bucket shift against each other, and margins that this takes from: tooth on
 * strut, kicker at the lip. Each body shifts by half the clearance of its hole to either side.
 */
final class PivotPlay {

    private PivotPlay() {}

    /** Of lever and bucket together, mm. */
    static double of(Assembly assembly) {
        return assembly.bucketBearing().play() + assembly.leverBearing().play();
    }

    /**
     * What is left of a length once the play is taken from it, with all that decides the holes. Kerf moves edges too.
     *
     * @param clear mm
     * @param perKerf by which it grows for each mm that the kerf is wider, by the edges that it lies between
     */
    static Spread spread(Assembly assembly, double clear, double perKerf) {
        double kerf = assembly.workshop().laser().kerf().value();
        return spread(assembly, clear, value -> clear + perKerf * (value - kerf));
    }

    /** @param clearAt the length with another kerf */
    static Spread spread(Assembly assembly, double clear, DoubleUnaryOperator clearAt) {
        Spread spread = new Spread(clear - of(assembly));
        for (Variation variation : Variation.ofHoles(assembly, false)) {
            boolean isKerf = variation.name().equals(Variation.KERF);
            Uncertain number = variation.number();
            spread.add(
                    variation.name(),
                    number,
                    value -> (isKerf ? clearAt.applyAsDouble(value) : clear)
                            - of(variation.with().apply(assembly, value)));
        }
        return spread;
    }
}
