package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Assembly;
import jackwork.parts.Lever;
import jackwork.parts.Part;
import jackwork.parts.Stopping;
import jackwork.parts.TurningEnd;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether what ends the lever's way bears the strongest press, which goes into nothing else once the figure has done all it can:
 * <pre>
 *   (X − P) × F + (S − P) × R s = 0
 * </pre>
 * with X the finger, P the pivot, S where the lever meets its stop and s out of the stop (plane statics, any text). Left out: what
 * the figure takes of the press, weights, friction, and the blow with which the lever arrives.
 */
final class EndBearsPress implements Question {

    private static final Sentence ASKED = say("Does what ends the press bear the strongest?");

    private static final Point DOWN = new Point(0, -1);

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        Optional<Stopping> end = assembly.ends().stream()
                .filter(stopping -> stopping.end().kind() == TurningEnd.Kind.LEVER_PRESSED)
                .findFirst();
        Stopping.Obstacle met = end.map(Stopping::met).orElse(null);
        if (end.isEmpty() || met == null) {
            // That nothing ends it is told by what stops it.
            return List.of();
        }
        Optional<StopRod> found = StopRod.of(assembly, end.get());
        if (found.isEmpty()) {
            return List.of(notKnown(met));
        }
        StopRod stop = found.get();
        Lever lever = assembly.lever();
        double angle = met.meeting().angle();
        Point finger = lever.pressDrawn().turnedAbout(lever.pivot(), angle);
        double pushed = -finger.minus(lever.pivot()).cross(DOWN)
                / stop.at().minus(lever.pivot()).cross(stop.out());
        if (!(pushed > 0) || !Double.isFinite(pushed)) {
            return List.of(notKnown(met));
        }
        Point byStop = stop.out().times(pushed);
        Point onLever = DOWN.plus(byStop).times(-1);
        PressedRod pivot = PivotsBearPress.rod(assembly, lever.body(), assembly.leverBearing());
        List<Gives> all = new ArrayList<>(stop.gives(pushed));
        all.addAll(pivot.gives(onLever.length()));
        all.add(pivot.runs(onLever.length()));
        all.addAll(new PressedWood(
                        "the lever",
                        assembly.body(lever.body()).parts(),
                        Pose.about(lever.pivot(), angle),
                        lever.pivot(),
                        assembly.leverBearing(),
                        List.of(
                                PressedWood.Force.inLayer(
                                        "the finger",
                                        finger,
                                        DOWN,
                                        WoodBearsPress.pressed(assembly).layer()),
                                new PressedWood.Force("what ends its way", stop.at(), byStop, shares(stop.edges()))))
                .gives());
        return new PressAnswer(
                        assembly,
                        Topic.PRESSED_HOME,
                        "",
                        ASKED,
                        null,
                        friction -> all,
                        say("pressed all the way down"),
                        "on its stop " + Words.number(pushed) + " N")
                .ask(
                        new Where(stop.rod().name(), 1.0, stop.at()),
                        (first, strongest) -> say(
                                "{}, set it nearer to the finger, or let more of the lever's layers meet it.",
                                stop.rod()
                                        .wouldBear(pushed, strongest)
                                        .map(thick -> say(
                                                "Take {} for {}",
                                                thick,
                                                stop.rod().name()))
                                        .orElse(say(
                                                "Take a thicker rod for {}, or one of steel",
                                                stop.rod().name()))));
    }

    /** Of each layer that meets it, by thickness. */
    private static Map<Integer, Double> shares(List<Part> edges) {
        double thick =
                edges.stream().mapToDouble(part -> part.thickness().value()).sum();
        Map<Integer, Double> shares = new HashMap<>();
        edges.forEach(part -> shares.merge(part.layer(), part.thickness().value() / thick, Double::sum));
        return shares;
    }

    private static Finding notKnown(Stopping.Obstacle stop) {
        return Finding.ask(Topic.PRESSED_HOME, ASKED)
                .answer(Status.OPEN, null, null, null, "N")
                .at(new Where(stop.by(), 1.0, stop.meeting().at()))
                .because(
                        say("{} is stopped by {}; only a rod in the way of wood is reckoned", stop.own(), stop.by()),
                        say(
                                "Press the lever of the first piece all the way down, as hard as a visitor would, and look there."),
                        stop.own() + " meets " + stop.by());
    }
}
