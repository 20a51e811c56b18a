package jackwork.layout;

/** One piece at one place: corners, circles and extent where they lie. Overwritten in place; nothing is allocated. */
final class Lying {

    /** Pieces may press into each other by this share of their size: touching is not meeting. */
    private static final double TOUCH = 2e-7;

    final Shape shape;
    double x;
    double y;
    double angle;
    final double[] cornerX;
    final double[] cornerY;
    /** The same drawn in by a hair, so that pieces may touch. */
    final double[] innerX;

    final double[] innerY;
    final double[] poleX;
    final double[] poleY;
    double minX;
    double minY;
    double maxX;
    double maxY;

    Lying(Shape shape) {
        this.shape = shape;
        cornerX = new double[shape.x.length];
        cornerY = new double[shape.x.length];
        innerX = new double[shape.x.length];
        innerY = new double[shape.x.length];
        poleX = new double[shape.poleX.length];
        poleY = new double[shape.poleX.length];
        turn(shape.turns.length > 0 ? shape.turns[0] : 0);
    }

    /** Turns it about its centre, which goes to the origin. */
    void turn(double to) {
        angle = to;
        x = 0;
        y = 0;
        double cos = Math.cos(to);
        double sin = Math.sin(to);
        for (int i = 0; i < cornerX.length; i++) {
            double u = cos * shape.x[i] - sin * shape.y[i];
            double v = sin * shape.x[i] + cos * shape.y[i];
            cornerX[i] = u;
            cornerY[i] = v;
            innerX[i] = u * (1 - TOUCH);
            innerY[i] = v * (1 - TOUCH);
        }
        minX = least(cornerX);
        minY = least(cornerY);
        maxX = most(cornerX);
        maxY = most(cornerY);
        for (int i = 0; i < poleX.length; i++) {
            poleX[i] = cos * shape.poleX[i] - sin * shape.poleY[i];
            poleY[i] = sin * shape.poleX[i] + cos * shape.poleY[i];
        }
    }

    /** By comparing, not by {@code Math.min}: a loop of those over fields brings down the compiler of Java 17.0.15. */
    private static double least(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (double value : values) {
            if (value < least) {
                least = value;
            }
        }
        return least;
    }

    private static double most(double[] values) {
        double most = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            if (value > most) {
                most = value;
            }
        }
        return most;
    }

    /** Shifts its centre there. */
    void move(double toX, double toY) {
        double dx = toX - x;
        double dy = toY - y;
        x = toX;
        y = toY;
        minX += dx;
        maxX += dx;
        minY += dy;
        maxY += dy;
        for (int i = 0; i < cornerX.length; i++) {
            cornerX[i] += dx;
            cornerY[i] += dy;
            innerX[i] += dx;
            innerY[i] += dy;
        }
        for (int i = 0; i < poleX.length; i++) {
            poleX[i] += dx;
            poleY[i] += dy;
        }
    }

    void place(double toX, double toY, double toAngle) {
        turn(toAngle);
        move(toX, toY);
    }

    /**
     * Whether this piece and another share more than a touch. Where no edges cross, one lies in the other or they are
     * apart; but the circle of one that covers an opening of the other may have its middle in that opening, so that a
     * corner of its outer ring is asked as well.
     */
    boolean meets(Lying other) {
        if (minX >= other.maxX || other.minX >= maxX || minY >= other.maxY || other.minY >= maxY) {
            return false;
        }
        return crosses(other)
                || other.holds(poleX[0], poleY[0])
                || holds(other.poleX[0], other.poleY[0])
                || (shape.holed && holds(other.innerX[0], other.innerY[0]))
                || (other.shape.holed && other.holds(innerX[0], innerY[0]));
    }

    /** Any edge of this piece, drawn in by a hair, through any edge of the other. */
    private boolean crosses(Lying other) {
        double left = Math.max(minX, other.minX);
        double right = Math.min(maxX, other.maxX);
        double low = Math.max(minY, other.minY);
        double high = Math.min(maxY, other.maxY);
        int[] next = shape.next;
        int[] otherNext = other.shape.next;
        for (int i = 0; i < innerX.length; i++) {
            double ax = innerX[i];
            double ay = innerY[i];
            double bx = innerX[next[i]];
            double by = innerY[next[i]];
            double edgeLeft = Math.min(ax, bx);
            double edgeRight = Math.max(ax, bx);
            double edgeLow = Math.min(ay, by);
            double edgeHigh = Math.max(ay, by);
            if (edgeLeft > right || edgeRight < left || edgeLow > high || edgeHigh < low) {
                continue;
            }
            double abx = bx - ax;
            double aby = by - ay;
            for (int j = 0; j < other.cornerX.length; j++) {
                double cx = other.cornerX[j];
                double cy = other.cornerY[j];
                double dx = other.cornerX[otherNext[j]];
                double dy = other.cornerY[otherNext[j]];
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

    private boolean holds(double px, double py) {
        if (px < minX || px > maxX || py < minY || py > maxY) {
            return false;
        }
        boolean in = false;
        int[] next = shape.next;
        for (int i = 0; i < cornerX.length; i++) {
            double ay = cornerY[i];
            double by = cornerY[next[i]];
            if ((ay > py) != (by > py) && px < cornerX[i] + (py - ay) / (by - ay) * (cornerX[next[i]] - cornerX[i])) {
                in = !in;
            }
        }
        return in;
    }

    /**
     * How deep two pieces that meet lie in each other: over all pairs of their circles, the depth of one in the other, or a
     * tail that falls off with their distance so that there is always a way out, times the smaller radius.
     */
    double depth(Lying other, double tail) {
        double sum = 0;
        for (int i = 0; i < poleX.length; i++) {
            double r = shape.poleR[i];
            for (int j = 0; j < other.poleX.length; j++) {
                double q = other.shape.poleR[j];
                double dx = poleX[i] - other.poleX[j];
                double dy = poleY[i] - other.poleY[j];
                double deep = r + q - Math.sqrt(dx * dx + dy * dy);
                double part = deep >= tail ? deep : tail * tail / (2 * tail - deep);
                sum += part * Math.min(r, q);
            }
        }
        return Math.sqrt(sum + tail * tail) * shape.weight * other.shape.weight;
    }
}
