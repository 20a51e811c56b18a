package jackwork.drawing;

import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Follows a shape's lines and curves in user units and leaves flattened contours in page mm.
 *
 * <p>A curve is cut into as many chords as keep it within {@link #TOLERANCE} <em>after</em> the
 * transform, so that a small drawing scaled up stays smooth. Their number follows from a bound on the
 * second derivative: a chord over a step h leaves the curve by at most h²·max|B″|/8.
 */
final class Trace {

    /** Largest distance between a curve and its chords, mm; a laser's repeatability is some ten times that. */
    static final double TOLERANCE = 0.002;

    /** Largest coordinate, mm; beyond it the drawing's unit is surely not what was meant. */
    static final double FARTHEST = 100_000;

    /** Points closer than this are one point, mm; well below the 0.0001 that files are written with. */
    private static final double SAME = 1e-6;

    /** A closing line shorter than this is the rounding of a file's numbers, mm. */
    private static final double ROUNDING = 0.001;

    private final SvgElement element;
    private final Affine toPage;
    private final Budget budget;
    private final List<Contour> contours = new ArrayList<>();
    private List<Point> points = new ArrayList<>();
    private boolean curved = true;

    Trace(SvgElement element, Affine toPage, Budget budget) {
        this.element = element;
        this.toPage = toPage;
        this.budget = budget;
    }

    void moveTo(double x, double y) {
        finish(false);
        add(page(x, y));
    }

    void lineTo(double x, double y) {
        Point end = page(x, y);
        curved &= end.distance(last()) <= ROUNDING;
        add(end);
    }

    /** A cubic Bézier curve from where the trace is. */
    void curveTo(double x1, double y1, double x2, double y2, double x3, double y3) {
        Point p0 = last();
        Point p1 = page(x1, y1);
        Point p2 = page(x2, y2);
        Point p3 = page(x3, y3);
        double bend = Math.max(
                p0.minus(p1.times(2)).plus(p2).length(),
                p1.minus(p2.times(2)).plus(p3).length());
        // |B″| ≤ 6·bend; steps = 1/h.
        int steps = steps(Math.sqrt(6 * bend / (8 * TOLERANCE)));
        for (int i = 1; i < steps; i++) {
            double t = (double) i / steps;
            double s = 1 - t;
            add(p0.times(s * s * s)
                    .plus(p1.times(3 * s * s * t))
                    .plus(p2.times(3 * s * t * t))
                    .plus(p3.times(t * t * t)));
        }
        add(p3);
    }

    /**
     * The unit circle from angle {@code from} on by {@code sweep} (radians, signed), as {@code toUser}
     * makes an ellipse's arc of it. The trace must be at its beginning.
     */
    void arc(Affine toUser, double from, double sweep) {
        Affine whole = toPage.after(toUser);
        // |B″| in the angle is at most the larger half axis.
        double wanted = Math.abs(sweep) * Math.sqrt(whole.largestStretch() / (8 * TOLERANCE));
        int steps = Math.max(steps(wanted), (int) Math.ceil(8 * Math.abs(sweep) / Math.PI));
        for (int i = 1; i <= steps; i++) {
            double angle = from + sweep * i / steps;
            add(inReach(whole.apply(Math.cos(angle), Math.sin(angle))));
        }
    }

    void close() {
        finish(true);
    }

    /** What was traced; what begins and ends in one place is closed whether or not it says so. */
    List<Contour> contours() {
        finish(false);
        return contours;
    }

    private void finish(boolean saysClosed) {
        if (points.size() > 1) {
            double gap = last().distance(points.get(0));
            boolean closed = saysClosed || (points.size() > 2 && gap <= ROUNDING);
            if (closed && gap <= ROUNDING) {
                points.remove(points.size() - 1);
            }
            contours.add(new Contour(List.copyOf(points), closed, curved && gap <= ROUNDING));
        }
        points = new ArrayList<>();
        curved = true;
    }

    private void add(Point point) {
        if (points.isEmpty() || last().distance(point) > SAME) {
            budget.spendPoint(element);
            points.add(point);
        }
    }

    private Point last() {
        return points.get(points.size() - 1);
    }

    private Point page(double x, double y) {
        return inReach(toPage.apply(x, y));
    }

    private Point inReach(Point p) {
        // Written so that NaN fails too.
        if (!(Math.abs(p.x()) <= FARTHEST && Math.abs(p.y()) <= FARTHEST)) {
            throw element.problem("reaches to (" + p.x() + ", " + p.y() + ") mm, at most " + (int) FARTHEST
                    + " mm either way was expected; check the drawing's units and transforms");
        }
        return p;
    }

    private int steps(double wanted) {
        if (!(wanted <= Budget.MOST_POINTS)) {
            throw budget.spent(element);
        }
        return Math.max(1, (int) Math.ceil(wanted));
    }
}
