package jackwork.geometry;

import java.util.ArrayList;
import java.util.List;
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
    private static final double BESIDE = 1e-9;

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
        Way way = new Way(pivot, from, to);
        way.cornersAgainstEdges(turning, standing, true);
        way.cornersAgainstEdges(standing, turning, false);
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
        void cornersAgainstEdges(Outline corners, Outline edges, boolean turns) {
            List<List<Point>> rings = ringsOf(edges);
            double farthest =
                    cornersOf(edges).stream().mapToDouble(pivot::distance).max().orElse(0);
            for (Point corner : cornersOf(corners)) {
                double radius = corner.distance(pivot);
                if (radius > farthest + BESIDE) {
                    continue;
                }
                for (List<Point> ring : rings) {
                    Point start = ring.get(ring.size() - 1);
                    for (Point end : ring) {
                        edge(corner, radius, start, end, turns);
                        start = end;
                    }
                }
            }
        }

        /** Where a corner's arc crosses an edge with its wood on the left, out of nothing into wood. */
        private void edge(Point corner, double radius, Point start, Point end, boolean turns) {
            Point along = end.minus(start).times(1 / start.distance(end));
            Point foot = along.times(pivot.minus(start).dot(along)).plus(start);
            double off = foot.distance(pivot);
            if (off > radius) {
                return;
            }
            double half = Math.sqrt(radius * radius - off * off);
            for (double side : new double[] {-half, half}) {
                Point place = foot.plus(along.times(side));
                double at = place.minus(start).dot(along);
                if (at < -BESIDE || at > start.distance(end) + BESIDE || !comesIn(place, along, turns)) {
                    continue;
                }
                offer(corner, place, along, turns);
            }
        }

        private boolean comesIn(Point place, Point along, boolean turns) {
            // The corner's way there, as seen from the edges' outline.
            Point way = place.minus(pivot).turned(Math.PI / 2).times(turns ? sense : -sense);
            return along.cross(way) > ALONG * way.length();
        }

        private void offer(Point corner, Point place, Point along, boolean turns) {
            Point before = corner.minus(pivot);
            Point then = place.minus(pivot);
            double between = Math.atan2(before.cross(then), before.dot(then)) * (turns ? 1 : -1);
            double turned = forward((between - from) * sense);
            if (turned < least) {
                least = turned;
                double angle = from + sense * turned;
                Point right = new Point(along.y(), -along.x());
                // Where the corner stands still, the edge has turned to it.
                first = turns
                        ? new TurnedMeeting(angle, place, right)
                        : new TurnedMeeting(angle, corner, right.turned(angle).times(-1));
            }
        }

        /** Into [0, a turn); what lies behind by rounding alone lies there. */
        private static double forward(double angle) {
            double rest = angle % (2 * Math.PI);
            double ahead = rest < 0 ? rest + 2 * Math.PI : rest;
            return 2 * Math.PI - ahead < 1e-12 ? 0 : ahead;
        }
    }

    private static List<Point> cornersOf(Outline outline) {
        List<Point> corners = new ArrayList<>(outline.outer());
        outline.holes().forEach(corners::addAll);
        return corners;
    }

    /** Wood on the left of each: the outer ring counter-clockwise, holes clockwise. */
    private static List<List<Point>> ringsOf(Outline outline) {
        List<List<Point>> rings = new ArrayList<>();
        rings.add(outline.outer());
        rings.addAll(outline.holes());
        return rings;
    }
}
