package jackwork.drawing;

import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Gives a closed line the sharp corners back that pixels have blunted: where two straight edges lead to one, it is
 * where they meet. A tip is lost where it is narrower than a pixel, so that a beak of 12° ends four pixels short.
 * Pixels, y down.
 *
 * @param points of the line
 * @param corner by point: to be left where it is
 */
record LoopCorners(List<Point> points, boolean[] corner) {

    /** A corner is told by the ways that so many points before and after it go. */
    static final int REACH = 6;

    /** Steps of pixels turn by less than this over that reach, degrees; so does an arc of 1.5 mm at 300 dpi. */
    private static final double LEAST_TURN = 35;

    /** Edges are taken from beyond what is blunted on, over so many pixels. */
    private static final double SKIPPED = 6;

    private static final double FITTED = 12;

    /** How far an edge's points may be from straight, pixels. */
    private static final double STRAIGHT = 0.3;

    /** A straight edge: a point on it and its direction, along the way. */
    private record Edge(Point at, Point direction) {}

    /** A corner to put in place of the points after {@code from} and before {@code to}, both possibly past the end. */
    private record Tip(Point at, int from, int to) {}

    static LoopCorners of(List<Point> loop) {
        int count = loop.size();
        double[] turns = turns(loop);
        List<Tip> tips = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (peak(turns, i)) {
                Optional<Tip> tip = tip(loop, i);
                if (tip.isPresent() && i - tip.get().from() <= count / 4) {
                    tips.add(tip.get());
                }
            }
        }
        tips.removeIf(tip -> tip.from() < 0 || tip.to() >= count);
        List<Point> points = new ArrayList<>(count);
        List<Integer> sharp = new ArrayList<>();
        int next = 0;
        for (Tip tip : tips) {
            if (tip.from() < next) {
                continue;
            }
            points.addAll(loop.subList(next, tip.from() + 1));
            sharp.add(points.size());
            points.add(tip.at());
            next = tip.to();
        }
        points.addAll(loop.subList(next, count));
        double[] left = turns(points);
        boolean[] corner = new boolean[points.size()];
        for (int i = 0; i < corner.length; i++) {
            corner[i] = Math.abs(left[i]) > Math.toRadians(LEAST_TURN);
        }
        sharp.forEach(i -> corner[i] = true);
        return new LoopCorners(points, corner);
    }

    /** By point: how far the way turns there, radians. */
    private static double[] turns(List<Point> loop) {
        int count = loop.size();
        double[] turns = new double[count];
        for (int i = 0; i < count; i++) {
            Point here = loop.get(i);
            Point in = here.minus(loop.get(Math.floorMod(i - REACH, count)));
            Point out = loop.get((i + REACH) % count).minus(here);
            turns[i] = Math.atan2(in.cross(out), in.dot(out));
        }
        return turns;
    }

    /** The first of the sharpest places around. */
    private static boolean peak(double[] turns, int i) {
        double here = Math.abs(turns[i]);
        if (here <= Math.toRadians(LEAST_TURN)) {
            return false;
        }
        for (int j = 1; j <= REACH; j++) {
            if (Math.abs(turns[Math.floorMod(i - j, turns.length)]) >= here
                    || Math.abs(turns[(i + j) % turns.length]) > here) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Tip> tip(List<Point> loop, int at) {
        int before = away(loop, at, -1);
        int after = away(loop, at, 1);
        Optional<Edge> in = edge(loop, before, -1);
        Optional<Edge> out = edge(loop, after, 1);
        if (in.isEmpty() || out.isEmpty()) {
            return Optional.empty();
        }
        Point u = in.get().direction().times(-1);
        Point v = out.get().direction();
        double cross = u.cross(v);
        if (Math.abs(cross) < 0.05) {
            return Optional.empty();
        }
        double along = out.get().at().minus(in.get().at()).cross(v) / cross;
        Point meet = in.get().at().plus(u.times(along));
        double half = (Math.PI - Math.abs(Math.atan2(cross, u.dot(v)))) / 2;
        double most = 0.5 / Math.tan(half) + 0.7;
        return meet.distance(loop.get(at)) <= most ? Optional.of(new Tip(meet, before, after)) : Optional.empty();
    }

    /** Index, perhaps below 0 or past the end, of the first point so far from another along the way. */
    private static int away(List<Point> loop, int at, int step) {
        int i = at;
        while (loop.get(Math.floorMod(i, loop.size())).distance(loop.get(at)) < SKIPPED
                && Math.abs(i - at) < loop.size()) {
            i += step;
        }
        return i;
    }

    /** The straight line through the points from one on, when there is one; its direction is that of the steps. */
    private static Optional<Edge> edge(List<Point> loop, int first, int step) {
        Point start = loop.get(Math.floorMod(first, loop.size()));
        List<Point> points = new ArrayList<>();
        for (int i = first; points.size() < 4 * FITTED; i += step) {
            Point point = loop.get(Math.floorMod(i, loop.size()));
            if (point.distance(start) > FITTED) {
                break;
            }
            points.add(point);
        }
        Point mean = points.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / points.size());
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (Point point : points) {
            Point d = point.minus(mean);
            xx += d.x() * d.x();
            xy += d.x() * d.y();
            yy += d.y() * d.y();
        }
        double angle = Math.atan2(2 * xy, xx - yy) / 2;
        Point along = new Point(Math.cos(angle), Math.sin(angle));
        boolean forward = points.get(points.size() - 1).minus(start).dot(along) > 0;
        Point direction = forward ? along : along.times(-1);
        boolean straight =
                points.stream().allMatch(point -> Math.abs(point.minus(mean).cross(direction)) <= STRAIGHT);
        return straight ? Optional.of(new Edge(mean, direction)) : Optional.empty();
    }
}
