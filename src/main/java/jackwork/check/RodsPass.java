package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import java.util.List;

/**
 * Between the layers that have its hole a rod meets no wood: every other part there is clear of it, or open where it goes.
 * Looked at in the position drawn.
 */
final class RodsPass implements Question {

    /** Two edges drawn alike may meet by so much, mm. */
    private static final double TOUCH = 0.05;

    private record Met(RodRun rod, Part part, double gap) {}

    @Override
    public List<Finding> ask(Subject subject) {
        Met nearest = null;
        for (Part part : subject.assembly().parts()) {
            for (RodRun rod : subject.rods()) {
                boolean between = rod.from() < part.layer() && part.layer() < rod.to();
                if (between && !rod.parts().contains(part.name())) {
                    double gap = gap(part, rod);
                    if (nearest == null || gap < nearest.gap()) {
                        nearest = new Met(rod, part, gap);
                    }
                }
            }
        }
        return nearest == null ? List.of() : List.of(finding(nearest));
    }

    /** Between a rod and the wood of a part, mm; negative where the rod would have to go through it. */
    private static double gap(Part part, RodRun rod) {
        Point at = rod.at();
        for (Hole hole : part.holes()) {
            double within = hole.circle().radius() - hole.circle().centre().distance(at);
            if (within > 0) {
                return within - rod.radius();
            }
        }
        double edge = part.drawn().distanceToEdge(at);
        return (part.drawn().contains(at) ? -edge : edge) - rod.radius();
    }

    private static Finding finding(Met met) {
        boolean clear = met.gap() > -TOUCH;
        String rod = met.rod().words();
        String part = met.part().name();
        return new Finding(
                Topic.RODS_PASS,
                "",
                say("Does every rod reach its holes without going through other wood?"),
                clear ? Status.PASS : Status.FAIL,
                met.gap(),
                -TOUCH,
                met.gap() + TOUCH,
                "mm",
                new Where(part, 0.0, met.rod().at()),
                clear
                        ? say("{} is nearest to what passes it, {}: {}", part, rod, mm(met.gap()))
                        : say("{} has wood where {} goes through its layer", part, rod),
                clear
                        ? Sentence.NOTHING
                        : say(
                                "Name {} among the parts of {}, cut it away there, or move one of the two.",
                                part,
                                met.rod().name()),
                "distance of the wood from the axis − radius of the rod = " + Words.number(met.gap())
                        + " mm, least of all parts in layers that a rod passes, at rest");
    }
}
