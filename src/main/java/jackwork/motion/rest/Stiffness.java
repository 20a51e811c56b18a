package jackwork.motion.rest;

import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Moves;
import jackwork.motion.model.Rows;
import jackwork.motion.model.SmallEigen;
import java.util.Arrays;

/**
 * How hard the free coordinates are to move: springs, and all forces as the pose turns them, by central
 * differences along each free motion; made positive, and inverted. One per thread.
 */
final class Stiffness {

    private final Rows rows;
    private final RestForces forces;
    private final double scale;
    private final int f;
    private final double[] stiffness;
    private final double[] inverse;
    private final double[] plus;
    private final double[] minus;
    private final double[] trial;

    Stiffness(Mechanism mechanism, Rows rows, RestForces forces) {
        this.rows = rows;
        this.forces = forces;
        this.scale = mechanism.weight() / 100;
        this.f = mechanism.structure.free().length;
        this.stiffness = new double[f * f];
        this.inverse = new double[f * f];
        this.plus = new double[mechanism.coordinates()];
        this.minus = new double[mechanism.coordinates()];
        this.trial = new double[mechanism.coordinates()];
    }

    /**
     * @param z free motions, [free][coordinates]
     * @param damping added to every direction, as a share of weight/100 mm
     */
    void at(double[] pose, double[][] z, double damping) {
        for (int j = 0; j < f; j++) {
            double step = RestLimits.DIFFERENCE / Math.max(Moves.size(z[j]), 1e-12);
            difference(pose, z[j], step, plus);
            difference(pose, z[j], -step, minus);
            for (int i = 0; i < f; i++) {
                double sum = 0;
                for (int c = 0; c < pose.length; c++) {
                    sum -= z[i][c] * (plus[c] - minus[c]);
                }
                stiffness[i * f + j] = sum / (2 * step);
            }
        }
        rows.at(pose);
        invert(z, damping);
    }

    private void difference(double[] pose, double[] along, double step, double[] into) {
        for (int c = 0; c < pose.length; c++) {
            trial[c] = pose[c] + step * along[c];
        }
        rows.at(trial);
        forces.turned(into);
    }

    /** Symmetric part, its small and negative eigenvalues turned up; then the inverse. */
    private void invert(double[][] z, double damping) {
        SmallEigen eigen = new SmallEigen(stiffness, f);
        Arrays.fill(inverse, 0);
        for (int k = 0; k < f; k++) {
            double own = 0;
            for (int j = 0; j < f; j++) {
                own += Math.abs(eigen.vector(k, j)) * Moves.size(z[j]);
            }
            double unit = scale * Math.max(own * own, 1e-12);
            double used = Math.max(Math.abs(eigen.value(k)), RestLimits.LEAST_STIFFNESS * unit) + damping * unit;
            for (int i = 0; i < f; i++) {
                for (int j = 0; j < f; j++) {
                    inverse[i * f + j] += eigen.vector(k, i) * eigen.vector(k, j) / used;
                }
            }
        }
    }

    /**
     * The softest motion that held rows leave: the smallest eigenvalue of the stiffness with those rows' motion taken
     * out, coordinates counted by the way they make. Negative: what is at rest here stands on its edge.
     *
     * @param z free motions, [free][coordinates]
     * @param held motion of each held row along the free coordinates, its first {@code count} rows; spoiled
     * @param softest receives the motion, [free]
     * @return as a share of weight/100 mm; infinite when nothing is left to move
     */
    double least(double[][] z, double[][] held, int count, double[] softest) {
        int rank = 0;
        for (int k = 0; k < count; k++) {
            for (int j = 0; j < f; j++) {
                held[k][j] /= size(z[j]);
            }
            double whole = norm(held[k]);
            for (int pass = 0; pass < 2; pass++) {
                for (int q = 0; q < rank; q++) {
                    subtract(held[k], held[q]);
                }
            }
            double left = norm(held[k]);
            if (whole > 0 && left > 1e-9 * whole) {
                for (int j = 0; j < f; j++) {
                    held[rank][j] = held[k][j] / left;
                }
                rank++;
            }
        }
        if (rank >= f) {
            return Double.POSITIVE_INFINITY;
        }
        double[] scaled = new double[f * f];
        double[] column = new double[f];
        for (int c = 0; c < f; c++) {
            Arrays.fill(column, 0);
            column[c] = 1;
            project(column, held, rank);
            for (int i = 0; i < f; i++) {
                double sum = 0;
                for (int j = 0; j < f; j++) {
                    sum += (stiffness[i * f + j] + stiffness[j * f + i]) / 2 * column[j] / size(z[j]);
                }
                softest[i] = sum / size(z[i]) / scale;
            }
            project(softest, held, rank);
            for (int i = 0; i < f; i++) {
                scaled[i * f + c] = softest[i];
            }
        }
        SmallEigen eigen = new SmallEigen(scaled, f);
        int least = -1;
        for (int k = 0; k < f; k++) {
            for (int j = 0; j < f; j++) {
                column[j] = eigen.vector(k, j);
            }
            project(column, held, rank);
            boolean free = norm(column) > 0.5;
            if (free && (least < 0 || eigen.value(k) < eigen.value(least))) {
                least = k;
            }
        }
        for (int j = 0; j < f; j++) {
            softest[j] = eigen.vector(least, j) / size(z[j]);
        }
        return eigen.value(least);
    }

    private static double size(double[] motion) {
        return Math.max(Moves.size(motion), 1e-12);
    }

    private static double norm(double[] a) {
        double sum = 0;
        for (double x : a) {
            sum += x * x;
        }
        return Math.sqrt(sum);
    }

    private static void project(double[] a, double[][] unit, int count) {
        for (int k = 0; k < count; k++) {
            subtract(a, unit[k]);
        }
    }

    /** Takes a's part along a unit vector off. */
    private static void subtract(double[] a, double[] unit) {
        double along = 0;
        for (int j = 0; j < a.length; j++) {
            along += a[j] * unit[j];
        }
        for (int j = 0; j < a.length; j++) {
            a[j] -= along * unit[j];
        }
    }

    /** aᵀ H⁻¹ b. */
    double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < f; i++) {
            sum += a[i] * answer(i, b);
        }
        return sum;
    }

    /** Component i of H⁻¹ b. */
    double answer(int i, double[] b) {
        double sum = 0;
        for (int j = 0; j < f; j++) {
            sum += inverse[i * f + j] * b[j];
        }
        return sum;
    }
}
