package jackwork.make;

import jackwork.design.Speeds;
import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutShape;
import jackwork.drawing.CutSheet;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The order in which a sheet is worked: engraved first, then all inside cuts, then the outsides, since what is cut out
 * no longer lies still, and of those the innermost first, where a part lies in an opening of another; within each, the nearest next, then pairs of ways uncrossed while that shortens them. A ring is
 * begun at its corner nearest to where the head comes from.
 *
 * @param sheet the same paths in that order
 * @param engrave length engraved, mm
 * @param cut length cut, mm
 * @param travel way of the head between paths, beam off, mm
 * @param seconds at the workshop's speeds; without warming up and the sheet's laying in
 */
record CutPlan(CutSheet sheet, double engrave, double cut, double travel, double seconds) {

    private static final int MOST_ROUNDS = 50;

    static CutPlan of(CutSheet sheet, Speeds speeds) {
        List<CutPath> planned = new ArrayList<>();
        Point head = Point.ORIGIN;
        double travel = 0;
        double engrave = 0;
        double cut = 0;
        for (List<CutPath> together : stages(sheet.paths())) {
            for (CutPath path : uncrossed(head, nearestNext(head, together))) {
                CutPath begun = begunNear(path, head);
                planned.add(begun);
                travel += head.distance(start(begun.shape()));
                head = end(begun.shape());
                double length = length(begun.shape());
                engrave += path.kind() == CutKind.ENGRAVE ? length : 0;
                cut += path.kind() == CutKind.ENGRAVE ? 0 : length;
            }
        }
        sheet.paths().stream().filter(path -> path.kind() == CutKind.MARK).forEach(planned::add);
        double seconds = engrave / speeds.engrave().value()
                + cut / speeds.cut().value()
                + travel / speeds.travel().value();
        CutSheet inOrder = new CutSheet(sheet.title(), sheet.width(), sheet.height(), planned, sheet.labels());
        return new CutPlan(inOrder, engrave, cut, travel, seconds);
    }

    /** What may be cut in any order among itself, first things first. */
    private static List<List<CutPath>> stages(List<CutPath> paths) {
        List<CutPath> engraved = new ArrayList<>();
        List<CutPath> inside = new ArrayList<>();
        List<CutPath> outside = new ArrayList<>();
        for (CutPath path : paths) {
            switch (path.kind()) {
                case ENGRAVE -> engraved.add(path);
                case INSIDE -> inside.add(path);
                case OUTSIDE -> outside.add(path);
                case MARK -> {}
            }
        }
        // An opening in which another part lies goes with the outsides, after that part's: its waste falls out with all
        // in it.
        List<CutPath> parts = List.copyOf(outside);
        for (CutPath opening : List.copyOf(inside)) {
            if (parts.stream().anyMatch(part -> encloses(opening.shape(), start(part.shape())))) {
                inside.remove(opening);
                outside.add(new CutPath(CutKind.OUTSIDE, opening.shape(), opening.id()));
            }
        }
        List<List<CutPath>> stages = new ArrayList<>(List.of(engraved, inside));
        stages.addAll(innermostFirst(outside));
        return stages;
    }

    private static List<List<CutPath>> innermostFirst(List<CutPath> outside) {
        NavigableMap<Integer, List<CutPath>> byDepth = new TreeMap<>();
        for (CutPath path : outside) {
            int depth = (int) outside.stream()
                    .filter(other -> !other.equals(path) && encloses(other.shape(), start(path.shape())))
                    .count();
            byDepth.computeIfAbsent(depth, d -> new ArrayList<>()).add(path);
        }
        return List.copyOf(byDepth.descendingMap().values());
    }

    private static boolean encloses(CutShape shape, Point at) {
        if (shape instanceof CutShape.Round round) {
            return round.circle().centre().distance(at) < round.circle().radius();
        }
        return shape instanceof CutShape.Ring ring && Outline.ringHolds(ring.points(), at);
    }

