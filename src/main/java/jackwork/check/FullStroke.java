package jackwork.check;

import jackwork.motion.Direction;
import jackwork.motion.MotionEvent;
import jackwork.motion.StrokeResult;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The lever goes all the way: no dead point, no stop before. */
final class FullStroke implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        StrokeResult stroke = subject.stroke();
        Optional<MotionEvent> end = Stream.concat(
                        Stream.concat(
                                stroke.events(MotionEvent.Kind.DEAD_POINT).stream(),
                                stroke.events(MotionEvent.Kind.CHANGE_POINT).stream()),
                        Stream.concat(
                                stroke.events(MotionEvent.Kind.STOP_REACHED).stream(),
                                stroke.events(MotionEvent.Kind.FALLS_OVER).stream()))
                .filter(event -> event.direction() == Direction.PRESSING)
                .filter(event -> stroke.reach() < 1 && event.stroke() >= stroke.reach() - 1e-9)
                .findFirst();
        double reach = end.map(MotionEvent::stroke).orElse(1.0);
        return List.of(new Finding(
                "full-stroke",
                "Can the lever be pressed all the way?",
                end.isEmpty() ? Status.PASS : Status.FAIL,
                reach,
                1.0,
                reach - 1,
                "stroke",
                new Where(
                        subject.assembly().lever().pin(),
                        reach,
                        subject.assembly().lever().press()),
                end.map(FullStroke::why).orElse("nothing stops it before the end of its throw"),
                end.map(FullStroke::remedy).orElse(""),
                "stroke reached = " + Words.stroke(reach) + " of 1",
                List.of()));
    }

    private static String why(MotionEvent end) {
        if (end.kind() == MotionEvent.Kind.FALLS_OVER) {
            return end.what() + " at stroke " + Words.stroke(end.stroke()) + " and finds no rest";
        }
        String at = " at stroke " + Words.stroke(end.stroke());
        if (end.kind() == MotionEvent.Kind.CHANGE_POINT) {
            return "a change point" + at + ": " + end.what();
        }
        return end.kind() == MotionEvent.Kind.DEAD_POINT
                ? "a dead point" + at + ": " + end.what()
                : end.what() + " is met" + at;
    }

    private static String remedy(MotionEvent end) {
        if (end.kind() == MotionEvent.Kind.FALLS_OVER) {
            return "Give it a seat with a rim, more friction, or a pin.";
        }
        if (end.kind() == MotionEvent.Kind.CHANGE_POINT) {
            return "Shorten the lever's throw, or add a second crank out of line that leads it through.";
        }
        return end.kind() == MotionEvent.Kind.DEAD_POINT
                ? "Shorten the lever's throw, or lengthen the link that comes into line."
                : "Move that stop, or shorten the lever's throw.";
    }
}
