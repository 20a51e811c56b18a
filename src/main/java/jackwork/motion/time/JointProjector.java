package jackwork.motion.time;

import jackwork.motion.model.Rows;

/**
 * Solves joint rows directly in the mass metric: with {@code G = J M⁻¹ Jᵀ}, the impulses λ that bring a
 * velocity (or position) back to {@code J v = b}. Rows may repeat each other: G is factored by Cholesky's
 * method with diagonal pivoting, which reveals its rank; rows beyond it get no impulse (e.g. Higham, "Analysis of the
 * Cholesky decomposition of a semi-definite matrix", 1990, named from memory). One per thread;
 * allocates nothing after construction.
 */
final class JointProjector {

    private final Rows rows;
    private final int capacity;
    private final int[] row;
    private final double[] lower;
    private final int[] order;
    private final double[] work;
    private final double[] velocity;
    private int size;
    private int rank;

    JointProjector(Rows rows) {
        this.rows = rows;
        this.capacity = rows.count;
        this.row = new int[capacity];
        this.lower = new double[capacity * capacity];
        this.order = new int[capacity];
        this.work = new double[capacity];
        this.velocity = new double[rows.mechanism.coordinates()];
    }

    void clear() {
        size = 0;
    }

    void add(int rowNumber) {
        row[size++] = rowNumber;
    }

    int size() {
        return size;
    }

    int row(int i) {
        return row[i];
    }

    /** Rows that do not repeat others. */
    int rank() {
        return rank;
    }

    /** Builds and factors G at the pose that the rows hold. */
    void factor() {
        for (int i = 0; i < size; i++) {
            java.util.Arrays.fill(velocity, 0);
            rows.addImpulse(row[i], 1, velocity);
            for (int j = 0; j <= i; j++) {
                double value = rows.rate(row[j], velocity);
                lower[i * capacity + j] = value;
                lower[j * capacity + i] = value;
            }
            order[i] = i;
        }
        rank = size;
        double most = 0;
        for (int k = 0; k < size; k++) {
            int best = k;
            for (int i = k + 1; i < size; i++) {
                if (at(i, i) > at(best, best)) {
                    best = i;
                }
            }
            int swap = order[k];
            order[k] = order[best];
            order[best] = swap;
            double pivot = at(k, k);
            most = k == 0 ? pivot : most;
            if (!(pivot > TimeLimits.REPEATED_PIVOT * most)) {
                rank = k;
                return;
            }
            eliminate(k, Math.sqrt(pivot));
        }
    }

    private double at(int i, int j) {
        return lower[order[i] * capacity + order[j]];
    }

    private void eliminate(int k, double root) {
        int ok = order[k];
        lower[ok * capacity + ok] = root;
        for (int i = k + 1; i < size; i++) {
            lower[order[i] * capacity + ok] /= root;
        }
        for (int i = k + 1; i < size; i++) {
            int oi = order[i];
            double factor = lower[oi * capacity + ok];
            if (factor == 0) {
                continue;
            }
            for (int j = k + 1; j <= i; j++) {
                int oj = order[j];
                double value = lower[oi * capacity + oj] - factor * lower[oj * capacity + ok];
                lower[oi * capacity + oj] = value;
                lower[oj * capacity + oi] = value;
            }
        }
    }

    /** Solves G λ = b; {@code b} is replaced by λ, 0 for rows that repeat others. */
    void solve(double[] b) {
        for (int i = 0; i < rank; i++) {
            int oi = order[i];
            double sum = b[oi];
            for (int j = 0; j < i; j++) {
                sum -= lower[oi * capacity + order[j]] * work[j];
            }
            work[i] = sum / lower[oi * capacity + oi];
        }
        for (int i = rank - 1; i >= 0; i--) {
            int oi = order[i];
            double sum = work[i];
            for (int j = i + 1; j < rank; j++) {
                sum -= lower[order[j] * capacity + oi] * work[j];
            }
            work[i] = sum / lower[oi * capacity + oi];
        }
        for (int i = 0; i < size; i++) {
            b[order[i]] = i < rank ? work[i] : 0;
        }
    }

    /** Takes from a velocity what breaks J v = 0; {@code impulse} [rows] gets the λ that does it. */
    void project(double[] v, double[] impulse) {
        for (int i = 0; i < size; i++) {
            impulse[i] = -rows.rate(row[i], v);
        }
        solve(impulse);
        apply(impulse, v);
    }

    /** Adds M⁻¹Jᵀλ. */
    void apply(double[] impulse, double[] v) {
        for (int i = 0; i < size; i++) {
            if (impulse[i] != 0) {
                rows.addImpulse(row[i], impulse[i], v);
            }
        }
    }
}
