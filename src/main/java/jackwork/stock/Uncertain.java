package jackwork.stock;

/**
 * A number with the interval that is believed to hold it 95 times in 100.
 *
 * @param value the number used when no spread is asked for
 * @param low lower end of the interval
 * @param high upper end
 * @param unit of all three; {@code 1} for a pure number
 * @param basis measured here, published, or a guess
 * @param source where it comes from, for people
 */
public record Uncertain(double value, double low, double high, String unit, Basis basis, String source) {

    public Uncertain {
        if (!Double.isFinite(value) || !Double.isFinite(low) || !Double.isFinite(high)) {
            throw new IllegalArgumentException(
                    "value " + value + ", low " + low + ", high " + high + ": all three must be finite numbers");
        }
        if (low > value || value > high) {
            throw new IllegalArgumentException("value " + value + " must lie between low " + low + " and high " + high);
        }
    }

    /** A number without spread, as published. */
    public static Uncertain exact(double value, String unit, String source) {
        return new Uncertain(value, value, value, unit, Basis.PUBLISHED, source);
    }
}
