package jackwork.price;

/**
 * Work of the hands as timed at the bench.
 *
 * @param minutes for one piece; for the batch, where it is done once a batch
 * @param low the quickest of them
 * @param high the slowest of them
 * @param source where they were timed, for people
 */
public record Timed(double minutes, double low, double high, String source) {

    /** As the maker says it. */
    public static Timed said(double minutes, String source) {
        return new Timed(minutes, minutes, minutes, source);
    }

    Timed times(double share) {
        return new Timed(minutes * share, low * share, high * share, source);
    }
}
