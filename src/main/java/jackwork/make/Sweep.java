package jackwork.make;

import jackwork.check.Subject;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.geometry.Wanted;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What passes through the walls of the case, over the whole stroke: lever, figure, and the rods' ends not counted. */
final class Sweep {

    /** Angles of the bucket between rest and its stop that are looked at. */
    private static final int TIPS = 9;

    private Sweep() {}

    /**
     * A part's crossing of a slab: how far it spreads along the slab, and in which depth.
     *
     * @param nearsFrom by how much its lower edge comes down on what is beyond it while the lever is pressed, mm
     * @param nearsTo by how much its upper edge comes up
     */
    record Crossing(String part, double from, double to, double back, double front, double nearsFrom, double nearsTo) {}

    /** How far a part spreads along a slab when it is so far on its way; nothing where it is not in it. */
    record Spread(double from, double to) {
        boolean isThere() {
            return from <= to;
        }
    }

    /**
     * Everything that crosses a slab perpendicular to the mechanism's plane.
     *
     * @param upright whether the slab is x = {@code low} to {@code high}; else it is y
     * @param clear how near to the slab counts for what moves, mm; the box's own plates may stand against it
     * @param from where the slab begins, along itself
     * @param to where it ends
     */
    static List<Crossing> through(
            Subject subject, boolean upright, double low, double high, double clear, double from, double to) {
        Assembly assembly = subject.assembly();
        Layers layers = Layers.of(assembly.parts());
        List<Crossing> crossings = new ArrayList<>();
        for (int body = 0; body < assembly.bodies().size(); body++) {
            List<Pose> poses = poses(subject, body);
            List<Pose> pressed = body == assembly.coinWorks().bucket() ? List.of() : pressed(subject, body);
            for (Part part : assembly.body(body).parts()) {
                double near = body == 0 ? 0 : clear;
                double least = Double.POSITIVE_INFINITY;
                double most = Double.NEGATIVE_INFINITY;
                for (Spread spread : spreads(part.drawn(), poses, upright, low - near, high + near)) {
                    least = Math.min(least, spread.from);
                    most = Math.max(most, spread.to);
                }
                if (least <= most && most >= from && least <= to) {
                    List<Spread> way = spreads(part.drawn(), pressed, upright, low, high);
                    crossings.add(new Crossing(
                            part.name(),
                            Math.max(from, least),
                            Math.min(to, most),
                            layers.back(part.layer()),
                            layers.front(part.layer()),
                            nears(way, spread -> spread.from),
                            nears(way, spread -> -spread.to)));
                }
            }
        }
        return crossings;
    }

    /** How far a part spreads along a slab, place by place of its way. */
    static List<Spread> spreads(Outline part, List<Pose> way, boolean upright, double low, double high) {
        Ring ring = Ring.of(part);
        List<Spread> spreads = new ArrayList<>();
        for (Pose pose : way) {
            Wanted.goOn();
            double[] reach = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
            spread(ring, pose, upright, low, high, reach);
            spreads.add(new Spread(reach[0], reach[1]));
        }
        return spreads;
    }

    /** By how much an edge comes back at most from the farthest that it has been before; endless where it was away. */
    private static double nears(List<Spread> way, ToDoubleFunction<Spread> edge) {
        double away = Double.NEGATIVE_INFINITY;
        double most = 0;
        for (Spread spread : way) {
            double now = spread.isThere() ? edge.applyAsDouble(spread) : Double.POSITIVE_INFINITY;
            away = Math.max(away, now);
            most = Math.max(most, now == away ? 0 : away - now);
        }
        return most;
    }

    /** Where a body stands as the lever goes down, in order. */
    static List<Pose> pressed(Subject subject, int number) {
        return number == 0
                ? List.of(Pose.REST)
                : along(subject, number, subject.stroke().pose());
    }

    private static List<Pose> along(Subject subject, int number, double[][] way) {
        Body body = subject.assembly().body(number);
        int moving = subject.mechanism().bodyNumber(body.name());
        List<Pose> poses = new ArrayList<>();
        for (double[] pose : way) {
            if (pose != null && !Double.isNaN(pose[3 * moving])) {
                double angle = pose[3 * moving + 2];
                Point turned = body.centre().turned(angle);
                poses.add(new Pose(pose[3 * moving] - turned.x(), pose[3 * moving + 1] - turned.y(), angle));
            }
        }
        return poses;
    }

    /** Where a body stands, sample by sample, as a turn about the origin and a shift from the position drawn. */
    static List<Pose> poses(Subject subject, int number) {
        Assembly assembly = subject.assembly();
        if (number == 0) {
            return List.of(Pose.REST);
        }
        List<Pose> poses = new ArrayList<>();
        if (number == assembly.coinWorks().bucket()) {
            Point pivot = assembly.coinWorks().pivot();
            for (int i = 0; i < TIPS; i++) {
                double tip = assembly.coinWorks().angle((double) i / (TIPS - 1));
                poses.add(Pose.about(pivot, tip));
            }
            return poses;
        }
        poses.addAll(along(subject, number, subject.stroke().pose()));
        poses.addAll(along(subject, number, subject.stroke().returnPose()));
        return poses;
    }

    /** A part's corners, and a circle around them. */
    private record Ring(double[] x, double[] y, Point middle, double reach) {
        static Ring of(Outline outline) {
            List<Point> corners = outline.outer();
            Point middle = outline.centroid();
            return new Ring(
                    corners.stream().mapToDouble(Point::x).toArray(),
                    corners.stream().mapToDouble(Point::y).toArray(),
                    middle,
                    corners.stream().mapToDouble(middle::distance).max().orElse(0));
        }
    }

    private static void spread(Ring ring, Pose pose, boolean upright, double low, double high, double[] reach) {
        Point middle = pose.apply(ring.middle());
        double across = upright ? middle.x() : middle.y();
        if (across + ring.reach() < low || across - ring.reach() > high) {
            return;
        }
        double cos = Math.cos(pose.angle());
        double sin = Math.sin(pose.angle());
        int count = ring.x().length;
        double p = 0;
        double u = 0;
        for (int k = -1; k < count; k++) {
            int corner = k < 0 ? count - 1 : k;
            double x = pose.x() + cos * ring.x()[corner] - sin * ring.y()[corner];
            double y = pose.y() + sin * ring.x()[corner] + cos * ring.y()[corner];
            double q = upright ? x : y;
            double v = upright ? y : x;
            if (k >= 0 && Math.max(p, q) >= low && Math.min(p, q) <= high) {
                // The edge's share within the slab.
                double enter = p == q ? 0 : clamp((low - p) / (q - p));
                double leave = p == q ? 1 : clamp((high - p) / (q - p));
                double one = u + enter * (v - u);
                double other = u + leave * (v - u);
                reach[0] = Math.min(reach[0], Math.min(one, other));
                reach[1] = Math.max(reach[1], Math.max(one, other));
            }
            p = q;
            u = v;
        }
    }

    private static double clamp(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
