package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Assembly;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import jackwork.parts.Stopping;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Between the layers that have its hole a rod meets no wood: every other part there is clear of it, or open where it goes, at
 * rest and all along the run.
 */
final class RodsPass implements Question {

    /** Two edges drawn alike may meet by so much, mm. */
    private static final double TOUCH = 0.05;

    /** @param stroke at which it is least */
    private record Met(RodRun rod, Part part, double gap, double stroke) {}

    @Override
    public List<Finding> ask(Subject subject) {
        Met nearest = null;
        RunPoses poses = new RunPoses(subject);
        for (Part part : subject.assembly().parts()) {
            for (RodRun rod : subject.rods()) {
                boolean between = rod.from() < part.layer() && part.layer() < rod.to();
                if (between && !rod.parts().contains(part.name()) && !stops(subject.assembly(), rod, part)) {
                    nearest = nearer(nearest, subject.assembly(), poses, rod, part);
                }
            }
        }
        return nearest == null ? List.of() : List.of(finding(nearest, isPost(subject, nearest.rod())));
    }

    private static boolean isPost(Subject subject, RodRun rod) {
        return Stream.of(
                        subject.design().box().works(),
                        subject.design().figure().works())
                .map(works -> works.pins().get(rod.name()))
                .anyMatch(pin -> pin != null && pin.stops() != null);
    }

    /** What stops a part stands in its way on purpose: there its way ends. */
    private static boolean stops(Assembly assembly, RodRun rod, Part part) {
        int body = assembly.bodyOf(part.name());
        for (Stopping stopping : assembly.ends()) {
            Stopping.Obstacle met = stopping.met();
            if (met != null
                    && stopping.holds()
                    && stopping.end().body() == body
                    && met.by().equals(rod.words())) {
                return true;
            }
        }
        return false;
    }

    /** Where a rod comes nearer to the wood of a part than it has to any: at rest as drawn, then wherever the two have gone. */
    private static Met nearer(@Nullable Met before, Assembly assembly, RunPoses poses, RodRun rod, Part part) {
        Met nearest = before;
        Bounds bounds = part.drawn().bounds();
        double gap = gap(part, rod.at(), rod.radius());
        if (nearest == null || gap < nearest.gap()) {
            nearest = new Met(rod, part, gap, 0);
        }
        int carries = rod.parts().isEmpty() ? 0 : assembly.bodyOf(rod.parts().get(0));
        int body = assembly.bodyOf(part.name());
        for (int i = 0; i < poses.count() && carries != body; i++) {
            Pose pose = poses.pose(i, body);
            Point there = poses.at(i, carries, rod.at())
                    .minus(new Point(pose.x(), pose.y()))
                    .turned(-pose.angle());
            // Most rods pass most parts from afar: no edge is nearer than the box around them all.
            if (bounds.distance(there) - rod.radius() < nearest.gap()) {
                gap = gap(part, there, rod.radius());
                if (gap < nearest.gap()) {
                    nearest = new Met(rod, part, gap, poses.stroke(i));
                }
            }
        }
        return nearest;
    }

    /** Between a rod and the wood of a part, mm; negative where the rod would have to go through it. */
    private static double gap(Part part, Point at, double radius) {
        for (Hole hole : part.holes()) {
            double within = hole.circle().radius() - hole.circle().centre().distance(at);
            if (within > 0) {
                return within - radius;
            }
        }
        double edge = part.drawn().distanceToEdge(at);
        return (part.drawn().contains(at) ? -edge : edge) - radius;
    }

    /** @param post whether the rod is there to stop something */
    private static Finding finding(Met met, boolean post) {
        boolean clear = met.gap() > -TOUCH;
        String rod = met.rod().words();
        String part = met.part().name();
        return Finding.ask(Topic.RODS_PASS, say("Does every rod reach its holes without going through other wood?"))
                .answer(clear ? Status.PASS : Status.FAIL, met.gap(), -TOUCH, met.gap() + TOUCH, "mm")
                .at(new Where(part, met.stroke(), met.rod().at()))
                .because(
                        clear
                                ? say(
                                        "{} is nearest to what passes it, {}: {}, at {}",
                                        part,
                                        rod,
                                        mm(met.gap()),
                                        stroke(met.stroke()))
                                : say(
                                        "{} has wood where {} goes through its layer, at {}",
                                        part,
                                        rod,
                                        stroke(met.stroke())),
                        clear
                                ? Sentence.NOTHING
                                : post
                                        ? say(
                                                "Move {}, or let it be held by parts on one side of what it stops alone, so that it"
                                                        + " ends before {}.",
                                                met.rod().name(),
                                                part)
                                        : say(
                                                "Name {} among the parts of {}, cut it away there, or move one of the two.",
                                                part,
                                                met.rod().name()),
                        "distance of the wood from the axis − radius of the rod = " + Words.number(met.gap())
                                + " mm, least of all parts in layers that a rod passes, at rest and all along the run");
    }
}
