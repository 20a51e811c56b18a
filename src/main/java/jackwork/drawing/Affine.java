package jackwork.drawing;

import jackwork.geometry.Point;

/** The map (x, y) to (a·x + c·y + e, b·x + d·y + f), SVG's {@code matrix(a b c d e f)}. */
record Affine(double a, double b, double c, double d, double e, double f) {

    static final Affine IDENTITY = new Affine(1, 0, 0, 1, 0, 0);

    static Affine translation(double x, double y) {
        return new Affine(1, 0, 0, 1, x, y);
    }

    static Affine scaling(double x, double y) {
        return new Affine(x, 0, 0, y, 0, 0);
    }

    static Affine rotation(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Affine(cos, sin, -sin, cos, 0, 0);
    }

    /** This map after {@code first}: the order in which SVG nests transforms. */
    Affine after(Affine first) {
        return new Affine(
                a * first.a + c * first.b,
                b * first.a + d * first.b,
                a * first.c + c * first.d,
                b * first.c + d * first.d,
                a * first.e + c * first.f + e,
                b * first.e + d * first.f + f);
    }

    Point apply(double x, double y) {
        return new Point(a * x + c * y + e, b * x + d * y + f);
    }

    /** The most by which it lengthens any vector: its larger singular value. */
    double largestStretch() {
        double sum = a * a + b * b + c * c + d * d;
        double det = a * d - b * c;
        return Math.sqrt((sum + Math.sqrt(Math.max(0, sum * sum - 4 * det * det))) / 2);
    }
}
