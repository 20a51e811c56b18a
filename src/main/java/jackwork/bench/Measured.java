package jackwork.bench;

import java.util.List;

/**
 * Something measured at the bench, as it was read.
 *
 * @param kind of {@link Forms}
 * @param about two surfaces, a sheet, a rod; empty for kerf
 */
public record Measured(Stamp stamp, String kind, String about, List<Reading> readings) implements Stamped {

    public Measured {
        Texts.require("about", about, 0, 120);
        if (readings.isEmpty() || readings.size() > 1000) {
            throw new IllegalArgumentException(readings.size() + " readings, expected 1 to 1000");
        }
        readings = List.copyOf(readings);
    }

    /** All of one name, in order. */
    double[] all(String name) {
        return readings.stream()
                .filter(reading -> reading.name().equals(name))
                .mapToDouble(Reading::value)
                .toArray();
    }

    /** The only one of its name. */
    double one(String name) {
        double[] found = all(name);
        if (found.length != 1) {
            throw new IllegalArgumentException(
                    kind + " has " + found.length + " readings called " + name + ", expected one");
        }
        return found[0];
    }
}
