package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Bearing;
import jackwork.parts.PinJoint;
import jackwork.parts.SlideJoint;
import jackwork.parts.Variation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Each rod turns freely in the holes that run on it, and is still guided by them: of all bearings and slots the one with
 * least to spare. Holes are bored for the rod as the workshop numbers it; a thicker one, or a narrower cut, binds.
 */
final class RodsTurn implements Question {

    /** A rod with less room sticks as soon as the wood is damp, mm: common practice, no source. */
    private static final double LEAST = 0.05;
    /** With more room, in diameters of the rod, nothing is guided: common practice, no source. */
    private static final double MOST = 0.25;
    /** In plywood, mm: common practice, no source. */
    private static final double USUAL = 0.2;

    /**
     * What turns or slides on a rod.
     *
     * @param what its rod or shoulder, for people
     * @param through diameter of that, mm
     */
    private record Running(String name, String what, Point at, double through, ToDoubleFunction<Assembly> room) {

        double margin(Assembly assembly) {
            return RodsTurn.margin(room.applyAsDouble(assembly), most());
        }

        double most() {
            return MOST * through;
        }
    }

    @Override
    public boolean appliesTo(Subject subject) {
        return !running(subject.assembly()).isEmpty();
    }

    private static List<Running> running(Assembly assembly) {
        List<Running> all = new ArrayList<>();
        for (Bearing bearing : assembly.bearings()) {
            PinJoint pin = bearing.pin();
            // One rod may carry several bodies, and their joints are told apart by a slash.
            String name = pin.name().split("/", 2)[0];
            String what = (bearing.isOnShoulder() ? "the shoulder of " : "the rod of ") + name;
            all.add(new Running(
                    name, what, pin.at(), 2 * pin.radius(), a -> a.bearing(pin).clearance()));
        }
        for (SlideJoint slide : assembly.slides()) {
            all.add(new Running(
                    slide.name(),
                    "the rod of " + slide.name(),
                    slide.at(),
                    2 * slide.radius(),
                    a -> slide.bore().clearance(a.made())));
        }
        return all;
    }

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        Running least = running(assembly).stream()
                .min(Comparator.comparingDouble(running -> running.margin(assembly)))
                .orElseThrow();
        double most = least.most();
        double room = least.room().applyAsDouble(assembly);
        boolean tight = room - LEAST < most - room;
        Spread spread = new Spread(margin(room, most));
        for (Variation variation : Variation.ofHoles(assembly, false)) {
            spread.add(
                    variation.name(),
                    variation.number(),
                    value -> least.margin(variation.with().apply(assembly, value)));
        }
        return List.of(
                Finding.ask(Topic.RODS_TURN, say("Does every rod turn freely in its hole, and is it guided there?"))
                        .answer(spread.status(), room, tight ? LEAST : most, margin(room, most), "mm")
                        .at(new Where(least.name(), null, least.at()))
                        .because(
                                why(least, room),
                                spread.status() == Status.PASS ? Sentence.NOTHING : remedy(room, tight),
                                "hole as bored − rod = " + Words.number(room) + " mm; at least " + Words.number(LEAST)
                                        + " mm to turn, at most a quarter of the rod, " + Words.number(most)
                                        + " mm, to be guided (common practice, no source)",
                                spread));
    }

    private static double margin(double room, double most) {
        return Math.min(room - LEAST, most - room);
    }

    private static Sentence why(Running running, double room) {
        return room > 0
                ? say("the hole that turns on {} is {} wider than it", running.what(), mm(room))
                : say("the hole that should turn on {} is {} narrower than it", running.what(), mm(-room));
    }

    private static Sentence remedy(double room, boolean tight) {
        if (room <= 0) {
            return say(
                    "Write fits.running as what the hole is wider than its rod, above 0: some {} in plywood.",
                    mm(USUAL).to(1));
        }
        return tight
                ? say("Bore the loose holes wider: make fits.running larger, or sort the rods through a gauge.")
                : say("Bore the loose holes closer: make fits.running smaller, or take a thicker rod.");
    }
}
