package jackwork.check;

import jackwork.motion.MotionEvent;
import jackwork.motion.StrokeResult;
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
        return List.of(new Finding(
                "locks-by-friction",
                "Is it free from locking by its own friction?",
                spread.status(),
                share,
                0.0,
                share,
                "1",
                new Where(null, at, null),
                locks.isEmpty()
                        ? "friction leaves at least " + Words.number(share) + " of its freedom, at stroke "
                                + Words.stroke(at)
                        : "friction alone holds it from stroke " + Words.stroke(at) + " on, "
                                + locks.get(0).direction().name().toLowerCase(java.util.Locale.ROOT),
                spread.status() == Status.PASS
                        ? ""
                        : "Bring the links out of line there, or use thinner, smoother rods.",
                "least of |det(A + friction) / det A| over the stroke = " + Words.number(share),
                spread.grounds()));
    }

    private static double leastShare(StrokeResult stroke) {
        if (!stroke.events(MotionEvent.Kind.LOCK_UP).isEmpty()) {
            return 0;
        }
        return stroke.determinantShare()[Extremes.least(stroke.determinantShare())];
    }
}
