package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.GestureEntry;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Bearing;
import jackwork.parts.PinJoint;
import jackwork.parts.Variation;
import java.util.ArrayList;
import java.util.List;

/** What the clearances of its pins let the end of a long arm wander in the plane, against what its gesture has to spare. */
final class ArmPlay implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        subject.gestures().forEach((name, gesture) -> {
            Finding finding = find(subject, name, gesture);
            if (finding != null) {
                findings.add(finding);
            }
        });
        return findings;
    }

    private static @org.jspecify.annotations.Nullable Finding find(Subject subject, String name, GestureEntry gesture) {
        Assembly assembly = subject.assembly();
        int number = assembly.bodyOf(gesture.part());
        List<Point> held = assembly.pins().stream()
                .filter(pin -> pin.holder() == number || pin.runner() == number)
                .map(PinJoint::at)
                .toList();
        if (held.isEmpty()) {
            return null;
        }
        Point end = subject.watched(name);
        double base = 0;
        double reach = 0;
        for (Point a : held) {
            reach = Math.max(reach, a.distance(end));
            for (Point b : held) {
                base = Math.max(base, a.distance(b));
            }
        }
        if (base == 0) {
            base = reach;
        }
        double ratio = reach / base;
        double way = base;
        double arm = reach;
        double clearance = widest(assembly, number);
        double play = play(clearance, ratio);
        double spare = GestureReached.moved(subject, gesture, end, 1) - gesture.distance();
        if (!(spare > 0)) {
            // The gesture itself is not reached, which has its own finding.
            return null;
        }
        Spread spread = new Spread(spare - play);
        for (Variation variation : Variation.ofHoles(assembly, false)) {
            spread.add(
                    variation.name(),
                    variation.number(),
                    value -> spare - play(widest(variation.with().apply(assembly, value), number), ratio));
        }
        return Finding.ask(Topic.ARM_PLAY, name, say("Does the play in the pins leave {} its gesture?", name))
                .answer(spread.status(), play, spare, spare - play, "mm")
                .at(new Where(gesture.part(), 1.0, end))
                .because(
                        say(
                                "the play of its last two pins lets {} wander by {}, its gesture has {} to spare",
                                name,
                                mm(play),
                                mm(spare)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Set the pins of {} farther apart, or fit them closer.", gesture.part()),
                        "c/2 + c · reach/base = " + Words.number(clearance / 2) + " + "
                                + Words.number(clearance) + " · " + Words.number(arm) + "/" + Words.number(way)
                                + " = "
                                + Words.number(play) + " mm; the play of the pins before them is left out",
                        spread);
    }

    /** Of the clearances of a body's pins, mm. */
    private static double widest(Assembly assembly, int body) {
        return assembly.bearings().stream()
                .filter(bearing ->
                        bearing.pin().holder() == body || bearing.pin().runner() == body)
                .mapToDouble(Bearing::clearance)
                .max()
                .orElse(0);
    }

    /** Half the clearance at the pin, and the clearance at both pins turned into an angle, times the reach. */
    private static double play(double clearance, double ratio) {
        return Math.max(0, clearance) * (0.5 + ratio);
    }
}
