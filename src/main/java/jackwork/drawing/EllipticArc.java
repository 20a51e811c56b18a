package jackwork.drawing;

/**
 * An arc of an ellipse about its centre: the unit circle from angle {@code from} on by {@code sweep},
 * stretched, turned and moved by {@code toUser}. Angles in radians.
 */
record EllipticArc(Affine toUser, double from, double sweep) {

    /**
     * From a path's way of writing an arc to its centre. Letters and equations are those of W3C SVG 1.1,
     * appendix F.6.5 and F.6.6: x1', cx', radii enlarged until they reach.
     */
    static EllipticArc between(
            double x1,
            double y1,
            double rx,
            double ry,
            double turn,
            boolean large,
            boolean sweep,
            double x2,
            double y2) {
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double dx = (x1 - x2) / 2;
        double dy = (y1 - y2) / 2;
        // Scaled by the radii at once: x1'/rx and y1'/ry.
        double ux = (cos * dx + sin * dy) / rx;
        double uy = (cos * dy - sin * dx) / ry;
        double lambda = ux * ux + uy * uy;
        double enlarge = Math.max(1, Math.sqrt(lambda));
        ux /= enlarge;
        uy /= enlarge;
        // cx' = k·rx·y1'/ry, cy' = -k·ry·x1'/rx with k² = (1 - λ)/λ.
        double k = lambda >= 1 ? 0 : Math.sqrt((1 - lambda) / lambda) * (large == sweep ? -1 : 1);
        double ex = k * uy;
        double ey = -k * ux;
        double from = Math.atan2(uy - ey, ux - ex);
        double to = Math.atan2(-uy - ey, -ux - ex);
        double angle = to - from;
        if (sweep && angle < 0) {
            angle += 2 * Math.PI;
        } else if (!sweep && angle > 0) {
            angle -= 2 * Math.PI;
        }
        Affine shape = Affine.rotation(turn).after(Affine.scaling(rx * enlarge, ry * enlarge));
        double shiftX = (x1 + x2) / 2;
        double shiftY = (y1 + y2) / 2;
        Affine centred = Affine.translation(shiftX, shiftY).after(shape).after(Affine.translation(ex, ey));
        return new EllipticArc(centred, from, angle);
    }

    /** Upright ellipse about (x, y), once round from its rightmost point. */
    static EllipticArc ellipse(double x, double y, double rx, double ry) {
        return new EllipticArc(Affine.translation(x, y).after(Affine.scaling(rx, ry)), 0, 2 * Math.PI);
    }

    void draw(Trace trace) {
        trace.arc(toUser, from, sweep);
    }
}
