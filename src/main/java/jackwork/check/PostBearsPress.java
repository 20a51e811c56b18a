package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import jackwork.parts.Stopping;
import java.util.ArrayList;
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
        Optional<RodRun> post = assembly.rods().stream()
                .filter(rod -> rod.words().equals(stop.by()))
                .findFirst();
        Optional<Part> edge = part(assembly, stop.own());
        if (post.isEmpty() || edge.isEmpty()) {
            return List.of(notKnown(stop));
        }
        PressedRod rod = new PressedRod(
                assembly, post.get().name(), post.get().at(), post.get().diameter(), List.of(edge.get()));
        return new PressAnswer(press.get(), assembly, "post", ASKED, loads -> {
                    double force = loads.byStop().length();
                    List<Gives> all = new ArrayList<>(rod.gives(force));
                    all.add(edge(edge.get(), rod, force));
                    return all;
                })
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

    private static Optional<Part> part(Assembly assembly, String name) {
        return assembly.parts().stream()
                .filter(part -> part.name().equals(name))
                .findFirst();
    }

    /** Pressed in by the post until it bears on its width. */
    private static Gives edge(Part part, PressedRod rod, double force) {
        double thick = part.thickness().value();
        return new Gives(
                "the edge of " + part.name() + " on " + rod.name(),
                "crushes",
                force / (rod.diameter() * thick),
                part.kind().strength().edgewise(),
                "strength of " + part.kind().label() + " edgewise",
                Words.number(force) + " N / (d t), t = " + Words.number(thick) + " mm");
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
