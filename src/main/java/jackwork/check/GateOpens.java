package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Outline;
import jackwork.geometry.Pose;
import jackwork.parts.CoinWorks;
import jackwork.parts.Part;
import jackwork.stock.Coin;
import java.util.List;

/** A gate keeps the coin on its floor while it is shut, and lets the largest pass between its end and the floor's, once at its stop. */
final class GateOpens implements Question {

    @Override
    public boolean appliesTo(Subject subject) {
        return subject.assembly().coinWorks().bridges();
    }

    @Override
    public List<Finding> ask(Subject subject) {
        CoinWorks works = subject.assembly().coinWorks();
        double largest =
                subject.coins().stream().mapToDouble(Coin::diameter).max().orElse(0);
        double smallest =
                subject.coins().stream().mapToDouble(Coin::diameter).min().orElse(0);
        double shut = way(subject, works, works.angle(0));
        double open = way(subject, works, works.angle(1));
        boolean holds = smallest - shut < open - largest;
        double margin = Math.min(smallest - shut, open - largest);
        boolean does = margin > 0;
        return List.of(Finding.ask(
                        Topic.GATE_OPENS,
                        say("Does the gate keep each coin while it is shut, and let it pass when it is open?"))
                .answer(does ? Status.PASS : Status.FAIL, holds ? shut : open, holds ? smallest : largest, margin, "mm")
                .at(new Where("gate", holds ? 0.0 : 1.0, works.lip()))
                .because(
                        holds
                                ? say(
                                        "shut, the gate leaves {} at the floor's end, the smallest coin is {} wide",
                                        mm(shut),
                                        mm(smallest))
                                : say(
                                        "at its stop the gate leaves {} at the floor's end, the largest coin is {} wide",
                                        mm(open),
                                        mm(largest)),
                        does
                                ? Sentence.NOTHING
                                : holds
                                        ? say(
                                                "Bring the gate's end nearer to the floor's, so that no coin falls through without a press.")
                                        : say(
                                                "Let the gate tip farther: make bucket.tip larger, or draw its end away from the floor's."),
                        "distance of the floor's end from the gate's wood in the coin's layer: shut "
                                + Words.number(shut)
                                + " mm, less than the smallest coin, " + Words.number(smallest) + " mm; at its stop "
                                + Words.number(open) + " mm, more than the largest, " + Words.number(largest) + " mm"));
    }

    /** From the floor's end to the gate's wood, mm, when it has turned. */
    private static double way(Subject subject, CoinWorks works, double turn) {
        double least = Double.POSITIVE_INFINITY;
        for (Part part : subject.assembly().body(works.bucket()).parts()) {
            if (part.layer() == works.layer()) {
                Outline stands = part.drawn().moved(Pose.about(works.pivot(), turn));
                least = Math.min(least, stands.contains(works.toe()) ? 0 : stands.distanceToEdge(works.toe()));
            }
        }
        return least;
    }
}
