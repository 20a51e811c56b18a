package jackwork.motion.model;

/**
 * A function by its values and slopes at even steps: cubic between them (Hermite; smooth with its first derivative),
 * a straight line beyond the ends. Immutable.
 */
final class EvenTable {

    private final double from;
    private final double step;
    private final double[] value;
    /** Per step. */
    private final double[] rise;

    /**
     * @param from where the first value stands
     * @param step between values, of either sign
     * @param slope by the argument, as many as values
     */
    EvenTable(double from, double step, double[] value, double[] slope) {
        this.from = from;
        this.step = step;
        this.value = value.clone();
        this.rise = new double[slope.length];
        for (int i = 0; i < rise.length; i++) {
            rise[i] = slope[i] * step;
        }
    }

    /** With slopes by differences of second order, one-sided at the ends. */
    static EvenTable of(double from, double step, double[] value) {
        int last = value.length - 1;
        double[] slope = new double[value.length];
        for (int i = 1; i < last; i++) {
            slope[i] = (value[i + 1] - value[i - 1]) / (2 * step);
        }
        slope[0] = (4 * value[1] - 3 * value[0] - value[2]) / (2 * step);
        slope[last] = (3 * value[last] - 4 * value[last - 1] + value[last - 2]) / (2 * step);
        return new EvenTable(from, step, value, slope);
    }

    double at(double x) {
        double t = (x - from) / step;
        int last = value.length - 1;
        if (t <= 0) {
            return value[0] + rise[0] * t;
        }
        if (t >= last) {
            return value[last] + rise[last] * (t - last);
        }
        int i = (int) t;
        double s = t - i;
        double difference = value[i + 1] - value[i];
        double bend = rise[i] + rise[i + 1] - 2 * difference;
        return value[i] + s * (rise[i] + s * (3 * difference - 2 * rise[i] - rise[i + 1] + s * bend));
    }

    double slope(double x) {
        double t = (x - from) / step;
        int last = value.length - 1;
        if (t <= 0 || t >= last) {
            return (t <= 0 ? rise[0] : rise[last]) / step;
        }
        int i = (int) t;
        double s = t - i;
        double difference = value[i + 1] - value[i];
        double bend = rise[i] + rise[i + 1] - 2 * difference;
        return (rise[i] + s * (2 * (3 * difference - 2 * rise[i] - rise[i + 1]) + 3 * s * bend)) / step;
    }
}
