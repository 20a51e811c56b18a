package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.CaseEntry;
import jackwork.geometry.Bounds;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The box's own parts that never move lie within the case: behind its near wall, between its ends, floor and lid. */
final class WorksInCase implements Question {

    /** Half of what is read to a tenth, mm. */
    private static final double ROUNDING = 0.05;

    /** @param room between a part and a panel, mm; negative where the part would stand in it */
    private record Side(Part part, String panel, double room) {}

    @Override
    public boolean appliesTo(Subject subject) {
        return subject.design().box().housing() != null;
    }

    @Override
    public List<Finding> ask(Subject subject) {
        CaseEntry housing = subject.design().box().housing();
        if (housing == null) {
            return List.of();
        }
        List<Part> parts = subject.assembly().parts();
        List<Part> fixed =
                subject.assembly().body(0).parts().stream().filter(Part::ofBox).toList();
        Layers layers = Layers.of(parts);
        double front = fixed.stream()
                .mapToDouble(part -> layers.front(part.layer()))
                .max()
                .orElse(layers.total());
        List<Side> sides = new ArrayList<>();
        for (Part part : parts) {
            if (part.ofBox()) {
                sides.add(new Side(part, "far wall", layers.back(part.layer()) - front + housing.depth()));
            }
        }
        for (Part part : fixed) {
            Bounds bounds = part.drawn().bounds();
            sides.add(new Side(part, "left wall", bounds.minX() - housing.left()));
            sides.add(new Side(part, "right wall", housing.left() + housing.width() - bounds.maxX()));
            sides.add(new Side(part, "floor", bounds.minY() - housing.floor()));
            sides.add(new Side(part, "lid", housing.floor() + housing.height() - bounds.maxY()));
        }
        return sides.stream().min(Comparator.comparingDouble(Side::room)).map(WorksInCase::finding).stream()
                .toList();
    }

    private static Finding finding(Side side) {
        boolean fits = side.room() >= -ROUNDING;
        String part = side.part().name();
        return Finding.ask(Topic.WORKS_IN_CASE, say("Do the works fit into their case?"))
                .answer(fits ? Status.PASS : Status.FAIL, side.room(), 0.0, side.room(), "mm")
                .at(new Where(part, 0.0, side.part().section().centroid()))
                .because(
                        fits
                                ? say("{} is nearest to a panel, {} from the {}", part, mm(side.room()), side.panel())
                                : say("{} stands {} through the {}", part, mm(-side.room()), side.panel()),
                        fits
                                ? Sentence.NOTHING
                                : say(
                                        "Make the case larger, move its left wall or its floor, or draw {} smaller.",
                                        part),
                        "room between " + part + " and the " + side.panel() + " = " + Words.number(side.room())
                                + " mm");
    }
}
