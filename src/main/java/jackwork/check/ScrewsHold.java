package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.CaseEntry;
import jackwork.design.Named;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import java.util.List;

/** Each screw that holds the works goes through the near wall and a plate of the works, with wood around it in both. */
final class ScrewsHold implements Question {

    /** @param wood beside the screw's hole, mm; negative where it goes through none */
    private record Held(int number, Point at, double wood, String in) {}

    @Override
    public boolean appliesTo(Subject subject) {
        CaseEntry housing = subject.design().box().housing();
        return housing != null && !housing.screws().isEmpty();
    }

    @Override
    public List<Finding> ask(Subject subject) {
        CaseEntry housing = subject.design().box().housing();
        if (housing == null) {
            return List.of();
        }
        Held worst = null;
        for (int i = 0; i < housing.screws().size(); i++) {
            Point at = subject.design().inBox(housing.screws().get(i), "");
            Held inWall = new Held(i + 1, at, inWall(housing, at), "the near wall");
            Held inPlate = new Held(i + 1, at, inPlate(subject, at), "a plate of the works");
            for (Held held : List.of(inWall, inPlate)) {
                worst = worst == null || held.wood() < worst.wood() ? held : worst;
            }
        }
        double least = LeastBar.of(
                Named.in(subject.design().workshop().sheets(), housing.stock())
                        .thickness()
                        .value(),
                subject.design().workshop().laser().kerf().value());
        return worst == null ? List.of() : List.of(finding(worst, least));
    }

    private static double inWall(CaseEntry housing, Point at) {
        double across = Math.min(at.x() - housing.left(), housing.left() + housing.width() - at.x());
        double up = Math.min(at.y() - housing.floor(), housing.floor() + housing.height() - at.y());
        return Math.min(across, up) - RodRun.SCREW_HOLE / 2;
    }

    private static double inPlate(Subject subject, Point at) {
        return subject.assembly().body(0).parts().stream()
                .filter(Part::ofBox)
                .mapToDouble(part -> {
                    Outline plate = part.drawn().filled();
                    double edge = plate.distanceToEdge(at);
                    return (plate.contains(at) ? edge : -edge) - RodRun.SCREW_HOLE / 2;
                })
                .max()
                .orElse(0);
    }

    private static Finding finding(Held held, double least) {
        boolean holds = held.wood() >= least;
        return Finding.ask(Topic.SCREWS_HOLD, say("Does every screw go through the wall and a plate of the works?"))
                .answer(holds ? Status.PASS : Status.FAIL, held.wood(), least, held.wood() - least, "mm")
                .at(new Where("screw " + held.number(), null, held.at()))
                .because(
                        held.wood() > 0
                                ? say(
                                        "screw {} has {} of wood beside it in {}",
                                        held.number(),
                                        mm(held.wood()),
                                        held.in())
                                : say(
                                        "screw {} goes {} beside {} and holds nothing",
                                        held.number(),
                                        mm(-held.wood()),
                                        held.in()),
                        holds
                                ? Sentence.NOTHING
                                : say(
                                        "Move the screw inward, where it goes through the wall and a plate of the works."),
                        "wood beside its hole, least of all = " + Words.number(held.wood()) + " mm; at least "
                                + Words.number(least) + " mm (common practice, no source)");
    }
}
