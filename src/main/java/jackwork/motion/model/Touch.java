package jackwork.motion.model;

/**
 * Two bodies' shapes that push each other, with Coulomb friction. Where they are near, up to
 * {@link ModelLimits#PLACES} places are found: corners of one against sides or corners of the other, a disc's
 * centre likewise. Each place is one row with its gap, and one axis of friction across it.
 */
public final class Touch extends Joint {

    private final int a;
    private final int b;
    private final TouchShape shapeA;
    private final TouchShape shapeB;
    private final double friction;
    private final double restitution;
    private final int rows;

    Touch(String name, int a, TouchShape shapeA, int b, TouchShape shapeB, double friction, double restitution) {
        super(name);
        this.a = a;
        this.b = b;
        this.shapeA = shapeA;
        this.shapeB = shapeB;
        this.friction = friction;
        this.restitution = restitution;
        this.rows = shapeA.isDisc() && shapeB.isDisc() ? 1 : ModelLimits.PLACES;
    }

    @Override
    public int rows() {
        return rows;
    }

    @Override
    public int axes() {
        return rows;
    }

    /** What a thread keeps for its corners of A against B. */
    TouchNear nearA() {
        return new TouchNear(shapeA, shapeB, ModelLimits.RANGE);
    }

    /** What a thread keeps for its corners of B against A. */
    TouchNear nearB() {
        return new TouchNear(shapeB, shapeA, ModelLimits.RANGE);
    }

    @Override
    public boolean pushesOnly(int row) {
        return true;
    }

    @Override
    public double longestMove() {
        return ModelLimits.DEEPEST / 2;
    }

    @Override
    public double safeStep(Rows rows, int row, double[] velocity) {
        double apart = Math.hypot(rows.x(a) - rows.x(b), rows.y(a) - rows.y(b));
        double gap = Math.max(ModelLimits.RANGE, apart - shapeA.reach - shapeB.reach);
        for (int k = 0; k < rows(); k++) {
            gap = Math.min(gap, rows.gap[row + k]);
        }
        double turning = spin(velocity, a) * shapeA.turningReach + spin(velocity, b) * shapeB.turningReach;
        double speed =
                Math.hypot(speed(velocity, a, 0) - speed(velocity, b, 0), speed(velocity, a, 1) - speed(velocity, b, 1))
                        + turning;
        return (Math.max(0, gap) + ModelLimits.DEEPEST / 2) / Math.max(speed, 1e-9);
    }

    private static double speed(double[] velocity, int body, int axis) {
        return body == Mechanism.GROUND ? 0 : velocity[3 * body + axis];
    }

    private static double spin(double[] velocity, int body) {
        return body == Mechanism.GROUND ? 0 : Math.abs(velocity[3 * body + 2]);
    }

    @Override
    public double restitution() {
        return restitution;
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        TouchPlaces places = rows.places;
        places.clear();
        double dx = rows.x(a) - rows.x(b);
        double dy = rows.y(a) - rows.y(b);
        double reach = shapeA.reach + shapeB.reach + ModelLimits.RANGE;
        if (dx * dx + dy * dy <= reach * reach) {
            int joint = rows.mechanism.jointOfRow[row];
            corners(rows, a, shapeA, b, shapeB, rows.nearA[joint], true);
            if (!shapeA.isDisc()) {
                corners(rows, b, shapeB, a, shapeA, rows.nearB[joint], false);
            }
        }
        places.sortByFeature();
        for (int k = 0; k < rows(); k++) {
            rows.axis(axis + k, friction, row + k, -1);
            if (k >= places.count) {
                rows.row(row + k, Double.POSITIVE_INFINITY);
                rows.feature[row + k] = -1;
                continue;
            }
            double nx = places.nx[k];
            double ny = places.ny[k];
            double x = places.x[k];
            double y = places.y[k];
            rows.feature[row + k] = places.feature[k];
            rows.row(row + k, places.gap[k]);
            rows.between(row + k, a, b, nx, ny, x, y);
            rows.between(rows.count + axis + k, a, b, -ny, nx, x, y);
        }
    }

