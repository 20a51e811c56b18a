package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.parts.Stopping;
import java.util.List;
import java.util.Optional;

/** Whether the post that the bucket rests on, its holes and the edge that rests on it bear the press that is refused. */
final class PostBearsPress implements Question {

    private static final Sentence ASKED =
            say("Does the post behind the strut bear the strongest press without a coin?");

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        Optional<RefusedPress> press = RefusedPress.of(assembly);
        Stopping.Obstacle stop = press.map(RefusedPress::stop).orElse(null);
        if (press.isEmpty() || stop == null) {
            // What of it cannot be told is told of the pivots, and that nothing stops it by what stops it.
            return List.of();
        }
        Optional<StopRod> found = press.get().rest().flatMap(rest -> StopRod.of(assembly, rest));
        if (found.isEmpty()) {
            return List.of(notKnown(stop));
        }
        PressedRod rod = found.get().rod();
        return PressAnswer.refused(
                        press.get(),
                        "post",
                        ASKED,
                        loads -> found.get().gives(loads.byStop().length()))
                .ask(new Where(rod.name(), 0.0, rod.at()), (first, strongest) -> {
                    double load = press
                            .get()
                            .loads(assembly.coinWorks()
                                    .catchFriction()
                                    .coefficient()
                                    .value())
                            .stream()
                            .mapToDouble(loads -> loads.byStop().length())
                            .max()
                            .orElse(0);
                    return say(
                            "{}, or set it farther from the {}'s pivot.",
                            rod.wouldBear(load, strongest)
                                    .map(thick -> say("Take {} for {}", thick, rod.name()))
                                    .orElse(say("Take a thicker rod for {}, or one of steel", rod.name())),
                            assembly.coinWorks().bucketWord());
                });
    }

    private static Finding notKnown(Stopping.Obstacle stop) {
        return Finding.ask(Topic.REFUSED_PRESS, "post", ASKED)
                .answer(Status.OPEN, null, null, null, "N")
                .at(new Where(stop.by(), 0.0, stop.meeting().at()))
                .because(
                        say("{} rests on {}; only a rod in the way of wood is reckoned", stop.own(), stop.by()),
                        say("Press the locked lever of the first piece as hard as a visitor would, and look there."),
                        stop.own() + " meets " + stop.by());
    }
}
