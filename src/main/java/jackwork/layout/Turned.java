package jackwork.layout;

/** A shape at one angle, about its centre. */
final class Turned {

    /** Pieces may press into each other by this share of their size: touching is not meeting. */
    static final double TOUCH = 2e-7;

    /** Drawn in by that share. */
    static final double INNER = 1 - TOUCH;

    final Shape shape;
    double angle;
    final double[] x;
    final double[] y;
    /** The same drawn in by a hair, so that pieces may touch. */
    final double[] innerX;

    final double[] innerY;
    final double[] poleX;
    final double[] poleY;
    double minX;
    double minY;
    double maxX;
    double maxY;

    Turned(Shape shape, double angle) {
        this.shape = shape;
        x = new double[shape.x.length];
        y = new double[shape.x.length];
        innerX = new double[shape.x.length];
        innerY = new double[shape.x.length];
        poleX = new double[shape.poleX.length];
        poleY = new double[shape.poleX.length];
        turn(angle);
    }

    void turn(double to) {
        angle = to;
        double cos = Math.cos(to);
        double sin = Math.sin(to);
        minX = Double.POSITIVE_INFINITY;
        minY = Double.POSITIVE_INFINITY;
        maxX = Double.NEGATIVE_INFINITY;
        maxY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            double u = cos * shape.x[i] - sin * shape.y[i];
            double v = sin * shape.x[i] + cos * shape.y[i];
            x[i] = u;
            y[i] = v;
            innerX[i] = u * INNER;
            innerY[i] = v * INNER;
            // Not Math.min: the JDK 17 compiler fails on it in a loop that also fills arrays (TypeVect::xmeet).
            minX = u < minX ? u : minX;
            minY = v < minY ? v : minY;
            maxX = u > maxX ? u : maxX;
            maxY = v > maxY ? v : maxY;
        }
        for (int i = 0; i < poleX.length; i++) {
            poleX[i] = cos * shape.poleX[i] - sin * shape.poleY[i];
            poleY[i] = sin * shape.poleX[i] + cos * shape.poleY[i];
        }
    }

    double width() {
        return maxX - minX;
    }

    double height() {
        return maxY - minY;
    }
}
