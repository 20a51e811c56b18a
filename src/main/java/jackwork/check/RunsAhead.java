package jackwork.check;

import static jackwork.check.Measure.newtons;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.motion.rest.MotionEvent;
import jackwork.motion.rest.StrokeResult;
import java.util.List;

/** Pressing, the figure never pulls the lever along by itself. */
final class RunsAhead implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        StrokeResult stroke = subject.stroke();
        int worst = Extremes.least(stroke.pressForce());
        double force = leastForce(stroke);
        Spread spread = subject.strokeSpread(RunsAhead::leastForce);
        List<MotionEvent> runs = stroke.events(MotionEvent.Kind.RUNS_AHEAD);
        double at = runs.isEmpty() ? stroke.stroke()[worst] : runs.get(0).stroke();
        return List.of(Finding.ask(Topic.RUNS_AHEAD, say("Does the figure follow the finger, never run ahead of it?"))
                .answer(spread.status(), force, 0.0, force, "N")
                .at(new Where(null, at, subject.assembly().lever().press()))
                .because(
                        runs.isEmpty()
                                ? say("the finger always has to push, at least {}", newtons(force))
                                : say("from {} the figure's own weight pulls the lever down", stroke(at)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Add weight behind the hinge it bows about."),
                        "least finger force while pressing, friction included = " + Words.number(force) + " N",
                        spread));
    }

    private static double leastForce(StrokeResult stroke) {
        return stroke.pressForce()[Extremes.least(stroke.pressForce())] / 1e6;
    }
}
