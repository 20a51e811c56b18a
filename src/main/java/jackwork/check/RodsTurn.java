package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.RodRun;
import jackwork.stock.Uncertain;
import java.util.Comparator;
import java.util.List;

/**
 * Each rod turns freely in the holes that run on it, and is still guided by them. Holes are bored to the rod as measured
 * and the running fit; a kerf other than the workshop's makes them wider or narrower. Skewers are sorted by such a hole, so
 * that the rods' own spread is not counted here.
 */
final class RodsTurn implements Question {

    /** A rod with less room sticks as soon as the wood is damp, mm: common practice, no source. */
    private static final double LEAST = 0.05;
    /** With more room, in diameters of the rod, nothing is guided: common practice, no source. */
    private static final double MOST = 0.25;
    /** In plywood, mm: common practice, no source. */
    private static final double USUAL = 0.2;

    @Override
    public boolean appliesTo(Subject subject) {
        return subject.rods().stream().anyMatch(RodRun::turns);
    }

    @Override
    public List<Finding> ask(Subject subject) {
        RodRun thinnest = subject.rods().stream()
                .filter(RodRun::turns)
                .min(Comparator.comparingDouble(RodRun::diameter))
                .orElseThrow();
        Uncertain running = subject.assembly().workshop().fits().running();
        Uncertain kerf = subject.assembly().workshop().laser().kerf();
        double most = MOST * thinnest.diameter();
        boolean tight = running.value() - LEAST < most - running.value();
        double room = running.value();
        Spread spread = new Spread(margin(room, most))
                .add("running fit", running, v -> margin(v, most))
                .add("kerf", kerf, k -> margin(room + k - kerf.value(), most));
        return List.of(Finding.ask(
                        Topic.RODS_TURN, say("Does every rod turn freely in its hole, and is it guided there?"))
                .answer(spread.status(), room, tight ? LEAST : most, margin(room, most), "mm")
                .at(new Where(thinnest.name(), null, thinnest.at()))
                .because(
                        why(thinnest, room),
                        spread.status() == Status.PASS ? Sentence.NOTHING : remedy(room, tight),
                        "hole − rod = running fit = " + Words.number(room) + " mm; at least " + Words.number(LEAST)
                                + " mm to turn, at most a quarter of the rod, " + Words.number(most)
                                + " mm, to be guided (common practice, no source)",
                        spread));
    }

    private static double margin(double room, double most) {
        return Math.min(room - LEAST, most - room);
    }

    private static Sentence why(RodRun rod, double room) {
        return room > 0
                ? say("the hole that turns on {} is {} wider than it", rod.words(), mm(room))
                : say("the hole that should turn on {} is {} narrower than it", rod.words(), mm(-room));
    }

    private static Sentence remedy(double room, boolean tight) {
        if (room <= 0) {
            return say(
                    "Write fits.running as what the hole is wider than its rod, above 0: some {} in plywood.",
                    mm(USUAL).to(1));
        }
        return tight
                ? say("Bore the loose holes wider: make fits.running larger.")
                : say("Bore the loose holes closer: make fits.running smaller, or take a thicker rod.");
    }
}
