package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.geometry.Wanted;
import jackwork.motion.rest.StrokeResult;
import jackwork.parts.Assembly;
import jackwork.parts.CamPair;
import jackwork.parts.GearMesh;
import jackwork.parts.Link;
import jackwork.parts.Part;
import jackwork.parts.RackMesh;
import jackwork.parts.RatchetPair;
import jackwork.parts.Stopping;
import jackwork.parts.TouchPair;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Parts of one layer never meet along the stroke, unless a joint means them to. Swept: from each pose it goes
 * on only as far as the gap found there allows, by the greatest way that any point of the two can go
 * against each other; between solved poses, poses are taken in proportion.
 */
final class PartsClash implements Question {

    /** Gaps are followed down to this, mm; less counts as meeting. */
    private static final double MEETS = 0.02;

    /** The least gap is followed until it cannot be less than this share of what is told. */
    private static final double NEAR_ENOUGH = 0.75;

    /** @param reach farthest corner from the body's centre, mm */
    private record Placed(Part part, int body, double reach) {}

    /** @param at sample, with its fraction */
    private record Gap(double distance, double at, String a, String b) {}

    @Override
    public boolean isQuick() {
        return false;
    }

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        List<Placed> parts = new ArrayList<>();
        for (int body = 0; body < assembly.bodies().size(); body++) {
            for (Part part : assembly.body(body).parts()) {
                Point centre = assembly.body(body).centre();
                double reach = part.drawn().outer().stream()
                        .mapToDouble(centre::distance)
                        .max()
                        .orElse(0);
                parts.add(new Placed(part, body, reach));
            }
        }
        Gap least = new Gap(Double.POSITIVE_INFINITY, 0, "", "");
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                Placed a = parts.get(i);
                Placed b = parts.get(j);
                boolean apart =
                        a.body() != b.body() && a.part().layer() == b.part().layer();
                if (apart && !meant(assembly, a.part().name(), b.part().name())) {
                    Gap gap = sweep(subject, a, b, least.distance());
                    least = gap.distance() < least.distance() ? gap : least;
                }
            }
        }
        return Double.isInfinite(least.distance()) ? List.of() : List.of(finding(subject, least));
    }

    /** Whether two parts are made to touch. */
    private static boolean meant(Assembly assembly, String a, String b) {
        Set<String> pair = Set.of(a, b);
        // Where one stops the other, its way ends: they meet there and go no farther.
        for (Stopping stopping : assembly.ends()) {
            Stopping.Obstacle met = stopping.met();
            if (met != null && stopping.holds() && pair.equals(Set.of(met.own(), met.by()))) {
                return true;
            }
        }
        for (Link link : assembly.links()) {
            boolean joined = (link instanceof GearMesh mesh && pair.equals(Set.of(mesh.partA(), mesh.partB())))
                    || (link instanceof RackMesh rack && pair.equals(Set.of(rack.gearPart(), rack.rackPart())))
                    || (link instanceof TouchPair touch && pair.equals(Set.of(touch.partA(), touch.partB())))
                    || (link instanceof CamPair cam && pair.contains(cam.camPart()) && follows(assembly, cam, pair))
                    || (link instanceof RatchetPair pawl
                            && pair.contains(pawl.wheelPart())
                            && isOf(assembly, pawl.pawl(), pair, pawl.wheelPart()));
            if (joined) {
                return true;
            }
        }
        return false;
    }

    private static boolean follows(Assembly assembly, CamPair cam, Set<String> pair) {
        return isOf(assembly, cam.follower(), pair, cam.camPart());
    }

    private static boolean isOf(Assembly assembly, int body, Set<String> pair, String but) {
        return assembly.body(body).parts().stream()
                .anyMatch(part -> pair.contains(part.name()) && !part.name().equals(but));
    }

    /** Least gap of two parts over both ways, as far as it is less than {@code known}. */
    private static Gap sweep(Subject subject, Placed a, Placed b, double known) {
        StrokeResult stroke = subject.stroke();
        Gap least = new Gap(known, 0, "", "");
        double[][][] ways = stroke.pose() == stroke.returnPose() || stroke.pose()[0] == stroke.returnPose()[0]
                ? new double[][][] {stroke.pose()}
                : new double[][][] {stroke.pose(), stroke.returnPose()};
        int last = (int) Math.floor(stroke.reach() * (stroke.stroke().length - 1) + 1e-9);
        for (double[][] way : ways) {
            double at = 0;
            while (at <= last) {
                Wanted.goOn();
                double gap = apart(subject, a, b, way, at);
                if (gap <= least.distance()) {
                    gap = exact(subject, a, b, way, at);
                }
                if (gap < least.distance()) {
                    least = new Gap(gap, at, a.part().name(), b.part().name());
                }
                if (gap < MEETS) {
                    return new Gap(0, at, a.part().name(), b.part().name());
                }
                if (at == last) {
                    break;
                }
                at = Math.min(
                        last, advance(subject, a, b, way, at, Math.max(MEETS, gap - NEAR_ENOUGH * least.distance())));
            }
        }
        return least;
    }

    /** A gap that two parts have for certain: between circles about their bodies' centres. */
    private static double apart(Subject subject, Placed a, Placed b, double[][] way, double at) {
        return centre(subject, a, way, at).distance(centre(subject, b, way, at)) - a.reach() - b.reach();
    }

    private static Point centre(Subject subject, Placed placed, double[][] way, double at) {
        Assembly assembly = subject.assembly();
        Point drawn = assembly.body(placed.body()).centre();
        if (placed.body() == assembly.coinWorks().bucket()) {
            return drawn.turnedAbout(
                    assembly.coinWorks().pivot(), assembly.coinWorks().angle(1));
        }
        int number = number(subject, placed.body());
        if (number < 0) {
            return drawn;
        }
        int low = (int) Math.floor(at);
        int high = Math.min(way.length - 1, low + 1);
        double[] p = way[low];
        double[] q = Double.isNaN(way[high][0]) ? p : way[high];
        return new Point(
                mix(p[3 * number], q[3 * number], at - low), mix(p[3 * number + 1], q[3 * number + 1], at - low));
    }

    /** How far along the samples two parts may go before any point of them has gone {@code allowed} mm. */
    private static double advance(Subject subject, Placed a, Placed b, double[][] way, double from, double allowed) {
        double left = allowed;
        double at = from;
        while (at < way.length - 1) {
            int next = (int) Math.floor(at) + 1;
            double moved = (next - at) * (motion(subject, a, way, next) + motion(subject, b, way, next));
            if (moved > left) {
                return at + (next - at) * left / moved;
            }
            left -= moved;
            at = next;
        }
        return way.length - 1;
    }

    /** Greatest way of any point of a part from sample next − 1 to next, mm. */
    private static double motion(Subject subject, Placed placed, double[][] way, int next) {
        int number = number(subject, placed.body());
        if (number < 0) {
            return 0;
        }
        double[] p = way[next - 1];
        double[] q = way[next];
        if (p == null || q == null || Double.isNaN(q[0])) {
            return 0;
        }
        return Math.hypot(q[3 * number] - p[3 * number], q[3 * number + 1] - p[3 * number + 1])
                + placed.reach() * Math.abs(q[3 * number + 2] - p[3 * number + 2]);
    }

    private static int number(Subject subject, int body) {
        Assembly assembly = subject.assembly();
        return body == 0 || body == assembly.coinWorks().bucket()
                ? -1
                : subject.mechanism().bodyNumber(assembly.body(body).name());
    }

    /** Distance of the edges, with a moved into b's frame; parts inside one another do not come apart again. */
    private static double exact(Subject subject, Placed a, Placed b, double[][] way, double at) {
        Pose ofA = pose(subject, a, way, at);
        Pose ofB = pose(subject, b, way, at);
        Point shift = new Point(ofA.x() - ofB.x(), ofA.y() - ofB.y()).turned(-ofB.angle());
        Outline moved = a.part().drawn().moved(new Pose(shift.x(), shift.y(), ofA.angle() - ofB.angle()));
        return at == 0 && moved.overlaps(b.part().drawn())
                ? 0
                : b.part().drawn().distance(moved);
    }

    /** Where a part is, as a turn about the origin and a shift from the position drawn. */
    private static Pose pose(Subject subject, Placed placed, double[][] way, double at) {
        Assembly assembly = subject.assembly();
        if (placed.body() == assembly.coinWorks().bucket()) {
            // Nothing moves before a coin has tipped it.
            return Pose.about(assembly.coinWorks().pivot(), assembly.coinWorks().angle(1));
        }
        int number = number(subject, placed.body());
        if (number < 0) {
            return Pose.REST;
        }
        int low = (int) Math.floor(at);
        int high = Math.min(way.length - 1, low + 1);
        double share = at - low;
        double[] p = way[low];
        double[] q = Double.isNaN(way[high][0]) ? p : way[high];
        double angle = mix(p[3 * number + 2], q[3 * number + 2], share);
        Point turned = assembly.body(placed.body()).centre().turned(angle);
        return new Pose(
                mix(p[3 * number], q[3 * number], share) - turned.x(),
                mix(p[3 * number + 1], q[3 * number + 1], share) - turned.y(),
                angle);
    }

    private static double mix(double p, double q, double share) {
        return p + share * (q - p);
    }

    private static Finding finding(Subject subject, Gap gap) {
        double at = gap.at() / (subject.stroke().stroke().length - 1);
        boolean clear = gap.distance() > 0;
        return Finding.ask(Topic.PARTS_CLASH, say("Do parts of one layer keep clear of each other along the stroke?"))
                .answer(clear ? Status.PASS : Status.FAIL, gap.distance(), 0.0, clear ? gap.distance() : -1, "mm")
                .at(new Where(gap.a(), at, null))
                .because(
                        clear
                                ? say(
                                        "{} and {} come nearest, {} at {}",
                                        gap.a(),
                                        gap.b(),
                                        mm(gap.distance()),
                                        stroke(at))
                                : say("{} and {} meet at {}", gap.a(), gap.b(), stroke(at)),
                        clear
                                ? Sentence.NOTHING
                                : say("Move one of them to another layer, or cut away where they meet."),
                        "least distance of any two parts of one layer, swept over the stroke = "
                                + Words.number(gap.distance()) + " mm");
    }
}
