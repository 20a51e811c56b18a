package jackwork.check;

import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.motion.rest.MotionEvent;
import jackwork.motion.rest.StrokeResult;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Link;
import jackwork.parts.TouchPair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is held by nothing but its weight stays where it lies. */
final class RiderStays implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        List<Finding> findings = new ArrayList<>();
        for (int number = 1; number < assembly.bodies().size(); number++) {
            if (isRider(assembly, number)) {
                findings.add(finding(subject.stroke(), assembly.body(number)));
            }
        }
        return findings;
    }

    private static boolean isRider(Assembly assembly, int number) {
        boolean pinned = assembly.pins().stream().anyMatch(pin -> pin.holder() == number || pin.runner() == number)
                || assembly.slides().stream().anyMatch(slide -> slide.peg() == number || slide.slot() == number);
        List<Link> links = assembly.links().stream()
                .filter(link -> link.bodies().contains(number))
                .toList();
        return !pinned && !links.isEmpty() && links.stream().allMatch(link -> link instanceof TouchPair);
    }

    private static Finding finding(StrokeResult stroke, Body rider) {
        Optional<MotionEvent> fall = stroke.events(MotionEvent.Kind.FALLS_OVER).stream()
                .filter(event -> event.concernsBody(rider.name()))
                .findFirst();
        double at = fall.map(MotionEvent::stroke).orElse(1.0);
        return Finding.ask(Topic.RIDER_STAYS, rider.name(), say("Does {} stay on?", rider.name()))
                .answer(fall.isEmpty() ? Status.PASS : Status.FAIL, at, 1.0, at - 1, "stroke")
                .at(new Where(rider.name(), at, rider.centre()))
                .because(
                        fall.map(event -> say("{} at {}", event.what(), stroke(event.stroke())))
                                .orElse(say("{} neither tips nor slides all along the stroke", rider.name())),
                        fall.isEmpty()
                                ? Sentence.NOTHING
                                : say("Give it a wider foot or a rim, or keep its seat more level."),
                        "no rest is left for it from " + Words.stroke(at));
    }
}
