package jackwork.check;

import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.motion.rest.MotionEvent;
import jackwork.motion.rest.StrokeResult;
import java.util.List;

/** Friction does not hold the mechanism fast, whatever the finger does. */
final class LocksByFriction implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        StrokeResult stroke = subject.stroke();
        int worst = Extremes.least(stroke.determinantShare());
        double share = leastShare(stroke);
        Spread spread = subject.strokeSpread(LocksByFriction::leastShare);
        List<MotionEvent> locks = stroke.events(MotionEvent.Kind.LOCK_UP);
        double at = locks.isEmpty() ? stroke.stroke()[worst] : locks.get(0).stroke();
        boolean measured = !Double.isNaN(stroke.determinantShare()[worst]);
        return List.of(Finding.ask(Topic.LOCKS_BY_FRICTION, say("Is it free from locking by its own friction?"))
                .answer(spread.status(), measured ? share : null, 0.0, measured ? share : null, "1")
                .at(new Where(null, locks.isEmpty() && !measured ? null : at, null))
                .because(
                        locks.isEmpty() ? free(measured, share, at) : held(locks.get(0), at),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Bring the links out of line there, or use thinner, smoother rods."),
                        measured
                                ? "least of |det(A + friction) / det A| over the stroke = " + Words.number(share)
                                : "a balance with friction was found at every stroke reached, both ways: "
                                        + (locks.isEmpty() ? "yes" : "no"),
                        spread));
    }

    private static Sentence free(boolean measured, double share, double at) {
        return measured
                ? say("friction leaves at least {} of its freedom, at {}", Measure.share(share), stroke(at))
                : say("it finds its balance at every stroke that it reaches; how near it comes to locking is not"
                        + " computed where parts are free of the lever");
    }

    private static Sentence held(MotionEvent lock, double at) {
        return say(
                "friction alone holds it from {} on, {}",
                stroke(at),
                lock.direction().name().toLowerCase(java.util.Locale.ROOT));
    }

    /** Where it is not computed, 1 stands for free and 0 for locked: it then serves the verdict alone. */
    private static double leastShare(StrokeResult stroke) {
        if (!stroke.events(MotionEvent.Kind.LOCK_UP).isEmpty()) {
            return 0;
        }
        double least = stroke.determinantShare()[Extremes.least(stroke.determinantShare())];
        return Double.isNaN(least) ? 1 : least;
    }
}
