package jackwork.check;

/** Where an array that may hold NaN (not computed) is least or greatest. */
final class Extremes {

    private Extremes() {}

    /** Index of the least number; 0 when there is none. */
    static int least(double[] values) {
        int at = 0;
        for (int i = 1; i < values.length; i++) {
            if (values[i] < values[at] || Double.isNaN(values[at])) {
                at = i;
            }
        }
        return at;
    }

    /** Index of the greatest number; 0 when there is none. */
    static int greatest(double[] values) {
        int at = 0;
        for (int i = 1; i < values.length; i++) {
            if (values[i] > values[at] || Double.isNaN(values[at])) {
                at = i;
            }
        }
        return at;
    }
}
