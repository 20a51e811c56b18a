package jackwork.geometry;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where an outline that turns about a pivot first meets one that stands still.
 *
 * @param angle turned from the position drawn until they meet, rad, counter-clockwise positive
 * @param at where they meet
 * @param out out of the standing outline's wood there, unit
 */
public record TurnedMeeting(double angle, Point at, Point out) {

    /** A corner beyond an edge's end by less, mm, still meets it: where two edges join, rounding lets nothing through. */
    static final double BESIDE = 1e-9;

    /** A corner that goes along an edge, within this sine of an angle, does not come into its wood. */
    private static final double ALONG = 1e-9;

    /**
     * The first place on the way at which wood comes into wood: a corner's arc against an edge, both ways round, which is
     * all there is as long as edges are straight. Empty when they pass each other. Where they overlap at the beginning, the
     * place is told at which they meet next: ask from where they are apart.
     *
     * @param from where the way begins, rad from the position drawn
     * @param to where it ends, less than a turn away; below {@code from} for clockwise
     */
    public static Optional<TurnedMeeting> first(
            Outline turning, Point pivot, Outline standing, double from, double to) {
        return first(new AboutPivot(turning, pivot), new AboutPivot(standing, pivot), from, to);
    }

    /** The same, both outlines about the pivot already. */
    public static Optional<TurnedMeeting> first(AboutPivot turning, AboutPivot standing, double from, double to) {
        Way way = new Way(turning.pivot, from, to);
        if (turning.mayMeet(standing)) {
            way.cornersAgainstEdges(turning, standing, true);
            way.cornersAgainstEdges(standing, turning, false);
        }
        return Optional.ofNullable(way.first);
    }

    /** How far from the pivot they meet, mm. */
    public double arm(Point pivot) {
        return at.distance(pivot);
    }

    private static final class Way {

        private final Point pivot;
        private final double from;
        private final double sense;
        /** Turned from {@code from} when they meet first as far as is known, rad, not negative. */
        private double least;

        private @Nullable TurnedMeeting first;

        Way(Point pivot, double from, double to) {
            this.pivot = pivot;
            this.from = from;
            this.sense = to < from ? -1 : 1;
            this.least = Math.abs(to - from);
        }

        /** @param turns whether the corners' outline turns, or else that of the edges */
        void cornersAgainstEdges(AboutPivot corners, AboutPivot edges, boolean turns) {
            int[] near = edges.between(corners.nearest, corners.farthest);
            for (int c = 0; c < corners.count; c++) {
                double radius = corners.radius[c];
                if (radius < edges.nearest - BESIDE || radius > edges.farthest + BESIDE) {
                    continue;
                }
                for (int e : near) {
                    if (radius >= edges.off[e] && radius <= edges.reach[e] + BESIDE) {
                        crossings(corners, c, edges, e, turns);
                    }
                }
            }
        }

        /** Where a corner's arc crosses an edge with its wood on the left, out of nothing into wood. */
        private void crossings(AboutPivot corners, int c, AboutPivot edges, int e, boolean turns) {
            double radius = corners.radius[c];
            double half = Math.sqrt(radius * radius - edges.off[e] * edges.off[e]);
            for (int side = -1; side <= 1; side += 2) {
                double at = edges.foot[e] + side * half;
                if (at < -BESIDE || at > edges.length[e] + BESIDE) {
                    continue;
                }
                double x = edges.x[e] + edges.alongX[e] * at;
                double y = edges.y[e] + edges.alongY[e] * at;
                // The corner's way there, as seen from the edges' outline, into the wood on the edge's left.
                double into = (edges.alongX[e] * x + edges.alongY[e] * y) * (turns ? sense : -sense);
                if (into > ALONG * radius) {
                    offer(corners, c, x, y, edges, e, turns);
                }
            }
        }

        private void offer(AboutPivot corners, int c, double x, double y, AboutPivot edges, int e, boolean turns) {
            double beforeX = corners.x[c];
            double beforeY = corners.y[c];
            double cross = beforeX * y - beforeY * x;
            double between = Math.atan2(cross, beforeX * x + beforeY * y) * (turns ? 1 : -1);
            double turned = forward((between - from) * sense);
            if (turned < least) {
                least = turned;
                double angle = from + sense * turned;
                Point right = new Point(edges.alongY[e], -edges.alongX[e]);
                // Where the corner stands still, the edge has turned to it.
                first = turns
                        ? new TurnedMeeting(angle, pivot.plus(new Point(x, y)), right)
                        : new TurnedMeeting(
                                angle,
                                pivot.plus(new Point(beforeX, beforeY)),
                                right.turned(angle).times(-1));
            }
        }

        /** Into [0, a turn); what lies behind by rounding alone lies there. */
        private static double forward(double angle) {
            double rest = angle % (2 * Math.PI);
            double ahead = rest < 0 ? rest + 2 * Math.PI : rest;
            return 2 * Math.PI - ahead < 1e-12 ? 0 : ahead;
        }
    }
}
