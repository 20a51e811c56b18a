package jackwork.builds;

/**
 * A number that the maker leaves to tuning.
 *
 * @param path in the design's {@code change}: {@code box.lever.throw}
 */
public record FreeNumber(String path, double low, double high) {

    /** Whether it counts things. */
    boolean isCount() {
        return path.endsWith(".count");
    }

    /** The nearest value it may have. */
    double at(double value) {
        double within = Math.max(low, Math.min(high, value));
        return isCount() ? Math.rint(within) : Math.rint(within * 100) / 100;
    }
}
