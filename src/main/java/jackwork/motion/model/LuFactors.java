package jackwork.motion.model;

/**
 * LU factors of a small sparse square matrix, {@code P A = L U} with partial pivoting.
 *
 * <p>The matrices here are about 20 to 60 wide with some six entries a row, so rows are stored in
 * full but only their entries are touched: for each pivot row the columns that hold something are
 * listed once, and rows with nothing below the pivot are passed over. Nothing is allocated after
 * construction.
 */
public final class LuFactors {

    private final int n;
    /** [n × n], row-major; rows are exchanged by {@code row} only. */
    private final double[] a;
    /** row[k]: where the k-th row after pivoting starts in {@code a}. */
    private final int[] row;

    private final int[] filled;
    private final double[] work;
    private int sign;
    private double logAbsDeterminant;

    public LuFactors(int n) {
        this.n = n;
        this.a = new double[n * n];
        this.row = new int[n];
        this.filled = new int[n];
        this.work = new double[n];
    }

    /** Takes all entries back to zero. */
    public void clear() {
        java.util.Arrays.fill(a, 0);
        for (int i = 0; i < n; i++) {
            row[i] = i * n;
        }
    }

    /** Before {@link #factor}: adds to the entry in row i, column j. */
    public void add(int i, int j, double value) {
        a[i * n + j] += value;
    }

    /** Before {@link #factor}: the entry in row i, column j. */
    double entry(int i, int j) {
        return a[i * n + j];
    }

    /** @return false when the matrix is singular to working precision */
    public boolean factor() {
        sign = 1;
        logAbsDeterminant = 0;
        for (int k = 0; k < n; k++) {
            int best = k;
            double most = Math.abs(a[row[k] + k]);
            for (int i = k + 1; i < n; i++) {
                double size = Math.abs(a[row[i] + k]);
                if (size > most) {
                    most = size;
                    best = i;
                }
            }
            if (!(most > 1e-13)) {
                sign = 0;
                logAbsDeterminant = Double.NEGATIVE_INFINITY;
                return false;
            }
            if (best != k) {
                int swap = row[k];
                row[k] = row[best];
                row[best] = swap;
                sign = -sign;
            }
            eliminateBelow(k);
        }
        return true;
    }

    private void eliminateBelow(int k) {
        int rk = row[k];
        double pivot = a[rk + k];
        if (pivot < 0) {
            sign = -sign;
        }
        logAbsDeterminant += Math.log(Math.abs(pivot));
        int count = 0;
        for (int j = k + 1; j < n; j++) {
            if (a[rk + j] != 0) {
                filled[count++] = j;
            }
        }
        for (int i = k + 1; i < n; i++) {
            int ri = row[i];
            double below = a[ri + k];
            if (below == 0) {
                continue;
            }
            double factor = below / pivot;
            a[ri + k] = factor;
            for (int c = 0; c < count; c++) {
                int j = filled[c];
                a[ri + j] -= factor * a[rk + j];
            }
        }
    }

    /** Solves A x = b; {@code b} is replaced by x. */
    public void solve(double[] b) {
        for (int i = 0; i < n; i++) {
            work[i] = b[row[i] / n];
        }
        for (int i = 0; i < n; i++) {
            double sum = work[i];
            int ri = row[i];
            for (int j = 0; j < i; j++) {
                sum -= a[ri + j] * work[j];
            }
            work[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = work[i];
            int ri = row[i];
            for (int j = i + 1; j < n; j++) {
                sum -= a[ri + j] * work[j];
            }
            work[i] = sum / a[ri + i];
        }
        System.arraycopy(work, 0, b, 0, n);
    }

    /** Solves Aᵀ x = b; {@code b} is replaced by x. */
    void solveTransposed(double[] b) {
        for (int i = 0; i < n; i++) {
            double sum = b[i];
            for (int j = 0; j < i; j++) {
                sum -= a[row[j] + i] * work[j];
            }
            work[i] = sum / a[row[i] + i];
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = work[i];
            for (int j = i + 1; j < n; j++) {
                sum -= a[row[j] + i] * work[j];
            }
            work[i] = sum;
        }
        for (int i = 0; i < n; i++) {
            b[row[i] / n] = work[i];
        }
    }

    /** −1, 0 or 1. */
    public int determinantSign() {
        return sign;
    }

    public double logAbsDeterminant() {
        return logAbsDeterminant;
    }
}