    private static List<CutPath> nearestNext(Point from, List<CutPath> paths) {
        List<CutPath> left = new ArrayList<>(paths);
        List<CutPath> ordered = new ArrayList<>();
        Point head = from;
        while (!left.isEmpty()) {
            CutPath best = left.get(0);
            double least = Double.POSITIVE_INFINITY;
            for (CutPath path : left) {
                double way = head.distance(start(begunNear(path, head).shape()));
                if (way < least) {
                    least = way;
                    best = path;
                }
            }
            left.remove(best);
            ordered.add(best);
            head = end(begunNear(best, head).shape());
        }
        return ordered;
    }

    /** Turns stretches of the order round while that shortens the whole way. */
    private static List<CutPath> uncrossed(Point from, List<CutPath> paths) {
        List<CutPath> best = paths;
        double least = way(from, best);
        boolean shorter = true;
        for (int round = 0; round < MOST_ROUNDS && shorter; round++) {
            shorter = false;
            for (int i = 0; i < best.size() - 1; i++) {
                for (int k = i + 1; k < best.size(); k++) {
                    if (!mayGain(from, best, i, k)) {
                        continue;
                    }
                    List<CutPath> next = new ArrayList<>(best);
                    Collections.reverse(next.subList(i, k + 1));
                    double way = way(from, next);
                    if (way < least - 1e-9) {
                        best = next;
                        least = way;
                        shorter = true;
                    }
                }
            }
        }
        return best;
    }

    /** A quick look at the two ways that turning i to k round changes, by where paths now begin. */
    private static boolean mayGain(Point from, List<CutPath> paths, int i, int k) {
        Point before = i == 0 ? from : start(paths.get(i - 1).shape());
        Point first = start(paths.get(i).shape());
        Point last = start(paths.get(k).shape());
        double now = before.distance(first);
        double then = before.distance(last);
        if (k + 1 < paths.size()) {
            Point after = start(paths.get(k + 1).shape());
            now += last.distance(after);
            then += first.distance(after);
        }
        return then < now;
    }

    private static double way(Point from, List<CutPath> paths) {
        Point head = from;
        double way = 0;
        for (CutPath path : paths) {
            CutShape shape = begunNear(path, head).shape();
            way += head.distance(start(shape));
            head = end(shape);
        }
        return way;
    }

    /** The same path, a ring begun at its corner nearest to a point, a line at its nearer end. */
    private static CutPath begunNear(CutPath path, Point head) {
        if (path.shape() instanceof CutShape.Ring ring) {
            List<Point> points = ring.points();
            int nearest = 0;
            for (int i = 1; i < points.size(); i++) {
                if (head.distance(points.get(i)) < head.distance(points.get(nearest))) {
                    nearest = i;
                }
            }
            List<Point> turned = new ArrayList<>(points);
            Collections.rotate(turned, -nearest);
            return new CutPath(path.kind(), new CutShape.Ring(turned), path.id());
        }
        if (path.shape() instanceof CutShape.Line line) {
            List<Point> points = line.points();
            if (head.distance(points.get(points.size() - 1)) < head.distance(points.get(0))) {
                List<Point> turned = new ArrayList<>(points);
                Collections.reverse(turned);
                return new CutPath(path.kind(), new CutShape.Line(turned), path.id());
            }
        }
        return path;
    }

    private static Point start(CutShape shape) {
        if (shape instanceof CutShape.Ring ring) {
            return ring.points().get(0);
        }
        if (shape instanceof CutShape.Line line) {
            return line.points().get(0);
        }
        CutShape.Round round = (CutShape.Round) shape;
        return round.circle().centre().plus(new Point(round.circle().radius(), 0));
    }

    private static Point end(CutShape shape) {
        return shape instanceof CutShape.Line line
                ? line.points().get(line.points().size() - 1)
                : start(shape);
    }

    private static double length(CutShape shape) {
        if (shape instanceof CutShape.Round round) {
            return 2 * Math.PI * round.circle().radius();
        }
        boolean closed = shape instanceof CutShape.Ring;
        List<Point> points = closed ? ((CutShape.Ring) shape).points() : ((CutShape.Line) shape).points();
        double length = 0;
        for (int i = 1; i < points.size() + (closed ? 1 : 0); i++) {
            length += points.get(i - 1).distance(points.get(i % points.size()));
        }
        return length;
    }
}
