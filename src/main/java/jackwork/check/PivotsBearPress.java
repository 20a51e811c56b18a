package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.parts.Bearing;
import jackwork.parts.Part;
import jackwork.parts.PinJoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether the rods that lever and bucket turn on, and their holes, bear the press that is refused. */
final class PivotsBearPress implements Question {

    private static final Sentence ASKED = say("Do both pivots bear the strongest press without a coin?");

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        Optional<RefusedPress> found = RefusedPress.of(assembly);
        double friction = assembly.coinWorks().catchFriction().coefficient().value();
        if (found.isEmpty()) {
            return List.of(notKnown(
                    assembly,
                    say(
                            "as drawn no wood of the lever comes onto wood of the {}",
                            assembly.coinWorks().bucketWord()),
                    say("Draw the tooth so that it comes down on the strut, in a layer that both are in.")));
        }
        if (found.get().loads(friction).isEmpty()) {
            return List.of(notKnown(
                    assembly,
                    say("the strut slips from beneath the tooth, so that the press is not refused"),
                    say(
                            "Move the tooth's edge to the closing side of the {}'s pivot.",
                            assembly.coinWorks().bucketWord())));
        }
        RefusedPress press = found.get();
        PressedRod lever = rod(assembly, assembly.lever().body(), assembly.leverBearing());
        PressedRod bucket = rod(assembly, assembly.coinWorks().bucket(), assembly.bucketBearing());
        return PressAnswer.refused(press, "pivots", ASKED, loads -> {
                    List<Gives> all =
                            new ArrayList<>(lever.gives(loads.onLever().length()));
                    all.add(lever.runs(loads.onLever().length()));
                    all.addAll(bucket.gives(loads.onBucket().length()));
                    all.add(bucket.runs(loads.onBucket().length()));
                    return all;
                })
                .ask(new Where(bucket.name(), 0.0, bucket.at()), (first, strongest) -> {
                    boolean ofLever = first.part().toString().endsWith(" " + lever.name());
                    PressedRod rod = ofLever ? lever : bucket;
                    double load = press
                            .loads(assembly.coinWorks()
                                    .catchFriction()
                                    .coefficient()
                                    .value())
                            .stream()
                            .mapToDouble(loads -> (ofLever ? loads.onLever() : loads.onBucket()).length())
                            .max()
                            .orElse(0);
                    return say(
                            "{}, or move the tooth farther from the lever's pivot.",
                            rod.wouldBear(load, strongest)
                                    .map(thick -> say("Take {} for {}", thick, rod.name()))
                                    .orElse(say("Take a thicker rod for {}, or one of steel", rod.name())));
                });
    }

    /** A body on its rod, be it that it turns on that or that the rod turns with it in the plates. */
    static PressedRod rod(Assembly assembly, int body, Bearing bearing) {
        PinJoint pin = bearing.pin();
        List<Part> about = assembly.body(body).parts().stream()
                .filter(part -> part.holes().stream()
                        .anyMatch(hole ->
                                hole.bore() != null && hole.circle().centre().distance(pin.at()) < PressedRod.SAME))
                .toList();
        return new PressedRod(assembly, pin.name().split("/", 2)[0], pin.at(), 2 * pin.radius(), about);
    }

    private static Finding notKnown(Assembly assembly, Sentence why, Sentence remedy) {
        return Finding.ask(Topic.REFUSED_PRESS, "pivots", ASKED)
                .answer(Status.OPEN, null, null, null, "N")
                .at(new Where("tooth", 0.0, assembly.coinWorks().tooth()))
                .because(why, remedy, "no force on the pivots is known");
    }
}
