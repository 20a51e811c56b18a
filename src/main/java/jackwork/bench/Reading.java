package jackwork.bench;

/**
 * @param name what was read: {@code slope}
 * @param value in the unit that its form says
 */
public record Reading(String name, double value) {

    public Reading {
        if (!name.matches("[a-z][a-z-]{0,30}") || !Double.isFinite(value)) {
            throw new IllegalArgumentException("read " + name + "=" + value + ", expected a name and a number");
        }
    }
}
