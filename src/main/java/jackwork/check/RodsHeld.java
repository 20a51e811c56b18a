package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.parts.Bore;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import jackwork.parts.Variation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Each rod can be pressed into the holes that grip it, and stays there: of all such holes the one with least to spare. Holes
 * are bored for the rod as the workshop numbers it; a thicker one splits them, a thinner one is loose. What holds in the end
 * is glue, which bridges little.
 */
final class RodsHeld implements Question {

    /** Wood glue bridges no wider ring, mm on diameter: common practice, no source. */
    private static final double LOOSEST = 0.15;
    /** A rod pressed into a hole narrower by more of its diameter splits the sheet or itself: common practice, no source. */
    private static final double TIGHTEST = 0.1;

    /** A hole for a rod, and what it was bored for. */
    private record Grip(Hole hole, Bore bore) {

        double margin(Assembly assembly) {
            return RodsHeld.margin(bore.clearance(assembly.made()), least());
        }

        double least() {
            return -TIGHTEST * bore.through();
        }
    }

    @Override
    public boolean appliesTo(Subject subject) {
        return !gripping(subject.assembly()).isEmpty();
    }

    private static List<Grip> gripping(Assembly assembly) {
        List<Grip> all = new ArrayList<>();
        for (Part part : assembly.parts()) {
            for (Hole hole : part.holes()) {
                Bore bore = hole.bore();
                if (bore != null && bore.grips() && bore.rod() != null) {
                    all.add(new Grip(hole, bore));
                }
            }
        }
        return all;
    }

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        Grip worst = gripping(assembly).stream()
                .min(Comparator.comparingDouble(grip -> grip.margin(assembly)))
                .orElseThrow();
        double room = worst.bore().clearance(assembly.made());
        double least = worst.least();
        boolean loose = LOOSEST - room < room - least;
        Spread spread = new Spread(margin(room, least));
        for (Variation variation : Variation.ofHoles(assembly, true)) {
            spread.add(
                    variation.name(),
                    variation.number(),
                    value -> worst.margin(variation.with().apply(assembly, value)));
        }
        return List.of(Finding.ask(
                        Topic.RODS_HELD,
                        say("Can every rod be pressed into the holes that grip it, and does it stay there?"))
                .answer(spread.status(), room, loose ? LOOSEST : least, margin(room, least), "mm")
                .at(new Where(worst.hole().joint(), null, worst.hole().circle().centre()))
                .because(
                        say(
                                "the hole that grips the rod of {} is {} {} than it",
                                worst.hole().joint(),
                                mm(Math.abs(room)),
                                (room < 0 ? "narrower" : "wider")),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : loose
                                        ? say(
                                                "Bore the tight holes closer: make fits.press smaller, below 0 where no glue holds.")
                                        : say("Bore the tight holes wider: make fits.press nearer to 0."),
                        "hole as bored − rod = " + Words.number(room) + " mm; at most " + Words.number(LOOSEST)
                                + " mm for glue to hold, at least a tenth of the rod narrower, " + Words.number(least)
                                + " mm, to go in (common practice, no source)",
                        spread));
    }

    private static double margin(double room, double least) {
        return Math.min(LOOSEST - room, room - least);
    }
}