    /** Corners of {@code p} against sides of {@code q}; and against its corners when {@code withCorners}. */
    private void corners(Rows rows, int p, TouchShape ofP, int q, TouchShape ofQ, TouchNear near, boolean withCorners) {
        int tag = withCorners ? 0 : 1 << 20;
        near.at(rows, p, q);
        for (int k = 0; k < near.corners; k++) {
            int i = near.corner[k];
            double cx = rows.x(p) + rows.armX(p, ofP.x[i], ofP.y[i]);
            double cy = rows.y(p) + rows.armY(p, ofP.x[i], ofP.y[i]);
            double ownX = rows.ownX(q, cx - rows.x(q), cy - rows.y(q));
            double ownY = rows.ownY(q, cx - rows.x(q), cy - rows.y(q));
            features(rows, ownX, ownY, cx, cy, q, ofQ, ofP.radius, near, k, tag + (i << 10), withCorners);
        }
    }

    /** Places of one corner, at (x, y) in q's frame and (cx, cy) in space, against the sides near it. */
    private void features(
            Rows rows,
            double x,
            double y,
            double cx,
            double cy,
            int q,
            TouchShape of,
            double ownRadius,
            TouchNear near,
            int corner,
            int tag,
            boolean withCorners) {
        double radius = ownRadius + of.radius;
        double far = radius + ModelLimits.RANGE;
        double deepest = radius > 0 ? -ModelLimits.DEEPEST : deepest(of, x, y, near, corner);
        for (int k = near.first[corner]; k < near.first[corner + 1]; k++) {
            int j = near.side[k];
            double along = of.along(j, x, y);
            if (of.length[j] > 0 && along >= 0 && along <= of.length[j]) {
                double distance = of.out(j, x, y);
                if (distance > deepest && distance < far) {
                    offer(rows, distance - radius, of.alongY[j], -of.alongX[j], cx, cy, q, ownRadius, tag + 2 * j);
                }
            } else if (withCorners && (along < 0 || of.length[j] == 0) && of.standsOut[j] && behind(of, j, x, y)) {
                double fx = x - of.x[j];
                double fy = y - of.y[j];
                double square = fx * fx + fy * fy;
                if (square > 0 && square < far * far) {
                    double distance = Math.sqrt(square);
                    double gap = distance - radius;
                    offer(rows, gap, fx / distance, fy / distance, cx, cy, q, ownRadius, tag + 2 * j + 1);
                }
            }
        }
    }

    /**
     * A corner that has come in lies behind two sides of an outstanding corner, but has come in through one: that which
     * it is least behind. And one that is outside may still lie behind a side's line.
     *
     * @return what a distance from a side must exceed to count
     */
    private static double deepest(TouchShape of, double x, double y, TouchNear near, int corner) {
        double shallowest = Double.NEGATIVE_INFINITY;
        boolean behindSome = false;
        for (int k = near.first[corner]; k < near.first[corner + 1]; k++) {
            int j = near.side[k];
            double along = of.along(j, x, y);
            double distance = of.out(j, x, y);
            if (along >= 0 && along <= of.length[j] && distance <= 0) {
                shallowest = Math.max(shallowest, distance);
                behindSome = true;
            }
        }
        if (behindSome && shallowest < -ModelLimits.SAME_DEPTH && !of.contains(x, y)) {
            shallowest = 0;
        }
        return Math.max(-ModelLimits.DEEPEST, shallowest - ModelLimits.SAME_DEPTH);
    }

    /** Whether a point lies beyond the end of the side that comes to corner j: there the corner is nearest. */
    private static boolean behind(TouchShape of, int j, double x, double y) {
        int n = of.x.length;
        int i = j == 0 ? n - 1 : j - 1;
        return n == 1 || of.along(i, x, y) > of.length[i];
    }

    /** Offers a place: normal in q's frame, out of q. Rows push A along the normal, so it is turned for q = A. */
    private void offer(
            Rows rows, double gap, double nx, double ny, double cx, double cy, int q, double ownRadius, int id) {
        double outX = rows.armX(q, nx, ny);
        double outY = rows.armY(q, nx, ny);
        double x = cx - ownRadius * outX;
        double y = cy - ownRadius * outY;
        double sign = q == b ? 1 : -1;
        rows.places.offer(
                gap, sign * outX, sign * outY, x, y, id, rows(), ModelLimits.SAME_PLACE, ModelLimits.SAME_NORMAL);
    }
}
