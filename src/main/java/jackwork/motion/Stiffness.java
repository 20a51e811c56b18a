package jackwork.motion;

import java.util.Arrays;

/**
 * How hard the free coordinates are to move: springs, and all forces as the pose turns them, by central
 * differences along each free motion; made positive, and inverted. One per thread.
 */
final class Stiffness {

    /** Softer directions are taken as stiff as this, as a share of weight/100 mm: then steps stay within sight. */
    private static final double LEAST = 0.02;

    private static final double DIFFERENCE = 1e-4;

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
            double step = DIFFERENCE / Math.max(Moves.size(z[j]), 1e-12);
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
            double used = Math.max(Math.abs(eigen.value(k)), LEAST * unit) + damping * unit;
            for (int i = 0; i < f; i++) {
                for (int j = 0; j < f; j++) {
                    inverse[i * f + j] += eigen.vector(k, i) * eigen.vector(k, j) / used;
                }
            }
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
