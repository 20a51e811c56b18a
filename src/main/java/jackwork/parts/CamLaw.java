package jackwork.parts;

/**
 * How a cam's follower goes from one rest to another: unit rise s(x) over unit turn x in 0 to 1, with its
 * derivatives. Names and formulas as in Norton, Cam Design and Manufacturing Handbook, and Rothbart, Cam
 * Design Handbook (from memory; coefficients are checked by test).
 */
public enum CamLaw {
    HARMONIC("harmonic") {
        @Override
        void at(double x, double[] s) {
            double c = Math.cos(Math.PI * x);
            double n = Math.sin(Math.PI * x);
            set(s, (1 - c) / 2, Math.PI * n / 2, PI2 * c / 2, -PI2 * Math.PI * n / 2);
        }
    },
    CYCLOIDAL("cycloidal") {
        @Override
        void at(double x, double[] s) {
            double w = 2 * Math.PI;
            set(s, x - Math.sin(w * x) / w, 1 - Math.cos(w * x), w * Math.sin(w * x), w * w * Math.cos(w * x));
        }
    },
    POLYNOMIAL_345("3-4-5") {
        @Override
        void at(double x, double[] s) {
            double y = 1 - x;
            set(
                    s,
                    x * x * x * (10 - 15 * x + 6 * x * x),
                    30 * x * x * y * y,
                    60 * x * y * (1 - 2 * x),
                    60 * (1 - 6 * x + 6 * x * x));
        }
    },
    POLYNOMIAL_4567("4-5-6-7") {
        @Override
        void at(double x, double[] s) {
            double y = 1 - x;
            double x2 = x * x;
            set(
                    s,
                    x2 * x2 * (35 - 84 * x + 70 * x2 - 20 * x2 * x),
                    140 * x2 * x * y * y * y,
                    420 * x2 * y * y * (1 - 2 * x),
                    840 * x * y * (1 - 5 * x + 5 * x2));
        }
    },
    MODIFIED_SINE("modified-sine") {
        @Override
        void at(double x, double[] s) {
            blended(x, 0.25, 0, 0.75, s);
        }
    },
    MODIFIED_TRAPEZOID("modified-trapezoid") {
        @Override
        void at(double x, double[] s) {
            blended(x, 0.25, 0.5, 0.25, s);
        }
    };

    private static final double PI2 = Math.PI * Math.PI;

    private final String key;

    CamLaw(String key) {
        this.key = key;
    }

    /** As written in files. */
    public String key() {
        return key;
    }

    /**
     * @param x 0 to 1
     * @param s gets rise, speed, acceleration and jerk, [4]
     */
    abstract void at(double x, double[] s);

    private static void set(double[] s, double rise, double speed, double acceleration, double jerk) {
        s[0] = rise;
        s[1] = speed;
        s[2] = acceleration;
        s[3] = jerk;
    }

    /**
     * Sine, constant and cosine acceleration blended: acceleration rises as a quarter sine over b/2, stays over c/2,
     * falls as a quarter cosine over d/2, and the second half mirrors the first; b + c + d = 1.
     */
    private static void blended(double x, double b, double c, double d, double[] s) {
        boolean mirrored = x > 0.5;
        double t = mirrored ? 1 - x : x;
        double peak = 4 * PI2 / ((PI2 - 8) * (b * b - d * d) - 2 * Math.PI * (Math.PI - 2) * b + PI2);
        double k = b / Math.PI;
        double speedB = peak * k;
        double riseB = peak * (k * b / 2 - k * k);
        if (t <= b / 2) {
            set(
                    s,
                    peak * (k * t - k * k * Math.sin(t / k)),
                    peak * k * (1 - Math.cos(t / k)),
                    peak * Math.sin(t / k),
                    peak / k * Math.cos(t / k));
        } else if (t <= (b + c) / 2) {
            double u = t - b / 2;
            set(s, riseB + speedB * u + peak * u * u / 2, speedB + peak * u, peak, 0);
        } else {
            double w = c / 2;
            double speedC = speedB + peak * w;
            double riseC = riseB + speedB * w + peak * w * w / 2;
            double m = d / Math.PI;
            double u = t - (b + c) / 2;
            set(
                    s,
                    riseC + speedC * u + peak * m * m * (1 - Math.cos(u / m)),
                    speedC + peak * m * Math.sin(u / m),
                    peak * Math.cos(u / m),
                    -peak / m * Math.sin(u / m));
        }
        if (mirrored) {
            s[0] = 1 - s[0];
            s[2] = -s[2];
        }
    }
}
