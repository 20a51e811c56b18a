package jackwork.check;

import jackwork.motion.Direction;
import jackwork.motion.MotionEvent;
import jackwork.motion.StrokeResult;
import jackwork.parts.Link;
import jackwork.parts.StringRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Each string pulls at some stroke, and none is pulled past what its part can give. */
final class StringsPull implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (Link link : subject.assembly().links()) {
            if (link instanceof StringRun string) {
                findings.add(overpulled(subject, string));
                findings.add(pulls(subject.stroke(), string));
            }
        }
        return findings;
    }

    /** The lever's last part, which it cannot go because the string stands taut against a stop. */
    private static Finding overpulled(Subject subject, StringRun string) {
        StrokeResult stroke = subject.stroke();
        Optional<MotionEvent> end = stroke.events(MotionEvent.Kind.STOP_REACHED).stream()
                .filter(event -> event.direction() == Direction.PRESSING)
                .filter(event -> event.concerns("string " + string.name()))
                .findFirst();
        double reach = end.map(MotionEvent::stroke).orElse(1.0);
        String at = Words.stroke(reach);
        return new Finding(
                "string-overpulled/" + string.name(),
                "Can the lever go on without " + string.name() + " holding it?",
                end.isEmpty() ? Status.PASS : Status.FAIL,
                reach,
                1.0,
                reach - 1,
                "stroke",
                new Where(string.fromPart(), reach, string.from()),
                end.isEmpty()
                        ? "what " + string.name() + " pulls is never at its end while the lever still goes"
                        : "at stroke " + at + " " + string.name() + " is taut and what it pulls is at its end",
                end.isEmpty()
                        ? ""
                        : "Give " + string.name() + " more slack, tie it nearer the lever's pivot, or open that stop.",
                "stroke at which the taut string meets a stop = " + at + " of 1; slack now "
                        + Words.number(string.slack()) + " mm",
                List.of());
    }

    private static Finding pulls(StrokeResult stroke, StringRun string) {
        double[] load = stroke.loadOf(string.name());
        double most = load[Extremes.greatest(load)] / 1e6;
        double holds = string.holds().low();
        boolean slack = most == 0;
        Spread spread = new Spread(slack ? -1 : string.holds().value() - most);
        spread.add("pull that " + string.cord() + " bears", string.holds(), value -> value - most);
        int first = 0;
        while (first < load.length - 1 && !(load[first] > 0)) {
            first++;
        }
        return new Finding(
                "string-pulls/" + string.name(),
                "Does " + string.name() + " pull, and does its cord bear that?",
                spread.status(),
                most,
                string.holds().value(),
                slack ? -1.0 : string.holds().value() - most,
                "N",
                new Where(string.fromPart(), stroke.stroke()[first], string.from()),
                slack
                        ? string.name() + " stays slack all along the stroke"
                        : string.name() + " is taut from stroke " + Words.stroke(stroke.stroke()[first])
                                + " and pulls with at most " + Words.number(most) + " N",
                spread.status() == Status.PASS
                        ? ""
                        : slack ? "Shorten it, or tie it farther from the lever's pivot." : "Take a stronger cord.",
                "greatest tension, friction on its posts included = " + Words.number(most) + " N; cord bears "
                        + Words.number(holds) + " N at the least",
                spread.grounds());
    }
}
