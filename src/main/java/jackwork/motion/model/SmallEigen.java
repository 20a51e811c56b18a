package jackwork.motion.model;

/** Eigenvalues and vectors of a small symmetric matrix by Jacobi's rotations (any text on matrices). */
public final class SmallEigen {

    private final int n;
    private final double[] a;
    private final double[] v;

    /** @param matrix [n × n], row-major; its symmetric part is taken */
    public SmallEigen(double[] matrix, int n) {
        this.n = n;
        this.a = new double[n * n];
        this.v = new double[n * n];
        for (int i = 0; i < n; i++) {
            v[i * n + i] = 1;
            for (int j = 0; j < n; j++) {
                a[i * n + j] = (matrix[i * n + j] + matrix[j * n + i]) / 2;
            }
        }
        for (int sweep = 0; sweep < ModelLimits.EIGEN_SWEEPS && off() > 0; sweep++) {
            for (int p = 0; p < n; p++) {
                for (int q = p + 1; q < n; q++) {
                    rotate(p, q);
                }
            }
        }
    }

    private double off() {
        double sum = 0;
        double diagonal = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double square = a[i * n + j] * a[i * n + j];
                if (i == j) {
                    diagonal += square;
                } else {
                    sum += square;
                }
            }
        }
        return sum > 1e-28 * diagonal ? sum : 0;
    }

    private void rotate(int p, int q) {
        double apq = a[p * n + q];
        if (apq == 0) {
            return;
        }
        double theta = (a[q * n + q] - a[p * n + p]) / (2 * apq);
        double t = Math.copySign(1, theta) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        double c = 1 / Math.sqrt(t * t + 1);
        double s = t * c;
        for (int k = 0; k < n; k++) {
            double kp = a[k * n + p];
            double kq = a[k * n + q];
            a[k * n + p] = c * kp - s * kq;
            a[k * n + q] = s * kp + c * kq;
        }
        for (int k = 0; k < n; k++) {
            double pk = a[p * n + k];
            double qk = a[q * n + k];
            a[p * n + k] = c * pk - s * qk;
            a[q * n + k] = s * pk + c * qk;
            double vp = v[k * n + p];
            double vq = v[k * n + q];
            v[k * n + p] = c * vp - s * vq;
            v[k * n + q] = s * vp + c * vq;
        }
    }

    public double value(int k) {
        return a[k * n + k];
    }

    /** Component i of the k-th eigenvector, of unit length. */
    public double vector(int k, int i) {
        return v[i * n + k];
    }
}
