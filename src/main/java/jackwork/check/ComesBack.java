package jackwork.check;

import static jackwork.check.Measure.newtons;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.motion.rest.MotionEvent;
import jackwork.motion.rest.StrokeResult;
import java.util.List;

/** Weight alone brings lever and figure back from anywhere on the stroke. */
final class ComesBack implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        StrokeResult stroke = subject.stroke();
        int worst = Extremes.least(stroke.returnForce());
        double force = leastForce(stroke);
        double dragged = leastForce(subject.draggedStroke());
        Spread spread = subject.strokeSpread(ComesBack::leastForce)
                .reserve(PivotDrag.reserve(subject.assembly(), dragged, "N"), dragged);
        List<MotionEvent> hangs = stroke.events(MotionEvent.Kind.HANGS_UP);
        double at = hangs.isEmpty() ? stroke.stroke()[worst] : hangs.get(0).stroke();
        return List.of(Finding.ask(Topic.COMES_BACK, say("Does its weight bring it back from every stroke?"))
                .answer(spread.status(), force, 0.0, force, "N")
                .at(new Where(
                        subject.assembly()
                                .body(subject.assembly().lever().body())
                                .name(),
                        at,
                        subject.assembly().lever().press()))
                .because(
                        hangs.isEmpty()
                                ? say(
                                        "let go anywhere, the lever is pushed back with at least {}, least at {}",
                                        newtons(force),
                                        stroke(at))
                                : say(
                                        "the return force turns negative at {} and stays so to {} %: it hangs"
                                                + " there",
                                        stroke(at), stroke(hangs.get(0).until()).bare()),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say(
                                        "Add weight behind the hinge it bows about, or take weight off what reaches forward."),
                        "least finger force that holds it while returning, friction included = " + Words.number(force)
                                + " N at " + Words.stroke(stroke.stroke()[worst]),
                        spread));
    }

    /** N; a locked or unreached stroke is left to other questions. */
    private static double leastForce(StrokeResult stroke) {
        return stroke.returnForce()[Extremes.least(stroke.returnForce())] / 1e6;
    }
}
