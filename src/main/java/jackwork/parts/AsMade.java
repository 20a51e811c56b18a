package jackwork.parts;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How holes and rods come out of one workshop's hands, against what they are bored for: mm of diameter, all 0 but
 * {@code off} for a piece as numbered.
 *
 * @param running running fit beyond the workshop's
 * @param press press fit beyond the workshop's
 * @param kerf beyond the workshop's: no part is drawn for it
 * @param off how far a printed face stands out from where it was drawn; nothing is drawn for that either
 * @param worn by which running holes have grown in use
 * @param rods how much thicker a rod is than the workshop's number, by its name
 */
public record AsMade(double running, double press, double kerf, double off, double worn, Map<String, Double> rods) {

    /** As the workshop numbers it, fresh from the bench. */
    static AsMade asNumbered(double off) {
        return new AsMade(0, 0, 0, off, 0, Map.of());
    }

    double rod(String name) {
        return rods.getOrDefault(name, 0.0);
    }

    AsMade withRunning(double beyond) {
        return new AsMade(beyond, press, kerf, off, worn, rods);
    }

    AsMade withPress(double beyond) {
        return new AsMade(running, beyond, kerf, off, worn, rods);
    }

    AsMade withKerf(double beyond) {
        return new AsMade(running, press, beyond, off, worn, rods);
    }

    AsMade withOff(double standsOut) {
        return new AsMade(running, press, kerf, standsOut, worn, rods);
    }

    AsMade withWorn(double grown) {
        return new AsMade(running, press, kerf, off, grown, rods);
    }

    AsMade withRod(String name, double thicker) {
        Map<String, Double> others = new LinkedHashMap<>(rods);
        others.put(name, thicker);
        return new AsMade(running, press, kerf, off, worn, Map.copyOf(others));
    }
}
