package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.RatchetPair;
import java.util.List;

/** As drawn, a pawl's tip lies in a gap of its ratchet: it touches the teeth, and is not drawn into their wood. */
final class PawlMeets implements Question {

    /** Tip and teeth may be drawn so far into each other, mm: they are eased when they are fitted. */
    private static final double INTO = 0.25;
    /** A tip so far off touches nothing before it falls, in depths of a tooth. */
    private static final double AWAY = 0.5;

    @Override
    public List<Finding> ask(Subject subject) {
        return subject.assembly().links(RatchetPair.class).stream()
                .map(PawlMeets::finding)
                .toList();
    }

    private static Finding finding(RatchetPair pawl) {
        Outline wheel = Outline.of(pawl.teeth());
        Point tip = pawl.tip();
        double edge = wheel.distanceToEdge(tip);
        double gap = (wheel.contains(tip) ? -edge : edge) - pawl.radius();
        double away = AWAY * pawl.shape().depth();
        double margin = Math.min(gap + INTO, away - gap);
        boolean meets = margin >= 0;
        return Finding.ask(
                        Topic.PAWL_MEETS,
                        pawl.name(),
                        say("Does the tip of {} lie in a gap of its ratchet, as drawn?", pawl.name()))
                .answer(meets ? Status.PASS : Status.FAIL, gap, gap < 0 ? -INTO : away, margin, "mm")
                .at(new Where(pawl.name(), 0.0, tip))
                .because(
                        gap < 0
                                ? say("the tip of {} is drawn {} into a tooth", pawl.name(), mm(-gap))
                                : say("the tip of {} is drawn {} from the nearest tooth", pawl.name(), mm(gap)),
                        meets
                                ? Sentence.NOTHING
                                : say(
                                        "Turn the ratchet by {}'s first, or move the tip: it lies at the foot of a steep face when"
                                                + " nothing is pressed.",
                                        pawl.name()),
                        "distance of the tip's middle from the teeth − its radius = " + Words.number(gap)
                                + " mm; at least " + Words.number(-INTO) + " mm, at most half a tooth's depth, "
                                + Words.number(away) + " mm");
    }
}
