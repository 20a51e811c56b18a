package jackwork.check;

import static jackwork.check.Sentence.say;

import java.util.List;
import java.util.Locale;

/** Joints meet as drawn and all along the stroke. */
final class StaysTogether implements Question {

    /** Far below anything a workshop can see; it guards the drawing and the arithmetic. */
    private static final double LIMIT = 1e-6;

    @Override
    public List<Finding> ask(Subject subject) {
        double error = subject.stroke().closureError();
        double margin = LIMIT - error;
        boolean slides = !subject.assembly().slides().isEmpty();
        return List.of(Finding.ask(Topic.STAYS_TOGETHER, say("Do all joints meet, at rest and along the stroke?"))
                .answer(margin > 0 ? Status.PASS : Status.FAIL, error, LIMIT, margin, "mm")
                .at(Where.nowhere())
                .because(
                        margin > 0
                                ? say("every joint stays where it is drawn")
                                : slides
                                        ? say("a peg does not lie on the line of its slot as drawn")
                                        : say("two parts that a joint joins are drawn where it cannot hold them"),
                        margin > 0
                                ? Sentence.NOTHING
                                : slides
                                        ? say("Draw the peg on the middle line of its slot.")
                                        : say("Look at what else fails here, and at joints that drive the same part."),
                        String.format(
                                Locale.ROOT,
                                "greatest miss of any joint over the stroke = %.1e mm; allowed %.0e mm",
                                error,
                                LIMIT)));
    }
}
