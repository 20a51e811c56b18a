package jackwork.motion;

/** Linear equations for tests that must not use the engine's own solver. */
public final class Elimination {

    private Elimination() {}

    /**
     * Gauss and Jordan's elimination, the largest pivot of each column.
     *
     * @param a n rows of n coefficients and a right-hand side; overwritten
     * @return NaN or infinite where there is no pivot
     */
    public static double[] solved(double[][] a) {
        int n = a.length;
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k + 1; i < n; i++) {
                best = Math.abs(a[i][k]) > Math.abs(a[best][k]) ? i : best;
            }
            double[] swap = a[k];
            a[k] = a[best];
            a[best] = swap;
            for (int i = 0; i < n; i++) {
                double factor = i == k ? 0 : a[i][k] / a[k][k];
                for (int j = k; j <= n && factor != 0; j++) {
                    a[i][j] -= factor * a[k][j];
                }
            }
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = a[i][n] / a[i][i];
        }
        return x;
    }
}
