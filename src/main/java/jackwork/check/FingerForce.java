package jackwork.check;

import static jackwork.check.Measure.newtons;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.motion.rest.StrokeResult;
import jackwork.stock.Uncertain;
import java.util.List;

/** A visitor's finger is strong enough. */
final class FingerForce implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        Uncertain comfortable = subject.assembly().workshop().finger().comfortable();
        StrokeResult stroke = subject.stroke();
        int worst = Extremes.greatest(stroke.pressForce());
        double force = greatestForce(stroke);
        double margin = comfortable.value() - force;
        Spread spread = subject.strokeSpread(s -> comfortable.value() - greatestForce(s))
                .add("comfortable finger force", comfortable, v -> v - force);
        return List.of(Finding.ask(Topic.FINGER_FORCE, say("Is it light enough to press?"))
                .answer(spread.status(), force, comfortable.value(), margin, "N")
                .at(new Where(
                        null, stroke.stroke()[worst], subject.assembly().lever().press()))
                .because(
                        say("pressing takes at most {}, at {}", newtons(force), stroke(stroke.stroke()[worst])),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Lengthen the lever outside the box, or use less weight."),
                        "greatest finger force, friction included = " + Words.number(force) + " N; comfortable = "
                                + Words.number(comfortable.value()) + " N",
                        spread));
    }

    private static double greatestForce(StrokeResult stroke) {
        return stroke.pressForce()[Extremes.greatest(stroke.pressForce())] / 1e6;
    }
}
