package jackwork.check;

import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.motion.model.Direction;
import jackwork.motion.rest.MotionEvent;
import jackwork.motion.rest.StrokeResult;
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
        return List.of(Finding.ask(Topic.FULL_STROKE, say("Can the lever be pressed all the way?"))
                .answer(end.isEmpty() ? Status.PASS : Status.FAIL, reach, 1.0, reach - 1, "stroke")
                .at(new Where(
                        subject.assembly().lever().pin(),
                        reach,
                        subject.assembly().lever().press()))
                .because(
                        end.map(FullStroke::why).orElse(say("nothing stops it before the end of its throw")),
                        end.map(FullStroke::remedy).orElse(Sentence.NOTHING),
                        "it goes to " + Words.stroke(reach)));
    }

    private static Sentence why(MotionEvent end) {
        Measure at = stroke(end.stroke());
        return switch (end.kind()) {
            case FALLS_OVER -> say("{} at {} and finds no rest", end.what(), at);
            case CHANGE_POINT -> say("a change point at {}: {}", at, end.what());
            case DEAD_POINT -> say("a dead point at {}: {}", at, end.what());
            default -> say("{} is met at {}", end.what(), at);
        };
    }

    private static Sentence remedy(MotionEvent end) {
        return switch (end.kind()) {
            case FALLS_OVER -> say("Give it a seat with a rim, more friction, or a pin.");
            case CHANGE_POINT ->
                say("Shorten the lever's throw, or add a second crank out of line that leads it through.");
            case DEAD_POINT -> say("Shorten the lever's throw, or lengthen the link that comes into line.");
            default -> say("Move that stop, or shorten the lever's throw.");
        };
    }
}
