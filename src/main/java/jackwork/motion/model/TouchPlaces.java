package jackwork.motion.model;

/** The few nearest places between two shapes: scratch of {@link Touch}, on primitive arrays. */
final class TouchPlaces {

    int count;
    final double[] gap = new double[ModelLimits.PLACES_LOOKED_AT];
    final double[] nx = new double[ModelLimits.PLACES_LOOKED_AT];
    final double[] ny = new double[ModelLimits.PLACES_LOOKED_AT];
    final double[] x = new double[ModelLimits.PLACES_LOOKED_AT];
    final double[] y = new double[ModelLimits.PLACES_LOOKED_AT];
    final long[] feature = new long[ModelLimits.PLACES_LOOKED_AT];

    void clear() {
        count = 0;
    }

    /** Takes a place in if it is among the {@code most} nearest and not another one again. */
    void offer(
            double g,
            double normalX,
            double normalY,
            double atX,
            double atY,
            long id,
            int most,
            double samePlace,
            double sameNormal) {
        for (int k = 0; k < count; k++) {
            boolean same = nx[k] * normalX + ny[k] * normalY > sameNormal
                    && Math.abs(x[k] - atX) + Math.abs(y[k] - atY) < samePlace;
            if (same) {
                if (g < gap[k]) {
                    set(k, g, normalX, normalY, atX, atY, id);
                }
                return;
            }
        }
        if (count < most) {
            set(count++, g, normalX, normalY, atX, atY, id);
            return;
        }
        int widest = 0;
        for (int k = 1; k < count; k++) {
            if (gap[k] > gap[widest]) {
                widest = k;
            }
        }
        if (g < gap[widest]) {
            set(widest, g, normalX, normalY, atX, atY, id);
        }
    }

    private void set(int k, double g, double normalX, double normalY, double atX, double atY, long id) {
        gap[k] = g;
        nx[k] = normalX;
        ny[k] = normalY;
        x[k] = atX;
        y[k] = atY;
        feature[k] = id;
    }

    void sortByFeature() {
        for (int i = 1; i < count; i++) {
            for (int k = i; k > 0 && feature[k] < feature[k - 1]; k--) {
                double g = gap[k];
                double a = nx[k];
                double b = ny[k];
                double c = x[k];
                double d = y[k];
                long id = feature[k];
                set(k, gap[k - 1], nx[k - 1], ny[k - 1], x[k - 1], y[k - 1], feature[k - 1]);
                set(k - 1, g, a, b, c, d, id);
            }
        }
    }
}
