package jackwork.make;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.LeastBar;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import jackwork.geometry.Wanted;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.util.List;

/**
 * The thinnest neck of any flat part, holes bored: taken off all round by half of it, the part falls apart, or a hole
 * breaks out. Thin points that merely become shorter are no necks.
 */
final class ThinnestNeck {

    /** Narrower necks need care; in thicknesses of the sheet; a guess. */
    static final double LEAST_THICKNESSES = 2.0 / 3;
    /** Wider ones are none, mm. */
    static final double WIDE = 12;

    private static final double FOUND = 0.01;
    /** Points of an outline that is measured as it is; a rough tracing has more, and each try would take seconds. */
    private static final int FEW = 2000;
    /** Such a tracing is smoothed by this much at most, mm, and what that may have added on both sides is taken off. */
    static final double SMOOTHED = 0.1;

    private ThinnestNeck() {}

    /** One finding, about the part whose neck is thinnest for its sheet. */
    static List<Finding> ask(Assembly assembly) {
        double kerf = assembly.workshop().laser().kerf().value();
        Part worst = null;
        double width = 0;
        double share = Double.POSITIVE_INFINITY;
        for (Part part : assembly.parts()) {
            Wanted.goOn();
            double least = share * part.thickness().value();
            if (least < WIDE && points(part.outline()) <= FEW && survives(part.outline(), least)) {
                // One try instead of a dozen: it cannot be the worst.
                continue;
            }
            double neck = neck(part.outline());
            if (neck < least) {
                share = neck / part.thickness().value();
                width = neck;
                worst = part;
            }
        }
        if (worst == null) {
            return List.of();
        }
        double thickness = worst.thickness().value();
        double cut = LeastBar.of(thickness, kerf);
        double limit = Math.max(LEAST_THICKNESSES * thickness, cut);
        boolean passes = width >= limit;
        return List.of(Finding.ask(Topic.THINNEST_NECK, say("Is every neck wide enough to be cut and handled?"))
                .answer(
                        passes ? Status.PASS : width >= cut ? Status.DOUBTFUL : Status.FAIL,
                        width,
                        limit,
                        width - limit,
                        "mm")
                .at(new Where(worst.name(), null, null))
                .because(
                        say(
                                "{} has the thinnest neck for its sheet: {}{}",
                                worst.name(),
                                (width >= WIDE ? "at least " : ""),
                                mm(width)),
                        passes
                                ? Sentence.NOTHING
                                : say("Draw it wider there, move the hole inward, or use a thinner rod."),
                        "neck = " + Words.number(width) + " mm; at least two thirds of the thickness of "
                                + worst.stock() + ", "
                                + Words.number(limit) + " mm (common practice, no source); "
                                + LeastBar.words(thickness, kerf)));
    }

    /**
     * Width of the thinnest neck, mm, to a hundredth; at most {@value #WIDE}. Of an outline of very many points, a width that
     * it has at least.
     */
    static double neck(Outline outline) {
        if (points(outline) <= FEW) {
            return measured(outline);
        }
        return Math.max(0, measured(outline.simplified(SMOOTHED)) - 2 * SMOOTHED);
    }

    private static int points(Outline outline) {
        return outline.outer().size()
                + outline.holes().stream().mapToInt(List::size).sum();
    }

    private static double measured(Outline outline) {
        double low = 0;
        double high = WIDE;
        if (survives(outline, WIDE)) {
            return WIDE;
        }
        while (high - low > FOUND) {
            Wanted.goOn();
            double middle = (low + high) / 2;
            if (survives(outline, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static boolean survives(Outline outline, double width) {
        try {
            return outline.eroded(width / 2).holes().size() == outline.holes().size();
        } catch (InvalidOutlineException e) {
            // Nothing is left of it, or it has fallen apart: that is the answer.
            return false;
        }
    }
}
