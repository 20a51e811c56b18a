package jackwork.bench;

import jackwork.stock.Uncertain;
import java.util.Arrays;

/**
 * One thing lies on another, which is tilted until it slides: at that slope α friction holds no more, {@code µ = tan α}
 * (any text on statics). What slides off slowly reads better than what is shaken.
 */
public final class FrictionBySlope {

    private FrictionBySlope() {}

    /**
     * @param slopes degrees, at least two, between 0 and 80
     * @param resolution of the angle, degrees
     * @return the coefficient; its interval does not go below 0
     * @throws IllegalArgumentException when a slope is out of its range or there are too few
     */
    public static Uncertain of(double[] slopes, double resolution) {
        check(slopes);
        double[] tangents =
                Arrays.stream(slopes).map(a -> Math.tan(Math.toRadians(a))).toArray();
        double mean = Arrays.stream(slopes).average().orElse(0);
        // d tan α = dα / cos² α
        double step = Math.toRadians(resolution) / Math.pow(Math.cos(Math.toRadians(mean)), 2);
        Uncertain read = Readings.of(tangents, step, "1", "tilted until it slid");
        return new Uncertain(
                read.value(), Math.max(0, read.low()), read.high(), read.unit(), read.basis(), read.source());
    }

    static void check(double[] slopes) {
        for (double slope : slopes) {
            if (!(slope > 0 && slope < 80)) {
                throw new IllegalArgumentException(
                        "a slope reads " + slope + " degrees, expected more than 0 and less than 80");
            }
        }
    }
}
