package jackwork.make;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.design.Design;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Assembly;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Whether a child's finger comes free of the gaps that close while somebody presses: beside whatever goes through a panel of
 * the case, and between what stands out of the case and the table. Gaps between parts of the figure are not asked: they are
 * part of what it performs.
 */
final class FingerGaps {

    private static final Sentence QUESTION = say("Does a finger come free of every gap that the press closes?");

    /** What closes by less catches nothing, mm; a guess. */
    private static final double CLOSES = 1;

    /** How far out of the case is looked for what comes down on the table, mm. */
    private static final double BESIDE = 500;

    /**
     * A gap.
     *
     * @param part that closes it
     * @param against what
     * @param widest before it closes, mm
     * @param narrowest after, mm
     */
    private record Gap(String part, String against, double widest, double narrowest) {

        boolean catches() {
            return widest - narrowest >= CLOSES && FingerRoom.catches(widest, narrowest);
        }

        /** Lets a finger in, however much it then closes. */
        boolean closes() {
            return widest - narrowest >= CLOSES && widest >= FingerRoom.ENTERS;
        }
    }

    /** Where no wood is, along a line through a panel. */
    private record Free(double from, double to) {}

    private final Subject subject;
    private final Assembly assembly;
    private final Case housing;
    private final Layers layers;

    private FingerGaps(Subject subject, Case housing) {
        this.subject = subject;
        this.assembly = subject.assembly();
        this.housing = housing;
        this.layers = Layers.of(assembly.parts());
    }

    /** None for a box without a case, or one that falls apart: others say so. */
    static List<Finding> ask(Design design, Subject subject) {
        Case housing;
        try {
            housing = Case.of(design, subject);
        } catch (CaseException e) {
            return List.of();
        }
        if (housing == null) {
            return List.of();
        }
        FingerGaps piece = new FingerGaps(subject, housing);
        List<Gap> closing = piece.gaps().stream().filter(Gap::closes).toList();
        return List.of(piece.answer(
                closing.size(),
                closing.stream()
                        .min(Comparator.comparing((Gap gap) -> !gap.catches()).thenComparing(Gap::narrowest))
                        .orElse(null)));
    }

    private Finding answer(int count, @Nullable Gap worst) {
        String rule = "a rod of " + Words.number(FingerRoom.ENTERS) + " mm goes in, so one of "
                + Words.number(FingerRoom.LEAVES)
                + " mm must come free (EN 71-1:2001, 4.10.2 c and 4.10.3, that edition; common practice for what is no toy); "
                + count + " gaps of the case close so; coming back by weight alone they close with no more than "
                + Words.number(returns()) + " N at the finger";
        if (worst == null) {
            return Finding.ask(Topic.FINGER_ROOM, QUESTION)
                    .answer(Status.PASS, null, FingerRoom.LEAVES, null, "mm")
                    .at(new Where(assembly.body(assembly.lever().body()).name(), null, null))
                    .because(say("no gap of the case that lets a finger in closes"), Sentence.NOTHING, rule);
        }
        Status status = worst.catches() ? Status.FAIL : Status.PASS;
        return Finding.ask(Topic.FINGER_ROOM, QUESTION)
                .answer(status, worst.narrowest, FingerRoom.LEAVES, worst.narrowest - FingerRoom.LEAVES, "mm")
                .at(new Where(worst.part, 1.0, null))
                .because(
                        say(
                                status == Status.FAIL
                                        ? "between {} and {} a finger goes in, and pressed down only {} are left for it"
                                        : "the narrowest is between {} and {}, with {} left when it is pressed",
                                worst.part,
                                worst.against,
                                mm(Math.max(0, worst.narrowest))),
                        status == Status.PASS
                                ? Sentence.NOTHING
                                : say(
                                        "Leave it {} there: raise the works over what is beneath, or let it move less.",
                                        mm(FingerRoom.LEAVES)),
                        rule);
    }

