package jackwork.layout;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A piece as the search sees it: edges about its centroid, and circles inscribed in it, largest first. */
final class Shape {

    private static final int MOST_POLES = 8;
    /** Circles stop when they cover this share of the area. */
    private static final double COVERED = 0.9;
    /** Smaller circles, as a share of the first, say nothing more. */
    private static final double LEAST_POLE = 0.08;

    private static final int GRID = 48;

    /** Of half a turn. */
    private static final int DEGREES = 180;

    final Point centre;
    /** Corners about the centre; rings one after the other. */
    final double[] x;

    final double[] y;
    /** The corner that each corner's edge goes to. */
    final int[] next;
    /** A corner of each hole. */
    final int[] holes;

    /** Of each corner's edge, mm. */
    private final double[] length;

    private final double perimeter;

    final double[] poleX;
    final double[] poleY;
    final double[] poleR;
    /** How many of the circles lie wholly in it: all, or none where it is too thin for one to be found. */
    final int inscribed;

    /** Geometric weight of an overlap: large pieces are harder to move out of the way. */
    final double weight;

    final double area;
    final double reach;
    /** Angles that it may lie at, rad; empty when any. */
    final double[] turns;
    /** The shape at each of them. */
    final Turned[] turned;

    Shape(Piece piece) {
        Outline outline = piece.outline();
        centre = outline.centroid();
        List<List<Point>> rings = new ArrayList<>();
        rings.add(outline.outer());
        rings.addAll(outline.holes());
        int corners = rings.stream().mapToInt(List::size).sum();
        x = new double[corners];
        y = new double[corners];
        next = new int[corners];
        holes = new int[rings.size() - 1];
        int hole = 0;
        int at = 0;
        double far = 0;
        for (List<Point> ring : rings) {
            int first = at;
            if (first > 0) {
                holes[hole++] = first;
            }
            for (Point p : ring) {
                x[at] = p.x() - centre.x();
                y[at] = p.y() - centre.y();
                far = Math.max(far, Math.hypot(x[at], y[at]));
                next[at] = at + 1;
                at++;
            }
            next[at - 1] = first;
        }
        reach = far;
        length = new double[corners];
        for (int k = 0; k < corners; k++) {
            length[k] = Math.hypot(x[next[k]] - x[k], y[next[k]] - y[k]);
        }
        perimeter = Arrays.stream(length).sum();
        area = outline.area();
        turns = piece.turns().stream().mapToDouble(Math::toRadians).toArray();
        List<double[]> poles = poles();
        inscribed = poles.size();
        if (poles.isEmpty()) {
            poles.add(thin());
        }
        poleX = poles.stream().mapToDouble(p -> p[0]).toArray();
        poleY = poles.stream().mapToDouble(p -> p[1]).toArray();
        poleR = poles.stream().mapToDouble(p -> p[2]).toArray();
        // Square root of the hull's side: the outline's own area serves, hulls only differ by a factor.
        weight = Math.sqrt(Math.sqrt(area));
        turned = new Turned[turns.length];
        for (int k = 0; k < turns.length; k++) {
            turned[k] = new Turned(this, turns[k]);
        }
    }

    /** The edge at a share of all edges' length, by the corner it leaves: long ones are met more often. */
    int edgeAt(double share) {
        double left = share * perimeter;
        int k = 0;
        while (k < length.length - 1 && left >= length[k]) {
            left -= length[k];
            k++;
        }
        return k;
    }

    /** Of the edge that leaves a corner, rad. */
    double direction(int corner) {
        return Math.atan2(y[next[corner]] - y[corner], x[next[corner]] - x[corner]);
    }

    /**
     * The angle at which it is shortest along a sheet, of those at which it is no wider than the sheet; to a degree for a
     * piece free to turn; not a number when there is none.
     */
    double narrowest(double width) {
        int tries = free() ? DEGREES : turned.length;
        double shortest = Double.POSITIVE_INFINITY;
        double angle = Double.NaN;
        for (int k = 0; k < tries; k++) {
            Turned lies = free() ? new Turned(this, Math.PI * k / DEGREES) : turned[k];
            if (lies.height() <= width && lies.width() < shortest) {
                shortest = lies.width();
                angle = lies.angle;
            }
        }
        return angle;
    }

