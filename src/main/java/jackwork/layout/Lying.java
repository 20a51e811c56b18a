package jackwork.layout;

/** One piece at one place. Overwritten in place; nothing is allocated. */
final class Lying {

    /** Circles that share more than this share of both sizes are more than a touch in each other. */
    private static final double CLEARLY = 10 * Turned.TOUCH;

    final Shape shape;
    /** Its corners about its centre; one of the shape's own where its angles are few, else turned in place. */
    private Turned turned;

    /** Those of its edges that another piece may cross. */
    private final int[] near;

    double x;
    double y;
    double minX;
    double minY;
    double maxX;
    double maxY;

    Lying(Shape shape) {
        this.shape = shape;
        near = new int[shape.x.length];
        turned = shape.free() ? new Turned(shape, 0) : shape.turned[0];
        move(0, 0);
    }

    double angle() {
        return turned.angle;
    }

    Turned turned() {
        return turned;
    }

    /** Turns it about its centre, which goes to the origin. */
    void turn(double to) {
        if (shape.free()) {
            if (turned.angle != to) {
                turned.turn(to);
            }
        } else {
            turned = shape.at(to);
        }
        move(0, 0);
    }

    /** Shifts its centre there. */
    void move(double toX, double toY) {
        x = toX;
        y = toY;
        minX = toX + turned.minX;
        minY = toY + turned.minY;
        maxX = toX + turned.maxX;
        maxY = toY + turned.maxY;
    }

    void place(double toX, double toY, double toAngle) {
        turn(toAngle);
        move(toX, toY);
    }

    /** Whether this piece and another share more than a touch. */
    boolean meets(Lying other) {
        if (minX >= other.maxX || other.minX >= maxX || minY >= other.maxY || other.minY >= maxY) {
            return false;
        }
        return circlesShare(other)
                || crosses(other)
                || other.holds(x + turned.poleX[0], y + turned.poleY[0])
                || holds(other.x + other.turned.poleX[0], other.y + other.turned.poleY[0])
                || shareRim(other);
    }

    /** Whether two of their circles lie in each other by more than a touch: the quick answer for most that meet. */
    private boolean circlesShare(Lying other) {
        double byX = x - other.x;
        double byY = y - other.y;
        double touch = CLEARLY * (shape.reach + other.shape.reach);
        Turned its = other.turned;
        for (int i = 0; i < shape.inscribed; i++) {
            double px = turned.poleX[i] + byX;
            double py = turned.poleY[i] + byY;
            double rest = shape.poleR[i] - touch;
            for (int j = 0; j < other.shape.inscribed; j++) {
                double reach = rest + other.shape.poleR[j];
                double dx = px - its.poleX[j];
                double dy = py - its.poleY[j];
                if (reach > 0 && dx * dx + dy * dy < reach * reach) {
                    return true;
                }
            }
        }
        return false;
    }

    /** One ring within another: no edges cross, and both poles may lie where the other is open. A hole's rim tells. */
    private boolean shareRim(Lying other) {
        for (int corner : shape.holes) {
            if (other.holds(x + turned.innerX[corner], y + turned.innerY[corner])) {
                return true;
            }
        }
        for (int corner : other.shape.holes) {
            // This piece drawn in by a hair is the other's corner drawn out from its centre.
            double u = (other.x + other.turned.x[corner] - x) / Turned.INNER;
            double v = (other.y + other.turned.y[corner] - y) / Turned.INNER;
            if (holds(x + u, y + v)) {
                return true;
            }
        }
        return false;
    }

