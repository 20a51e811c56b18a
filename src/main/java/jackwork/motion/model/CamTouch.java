package jackwork.motion.model;

import jackwork.geometry.Curve;

/**
 * A round follower of body A on a smooth closed curve of body B: it only pushes. The gap is the
 * distance of the follower's centre c from the curve P(s) along its outward normal, at the foot where
 * {@code (c − P(s))·P'(s) = 0}, found by Newton's method from the last foot. Coulomb friction where
 * the follower touches.
 */
public final class CamTouch extends Joint {

    private final Anchor a;
    private final Anchor b;
    private final double radius;
    private final Curve curve;
    private final double offset;
    private final double friction;

    /**
     * @param a centre of the follower
     * @param radius of the follower, mm
     * @param b where the curve's own origin lies
     * @param offset distance of the follower's centre from the curve when it touches: 0 for a pitch
     *     curve, the follower's radius for a profile, mm
     */
    CamTouch(String name, Anchor a, double radius, Anchor b, Curve curve, double offset, double friction) {
        super(name);
        this.a = a;
        this.b = b;
        this.radius = radius;
        this.curve = curve;
        this.offset = offset;
        this.friction = friction;
    }

    @Override
    public int rows() {
        return 1;
    }

    @Override
    public int axes() {
        return friction > 0 ? 1 : 0;
    }

    @Override
    public boolean pushesOnly(int row) {
        return true;
    }

    @Override
    String what(int row) {
        return "cam " + name();
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        int cam = b.body();
        double cx = a.x(rows);
        double cy = a.y(rows);
        double ownX = rows.ownX(cam, cx - rows.x(cam), cy - rows.y(cam)) - b.ownX();
        double ownY = rows.ownY(cam, cx - rows.x(cam), cy - rows.y(cam)) - b.ownY();
        double[] at = rows.scratch;
        double s = foot(rows.parameter[row], ownX, ownY, at);
        rows.parameter[row] = s;
        double speed = Math.hypot(at[2], at[3]);
        double nx = at[3] / speed;
        double ny = -at[2] / speed;
        double gap = (ownX - at[0]) * nx + (ownY - at[1]) * ny - offset;
        double outX = rows.armX(cam, nx, ny);
        double outY = rows.armY(cam, nx, ny);
        double touchX = cx - radius * outX;
        double touchY = cy - radius * outY;
        rows.row(row, gap);
        rows.between(row, a.body(), cam, outX, outY, touchX, touchY);
        if (friction > 0) {
            rows.axis(axis, friction, row, -1);
            rows.between(rows.count + axis, a.body(), cam, -outY, outX, touchX, touchY);
        }
    }

    private double foot(double last, double x, double y, double[] at) {
        double s = Double.isNaN(last) ? nearest(x, y, at) : last;
        for (int k = 0; k < 20; k++) {
            curve.evaluate(s, at);
            double f = (x - at[0]) * at[2] + (y - at[1]) * at[3];
            double slope = -at[2] * at[2] - at[3] * at[3] + (x - at[0]) * at[4] + (y - at[1]) * at[5];
            if (slope >= 0) {
                break;
            }
            double step = -f / slope;
            double most = curve.period() / 40;
            s += Math.max(-most, Math.min(most, step));
            if (Math.abs(step) < 1e-14 * curve.period()) {
                curve.evaluate(s, at);
                return s;
            }
        }
        // Beyond the centre of curvature, or lost: look all round again.
        s = nearest(x, y, at);
        for (int k = 0; k < 20; k++) {
            curve.evaluate(s, at);
            double f = (x - at[0]) * at[2] + (y - at[1]) * at[3];
            double slope = -at[2] * at[2] - at[3] * at[3] + (x - at[0]) * at[4] + (y - at[1]) * at[5];
            s -= f / Math.min(slope, -1e-3 * (at[2] * at[2] + at[3] * at[3]));
        }
        curve.evaluate(s, at);
        return s;
    }

    private double nearest(double x, double y, double[] at) {
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < ModelLimits.CAM_SCANNED; k++) {
            double s = curve.period() * k / ModelLimits.CAM_SCANNED;
            curve.evaluate(s, at);
            double square = (x - at[0]) * (x - at[0]) + (y - at[1]) * (y - at[1]);
            if (square < least) {
                least = square;
                best = s;
            }
        }
        return best;
    }
}
