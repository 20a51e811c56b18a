package jackwork.make;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.design.Design;
import jackwork.geometry.Circle;
import java.util.List;

/**
 * The thinnest bar of wood between a panel's openings, slots, screws and edges. Openings are as large as what goes through
 * them sweeps; a figure that reaches far, or a screw in the way, leaves too little wood or none.
 */
final class CaseBars {

    private static final Sentence QUESTION = say("Does every panel of the case hold together around its openings?");
    private static final Sentence REMEDY =
            say("Make the case wider or deeper, move the screw, or bring what goes through it nearer to the middle.");

    private record Bar(String panel, double width, double thickness) {}

    private CaseBars() {}

    /** One finding, about the panel with the thinnest bar; none for a box without a case. */
    static List<Finding> ask(Design design, Subject subject) {
        Case housing;
        try {
            housing = Case.of(design, subject);
        } catch (CaseException e) {
            return List.of(broken(design, e));
        }
        if (housing == null) {
            return List.of();
        }
        Bar worst = housing.panels().stream()
                .map(CaseBars::bar)
                .min((a, b) -> Double.compare(a.width() / a.thickness(), b.width() / b.thickness()))
                .orElseThrow();
        double limit = ThinnestNeck.LEAST_THICKNESSES * worst.thickness();
        Status status = worst.width() <= 0 ? Status.FAIL : worst.width() < limit ? Status.DOUBTFUL : Status.PASS;
        return List.of(Finding.ask(Topic.CASE_BARS, QUESTION)
                .answer(status, worst.width(), limit, worst.width() - limit, "mm")
                .at(new Where(worst.panel(), null, null))
                .because(
                        say(
                                "{} has the thinnest bar: {}{}",
                                worst.panel(),
                                (worst.width() >= ThinnestNeck.WIDE ? "at least " : ""),
                                mm(worst.width())),
                        status == Status.PASS ? Sentence.NOTHING : REMEDY,
                        "bar = " + Words.number(worst.width()) + " mm; at least two thirds of the sheet's thickness, "
                                + Words.number(limit) + " mm (common practice, no source)"));
    }

    private static Bar bar(Panel panel) {
        double width = ThinnestNeck.neck(panel.outline());
        for (Circle hole : panel.holes()) {
            double wood = panel.outline().contains(hole.centre())
                    ? panel.outline().distanceToEdge(hole.centre()) - hole.radius()
                    : 0;
            width = Math.min(width, Math.max(0, wood));
        }
        return new Bar(panel.name(), width, panel.to() - panel.from());
    }

    /** Nothing else is said of a case that cannot be cut; all that does not need its panels is told beside it. */
    private static Finding broken(Design design, CaseException fault) {
        return Finding.ask(Topic.CASE_BARS, QUESTION)
                .answer(Status.FAIL, 0.0, null, null, "mm")
                .at(new Where(fault.panel(), null, null))
                .because(
                        say("{}: {}: {}", CaseMaker.file(design), String.join(", ", fault.keys()), fault.reason()),
                        REMEDY,
                        "");
    }
}