    /** Any edge of this piece, drawn in by a hair, through any edge of the other. */
    private boolean crosses(Lying other) {
        // All about the other's centre.
        double byX = x - other.x;
        double byY = y - other.y;
        // Only edges that come into what both boxes share can cross.
        double left = Math.max(other.turned.minX, turned.minX * Turned.INNER + byX);
        double right = Math.min(other.turned.maxX, turned.maxX * Turned.INNER + byX);
        double low = Math.max(other.turned.minY, turned.minY * Turned.INNER + byY);
        double high = Math.min(other.turned.maxY, turned.maxY * Turned.INNER + byY);
        int[] others = other.near;
        int count = other.edgesWithin(left, right, low, high);
        double[] innerX = turned.innerX;
        double[] innerY = turned.innerY;
        int[] next = shape.next;
        double[] otherX = other.turned.x;
        double[] otherY = other.turned.y;
        int[] otherNext = other.shape.next;
        for (int i = 0; i < innerX.length; i++) {
            double ax = innerX[i] + byX;
            double ay = innerY[i] + byY;
            double bx = innerX[next[i]] + byX;
            double by = innerY[next[i]] + byY;
            double edgeLeft = Math.min(ax, bx);
            double edgeRight = Math.max(ax, bx);
            double edgeLow = Math.min(ay, by);
            double edgeHigh = Math.max(ay, by);
            if (edgeLeft > right || edgeRight < left || edgeLow > high || edgeHigh < low) {
                continue;
            }
            double abx = bx - ax;
            double aby = by - ay;
            for (int k = 0; k < count; k++) {
                int j = others[k];
                double cx = otherX[j];
                double cy = otherY[j];
                double dx = otherX[otherNext[j]];
                double dy = otherY[otherNext[j]];
                if ((cx > edgeRight && dx > edgeRight)
                        || (cx < edgeLeft && dx < edgeLeft)
                        || (cy > edgeHigh && dy > edgeHigh)
                        || (cy < edgeLow && dy < edgeLow)) {
                    continue;
                }
                double c = abx * (cy - ay) - aby * (cx - ax);
                double d = abx * (dy - ay) - aby * (dx - ax);
                if ((c > 0) != (d > 0)) {
                    double a = (dx - cx) * (ay - cy) - (dy - cy) * (ax - cx);
                    double b = (dx - cx) * (by - cy) - (dy - cy) * (bx - cx);
                    if ((a > 0) != (b > 0)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Notes its edges that come into a box about its centre; how many. */
    private int edgesWithin(double left, double right, double low, double high) {
        double[] cornerX = turned.x;
        double[] cornerY = turned.y;
        int[] next = shape.next;
        int count = 0;
        for (int j = 0; j < cornerX.length; j++) {
            double cx = cornerX[j];
            double cy = cornerY[j];
            double dx = cornerX[next[j]];
            double dy = cornerY[next[j]];
            if (!((cx > right && dx > right)
                    || (cx < left && dx < left)
                    || (cy > high && dy > high)
                    || (cy < low && dy < low))) {
                near[count++] = j;
            }
        }
        return count;
    }

    private boolean holds(double px, double py) {
        double u = px - x;
        double v = py - y;
        if (u < turned.minX || u > turned.maxX || v < turned.minY || v > turned.maxY) {
            return false;
        }
        boolean in = false;
        int[] next = shape.next;
        double[] cornerX = turned.x;
        double[] cornerY = turned.y;
        for (int i = 0; i < cornerX.length; i++) {
            double ay = cornerY[i];
            double by = cornerY[next[i]];
            if ((ay > v) != (by > v) && u < cornerX[i] + (v - ay) / (by - ay) * (cornerX[next[i]] - cornerX[i])) {
                in = !in;
            }
        }
        return in;
    }

    /**
     * How deep two pieces that meet lie in each other: over all pairs of their circles, the depth of one in the other, or a
     * tail that falls off with their distance so that there is always a way out, times the smaller radius. Stops counting
     * where the depth is beyond {@code bound}.
     */
    double depth(Lying other, double tail, double bound) {
        double scale = shape.weight * other.shape.weight;
        double enough = bound / scale * (bound / scale) - tail * tail;
        double byX = x - other.x;
        double byY = y - other.y;
        double[] poleX = turned.poleX;
        double[] poleY = turned.poleY;
        double[] otherX = other.turned.poleX;
        double[] otherY = other.turned.poleY;
        double[] radii = shape.poleR;
        double[] otherRadii = other.shape.poleR;
        double sum = 0;
        for (int i = 0; i < poleX.length && sum < enough; i++) {
            double r = radii[i];
            double px = poleX[i] + byX;
            double py = poleY[i] + byY;
            for (int j = 0; j < otherX.length; j++) {
                double q = otherRadii[j];
                double dx = px - otherX[j];
                double dy = py - otherY[j];
                double deep = r + q - Math.sqrt(dx * dx + dy * dy);
                double part = deep >= tail ? deep : tail * tail / (2 * tail - deep);
                sum += part * Math.min(r, q);
            }
        }
        return Math.sqrt(sum + tail * tail) * scale;
    }
}
