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
        return List.of(new Finding(
                Topic.STAYS_TOGETHER,
                "",
                say("Do all joints meet, at rest and along the stroke?"),
                margin > 0 ? Status.PASS : Status.FAIL,
                error,
                LIMIT,
                margin,
                "mm",
                Where.nowhere(),
                margin > 0
                        ? say("every pin and slide stays where it is drawn")
                        : say("a peg does not lie on the line of its slot as drawn"),
                margin > 0 ? Sentence.NOTHING : say("Draw the peg on the middle line of its slot."),
                String.format(
                        Locale.ROOT,
                        "greatest miss of any joint over the stroke = %.1e mm; allowed %.0e mm",
                        error,
                        LIMIT)));
    }
}