    /** Whether it may lie at any angle. */
    boolean free() {
        return turns.length == 0;
    }

    /** The shape at an angle that it may lie at. */
    Turned at(double angle) {
        int k = turned.length - 1;
        while (k > 0 && turned[k].angle != angle) {
            k--;
        }
        return turned[k];
    }

    private List<double[]> poles() {
        double low = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double left = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            left = Math.min(left, x[i]);
            right = Math.max(right, x[i]);
            low = Math.min(low, y[i]);
            high = Math.max(high, y[i]);
        }
        double stepX = (right - left) / GRID;
        double stepY = (high - low) / GRID;
        double[] free = new double[GRID * GRID];
        for (int k = 0; k < free.length; k++) {
            int row = k / GRID;
            int column = k % GRID;
            free[k] = inside(left + (column + 0.5) * stepX, low + (row + 0.5) * stepY);
        }
        List<double[]> poles = new ArrayList<>();
        double covered = 0;
        while (poles.size() < MOST_POLES && covered < COVERED * area) {
            int best = 0;
            for (int k = 1; k < free.length; k++) {
                best = free[k] > free[best] ? k : best;
            }
            int row = best / GRID;
            int column = best % GRID;
            double[] pole = climbed(left + (column + 0.5) * stepX, low + (row + 0.5) * stepY, stepX, stepY, poles);
            if (!(pole[2] > 0) || (!poles.isEmpty() && pole[2] < LEAST_POLE * poles.get(0)[2])) {
                break;
            }
            poles.add(pole);
            covered += Math.PI * pole[2] * pole[2];
            for (int k = 0; k < free.length; k++) {
                int r = k / GRID;
                int c = k % GRID;
                double away = Math.hypot(left + (c + 0.5) * stepX - pole[0], low + (r + 0.5) * stepY - pole[1]);
                free[k] = Math.min(free[k], away - pole[2]);
            }
        }
        return poles;
    }

    /** Thinner than the grid: a small circle at a corner stands for it. */
    private double[] thin() {
        return new double[] {x[0], y[0], 1e-3 * reach};
    }

    /** Uphill from a point of the grid, by steps that halve. */
    private double[] climbed(double fromX, double fromY, double stepX, double stepY, List<double[]> poles) {
        double px = fromX;
        double py = fromY;
        double best = room(px, py, poles);
        for (double share = 1; share > 1e-3; share /= 2) {
            boolean better = true;
            while (better) {
                better = false;
                for (int k = 0; k < 4; k++) {
                    double qx = px + (k == 0 ? stepX : k == 1 ? -stepX : 0) * share;
                    double qy = py + (k == 2 ? stepY : k == 3 ? -stepY : 0) * share;
                    double room = room(qx, qy, poles);
                    if (room > best * (1 + 1e-9)) {
                        best = room;
                        px = qx;
                        py = qy;
                        better = true;
                    }
                }
            }
        }
        return new double[] {px, py, best};
    }

    private double room(double px, double py, List<double[]> poles) {
        double room = inside(px, py);
        for (double[] pole : poles) {
            room = Math.min(room, Math.hypot(px - pole[0], py - pole[1]) - pole[2]);
        }
        return room;
    }

    /** Distance to the nearest edge, negative outside. */
    private double inside(double px, double py) {
        double least = Double.POSITIVE_INFINITY;
        double enough = Double.POSITIVE_INFINITY;
        boolean in = false;
        for (int i = 0; i < x.length; i++) {
            int j = next[i];
            double dx = x[j] - x[i];
            double dy = y[j] - y[i];
            double along = ((px - x[i]) * dx + (py - y[i]) * dy) / (dx * dx + dy * dy);
            double share = Math.max(0, Math.min(1, along));
            double offX = px - x[i] - share * dx;
            double offY = py - y[i] - share * dy;
            double square = offX * offX + offY * offY;
            // The exact length costs most: it is asked for only where it could be the least.
            if (square <= enough) {
                least = Math.min(least, Math.hypot(offX, offY));
                enough = least * least * (1 + 1e-12);
            }
            if ((y[i] > py) != (y[j] > py) && px < x[i] + (py - y[i]) / dy * dx) {
                in = !in;
            }
        }
        return in ? least : -least;
    }
}
