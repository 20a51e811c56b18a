package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.design.GestureEntry;
import jackwork.geometry.Point;
import jackwork.motion.rest.StrokeResult;
import jackwork.parts.Body;
import java.util.ArrayList;
import java.util.List;

/** A watched point has gone as far as wanted by the wanted stroke. */
final class GestureReached implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        subject.gestures().forEach((name, gesture) -> findings.add(find(subject, name, gesture)));
        return findings;
    }

    private static Finding find(Subject subject, String name, GestureEntry gesture) {
        Double by = gesture.by();
        double stroke = by == null ? 1 : by;
        Point rest = subject.watched(name);
        double moved = moved(subject, gesture, rest, stroke);
        double margin = moved - gesture.distance();
        Double toward = gesture.toward();
        String direction = toward == null ? "" : " toward " + Words.number(toward) + "°";
        boolean reached = margin > 0;
        return Finding.ask(Topic.GESTURE_REACHED, name, say("Does {} move as wanted?", name))
                .answer(reached ? Status.PASS : Status.FAIL, moved, gesture.distance(), margin, "mm")
                .at(new Where(gesture.part(), stroke, rest))
                .because(
                        Double.isNaN(moved)
                                ? say("{} is not seen at {}: the lever does not get that far", name, stroke(stroke))
                                : say("{} moves {}{} by {}", name, mm(moved), direction, stroke(stroke)),
                        reached
                                ? Sentence.NOTHING
                                : say("Lengthen the lever's throw, or the arm that carries {}.", name),
                        "way from rest" + direction + " = " + Words.number(moved) + " mm; wanted "
                                + Words.number(gesture.distance()) + " mm");
    }

    /** mm; NaN when that stroke is not reached. */
    static double moved(Subject subject, GestureEntry gesture, Point rest, double stroke) {
        StrokeResult result = subject.stroke();
        int sample = (int) Math.round(stroke * (result.stroke().length - 1));
        Body body = subject.assembly().body(subject.assembly().bodyOf(gesture.part()));
        if (body.isGround()) {
            return 0;
        }
        if (body.equals(subject.assembly().body(subject.assembly().coinWorks().bucket()))) {
            return along(
                    gesture,
                    CoinSeat.tipped(subject.assembly().coinWorks(), rest, 1).minus(rest));
        }
        int number = subject.mechanism().bodyNumber(body.name());
        double[] pose = result.pose()[sample];
        Point now = rest.minus(body.centre())
                .turned(pose[3 * number + 2])
                .plus(new Point(pose[3 * number], pose[3 * number + 1]));
        return along(gesture, now.minus(rest));
    }

    /** The part of a way that counts, mm. */
    private static double along(GestureEntry gesture, Point way) {
        Double toward = gesture.toward();
        return toward == null ? way.length() : way.dot(new Point(1, 0).turned(Math.toRadians(toward)));
    }
}
