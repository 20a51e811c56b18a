package jackwork.check;

import static jackwork.check.Measure.newtons;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.motion.model.Direction;
import jackwork.motion.rest.MotionEvent;
import jackwork.motion.rest.StrokeResult;
import jackwork.parts.StringRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Each string pulls at some stroke, and none is pulled past what its part can give. */
final class StringsPull implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (StringRun string : subject.assembly().links(StringRun.class)) {
            findings.add(overpulled(subject, string));
            findings.add(pulls(subject.stroke(), string));
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
        return Finding.ask(
                        Topic.STRING_OVERPULLED,
                        string.name(),
                        say("Can the lever go on without {} holding it?", string.name()))
                .answer(end.isEmpty() ? Status.PASS : Status.FAIL, reach, 1.0, reach - 1, "stroke")
                .at(new Where(string.fromPart(), reach, string.from()))
                .because(
                        end.isEmpty()
                                ? say("what {} pulls is never at its end while the lever still goes", string.name())
                                : say("at {} {} is taut and what it pulls is at its end", stroke(reach), string.name()),
                        end.isEmpty()
                                ? Sentence.NOTHING
                                : say(
                                        "Give {} more slack, tie it nearer the lever's pivot, or open that stop.",
                                        string.name()),
                        "the taut string meets a stop at " + Words.stroke(reach) + "; slack now "
                                + Words.number(string.slack()) + " mm");
    }

    /** How it goes round each of its guides as drawn: what a picture alone does not say. */
    private static String turned(StringRun string) {
        List<Double> wraps = string.path().wraps();
        if (wraps.isEmpty()) {
            return "over nothing";
        }
        return "turned as drawn "
                + wraps.stream()
                        .map(wrap -> wrap < 0 ? "0° (passes it by)" : Words.number(Math.toDegrees(wrap)) + "°")
                        .collect(Collectors.joining(", "));
    }

    private static Finding pulls(StrokeResult stroke, StringRun string) {
        double[] load = stroke.loadOf(string.name());
        double most = load[Extremes.greatest(load)] / 1e6 * string.capstan();
        double holds = string.holds().low();
        boolean slack = most == 0;
        Spread spread = new Spread(slack ? -1 : string.holds().value() - most);
        spread.add("pull that " + string.cord() + " bears", string.holds(), value -> value - most);
        int first = 0;
        while (first < load.length - 1 && !(load[first] > 0)) {
            first++;
        }
        return Finding.ask(
                        Topic.STRING_PULLS,
                        string.name(),
                        say("Does {} pull, and does its cord bear that?", string.name()))
                .answer(
                        spread.status(),
                        most,
                        string.holds().value(),
                        slack ? -1.0 : string.holds().value() - most,
                        "N")
                .at(new Where(string.fromPart(), stroke.stroke()[first], string.from()))
                .because(
                        slack
                                ? say("{} stays slack all along the stroke", string.name())
                                : say(
                                        "{} is taut from {} and pulls with at most {}",
                                        string.name(),
                                        stroke(stroke.stroke()[first]),
                                        newtons(most)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : slack
                                        ? say("Shorten it, or tie it farther from the lever's pivot.")
                                        : say("Take a stronger cord."),
                        "greatest tension, at the end that is pulled: what it moves takes "
                                + Words.number(most / string.capstan())
                                + " N, friction on its posts makes "
                                + Words.number(string.capstan()) + " times that of it (" + turned(string) + ") = "
                                + Words.number(most)
                                + " N; cord bears "
                                + Words.number(holds) + " N at the least",
                        spread);
    }
}
