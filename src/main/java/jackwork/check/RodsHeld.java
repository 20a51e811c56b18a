package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.RodRun;
import jackwork.stock.Uncertain;
import java.util.Comparator;
import java.util.List;

/**
 * Each rod can be pressed into the holes that grip it, and stays there. Holes are bored to the rod as measured and the press
 * fit; a kerf other than the workshop's makes them wider or narrower. What holds in the end is glue, which bridges little.
 */
final class RodsHeld implements Question {

    /** Wood glue bridges no wider ring, mm on diameter: common practice, no source. */
    private static final double LOOSEST = 0.15;
    /** A rod pressed into a hole narrower by more of its diameter splits the sheet or itself: common practice, no source. */
    private static final double TIGHTEST = 0.1;

    @Override
    public boolean appliesTo(Subject subject) {
        return gripped(subject).findAny().isPresent();
    }

    private static java.util.stream.Stream<RodRun> gripped(Subject subject) {
        return subject.rods().stream()
                .filter(rod -> rod.kind() != RodRun.Kind.SCREW && rod.kind() != RodRun.Kind.SHOULDER);
    }

    @Override
    public List<Finding> ask(Subject subject) {
        RodRun thinnest = gripped(subject)
                .min(Comparator.comparingDouble(RodRun::diameter))
                .orElseThrow();
        Uncertain press = subject.assembly().workshop().fits().press();
        Uncertain kerf = subject.assembly().workshop().laser().kerf();
        double room = press.value();
        double least = -TIGHTEST * thinnest.diameter();
        boolean loose = LOOSEST - room < room - least;
        Spread spread = new Spread(margin(room, least))
                .add("press fit", press, v -> margin(v, least))
                .add("kerf", kerf, k -> margin(room + k - kerf.value(), least));
        return List.of(Finding.ask(
                        Topic.RODS_HELD,
                        say("Can every rod be pressed into the holes that grip it, and does it stay there?"))
                .answer(spread.status(), room, loose ? LOOSEST : least, margin(room, least), "mm")
                .at(new Where(thinnest.name(), null, thinnest.at()))
                .because(
                        say(
                                "the hole that grips the rod of {} is {} {} than it",
                                thinnest.name(),
                                mm(Math.abs(room)),
                                (room < 0 ? "narrower" : "wider")),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : loose
                                        ? say(
                                                "Bore the tight holes closer: make fits.press smaller, below 0 where no glue holds.")
                                        : say("Bore the tight holes wider: make fits.press nearer to 0."),
                        "hole − rod = press fit = " + Words.number(room) + " mm; at most " + Words.number(LOOSEST)
                                + " mm for glue to hold, at least a tenth of the rod narrower, " + Words.number(least)
                                + " mm, to go in (common practice, no source)",
                        spread));
    }

    private static double margin(double room, double least) {
        return Math.min(LOOSEST - room, room - least);
    }
}