    /** N. */
    private double returns() {
        double most = 0;
        for (double force : subject.stroke().returnForce()) {
            most = Double.isNaN(force) ? most : Math.max(most, force / 1e6);
        }
        return most;
    }

    private List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        double table =
                housing.panels().stream().mapToDouble(FingerGaps::lowest).min().orElse(Double.NaN);
        double left = face("case-left").from();
        double right = face("case-right").to();
        for (int body = 1; body < assembly.bodies().size(); body++) {
            if (body == assembly.coinWorks().bucket()) {
                continue;
            }
            List<Pose> way = Sweep.pressed(subject, body);
            for (Part part : assembly.body(body).parts()) {
                for (Panel panel : housing.panels()) {
                    if (panel.axis() != Panel.Axis.Z) {
                        beside(part, panel, way, gaps);
                    }
                }
                for (List<Sweep.Spread> out : List.of(
                        Sweep.spreads(part.drawn(), way, true, right, right + BESIDE),
                        Sweep.spreads(part.drawn(), way, true, left - BESIDE, left))) {
                    closing(part, "the table", out, spread -> spread.from() - table)
                            .ifPresent(gaps::add);
                }
            }
        }
        return gaps;
    }

    private Panel face(String name) {
        return housing.panels().stream()
                .filter(panel -> panel.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double lowest(Panel panel) {
        return panel.axis() == Panel.Axis.Y
                ? panel.from()
                : panel.outline().bounds().minY();
    }

    private void beside(Part part, Panel panel, List<Pose> way, List<Gap> gaps) {
        boolean upright = panel.axis() == Panel.Axis.X;
        List<Sweep.Spread> spreads = Sweep.spreads(part.drawn(), way, upright, panel.from(), panel.to());
        Optional<Sweep.Spread> any =
                spreads.stream().filter(Sweep.Spread::isThere).findFirst();
        if (any.isEmpty()) {
            return;
        }
        double middle = (any.get().from() + any.get().to()) / 2;
        Free free = free(panel.outline(), upright, layers.middle(part.layer()), middle);
        closing(part, panel.name(), spreads, spread -> spread.from() - free.from)
                .ifPresent(gaps::add);
        closing(part, panel.name(), spreads, spread -> free.to - spread.to()).ifPresent(gaps::add);
    }

    /** The farthest that it comes down from as wide as it has been before; nothing where it is never there. */
    private static Optional<Gap> closing(
            Part part, String against, List<Sweep.Spread> way, ToDoubleFunction<Sweep.Spread> gap) {
        double widest = Double.NEGATIVE_INFINITY;
        Gap worst = null;
        for (Sweep.Spread spread : way) {
            double now = spread.isThere() ? gap.applyAsDouble(spread) : Double.POSITIVE_INFINITY;
            widest = Math.max(widest, now);
            if (Double.isFinite(now) && (worst == null || now < worst.narrowest)) {
                worst = new Gap(part.name(), against, widest, now);
            }
        }
        return Optional.ofNullable(worst);
    }

    /** Between the nearest edges of a panel to either side of a place. */
    private static Free free(Outline panel, boolean upright, double depth, double middle) {
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        List<List<Point>> rings = new ArrayList<>(panel.holes());
        rings.add(panel.outer());
        for (List<Point> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Point p = ring.get(i);
                Point q = ring.get((i + 1) % ring.size());
                double a = (upright ? p.x() : p.y()) - depth;
                double b = (upright ? q.x() : q.y()) - depth;
                if (a < 0 == b < 0) {
                    continue;
                }
                double along = upright ? p.y() : p.x();
                double edge = along + a / (a - b) * ((upright ? q.y() : q.x()) - along);
                if (edge <= middle) {
                    from = Math.max(from, edge);
                } else {
                    to = Math.min(to, edge);
                }
            }
        }
        return new Free(from, to);
    }
}
