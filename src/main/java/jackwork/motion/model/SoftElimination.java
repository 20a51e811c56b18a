package jackwork.motion.model;

/** Solves a small dense system whose rows may repeat each other: Gauss with partial pivoting. */
final class SoftElimination {

    private SoftElimination() {}

    /**
     * @param system rows of n entries and a right-hand side, row-major, [n × (n + 1)]; the last column
     *     becomes the answer
     */
    static void solve(double[] system, int n) {
        int wide = n + 1;
        double most = 0;
        for (int r = 0; r < n; r++) {
            most = Math.max(most, Math.abs(system[r * wide + r]));
        }
        if (most == 0) {
            // Nothing moves whatever presses: no force decides anything here.
            for (int r = 0; r < n; r++) {
                system[r * wide + n] = 0;
            }
            return;
        }
        for (int k = 0; k < n; k++) {
            exchange(system, k, n);
            double pivot = system[k * wide + k];
            // A row that repeats others is taken as a little soft: contradiction then shows as a large force
            // of the right sign, and agreement as next to none.
            if (Math.abs(pivot) < ModelLimits.REPEATED_PIVOT * most) {
                pivot = Math.max(ModelLimits.REPEATED_PIVOT * most, Double.MIN_NORMAL);
                system[k * wide + k] = pivot;
            }
            for (int r = k + 1; r < n; r++) {
                double factor = system[r * wide + k] / pivot;
                if (factor != 0) {
                    for (int c = k + 1; c < wide; c++) {
                        system[r * wide + c] -= factor * system[k * wide + c];
                    }
                }
            }
        }
        for (int r = n - 1; r >= 0; r--) {
            double sum = system[r * wide + n];
            for (int c = r + 1; c < n; c++) {
                sum -= system[r * wide + c] * system[c * wide + n];
            }
            system[r * wide + n] = sum / system[r * wide + r];
        }
    }

    /** Brings the row with the greatest entry in column k into place. */
    private static void exchange(double[] system, int k, int n) {
        int wide = n + 1;
        int best = k;
        for (int r = k + 1; r < n; r++) {
            if (Math.abs(system[r * wide + k]) > Math.abs(system[best * wide + k])) {
                best = r;
            }
        }
        for (int c = k; c < wide && best != k; c++) {
            double swap = system[k * wide + c];
            system[k * wide + c] = system[best * wide + c];
            system[best * wide + c] = swap;
        }
    }
}
