package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every hole lies within its part, with wood left between it and the edge, and between it and the next hole: the beam chars
 * both sides of a narrow bar, and a rod pressed in splits it.
 */
final class HolesInWood implements Question {

    /** Two holes drawn as near as this are one. */
    private static final double ONE = 0.01;

    private record Bar(Part part, Hole hole, @Nullable Hole other, double width, double least) {

        double margin() {
            return width - least;
        }
    }

    @Override
    public List<Finding> ask(Subject subject) {
        double kerf = subject.assembly().workshop().laser().kerf().value();
        Bar thinnest = null;
        for (Part part : subject.assembly().parts()) {
            double least = LeastBar.of(part.thickness().value(), kerf);
            for (Hole hole : part.holes()) {
                Point at = hole.circle().centre();
                double edge = part.drawn().distanceToEdge(at) - hole.circle().radius();
                thinnest = thinner(thinnest, new Bar(part, hole, null, edge, least));
                for (Hole other : part.holes()) {
                    double apart = at.distance(other.circle().centre());
                    if (apart > ONE) {
                        double bar =
                                apart - hole.circle().radius() - other.circle().radius();
                        thinnest = thinner(thinnest, new Bar(part, hole, other, bar, least));
                    }
                }
            }
        }
        return thinnest == null ? List.of() : List.of(finding(thinnest, kerf));
    }

    private static Bar thinner(@Nullable Bar known, Bar bar) {
        return known == null || bar.margin() < known.margin() ? bar : known;
    }

    private static Finding finding(Bar bar, double kerf) {
        Hole other = bar.other();
        boolean holds = bar.margin() >= 0;
        String between = other == null ? "the edge" : "the hole for " + other.joint();
        String where = "between the hole of " + bar.part().name() + " for "
                + bar.hole().joint() + " and " + between;
        return Finding.ask(Topic.HOLES_IN_WOOD, say("Does every hole leave wood around it?"))
                .answer(holds ? Status.PASS : Status.FAIL, bar.width(), bar.least(), bar.margin(), "mm")
                .at(new Where(bar.part().name(), null, bar.hole().circle().centre()))
                .because(
                        bar.width() > 0
                                ? say("{} {} of wood are left", where, mm(bar.width()))
                                : say("{} no wood is left: the hole breaks out by {}", where, mm(-bar.width())),
                        holds
                                ? Sentence.NOTHING
                                : other == null
                                        ? say("Draw the part wider there, move the hole inward, or take a thinner rod.")
                                        : say("Move the two holes apart, or take a thinner rod."),
                        "wood " + Words.number(bar.width()) + " mm; "
                                + LeastBar.words(bar.part().thickness().value(), kerf));
    }
}
