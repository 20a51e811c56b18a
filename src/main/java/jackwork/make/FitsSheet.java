package jackwork.make;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Bounds;
import jackwork.geometry.Pose;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.List;

/** Every flat part fits its sheet and the laser's bed, bare edge kept. */
final class FitsSheet {

    private FitsSheet() {}

    /** One finding, about the part with the least room. */
    static List<Finding> ask(Assembly assembly) {
        WorkshopFile workshop = assembly.workshop();
        double least = Double.POSITIVE_INFINITY;
        Part tightest = null;
        boolean wide = true;
        for (Part part : assembly.parts()) {
            if (part.printed() != null) {
                continue;
            }
            double[] usable = Layout.usable(workshop, part.stock());
            double edge = 2 * workshop.laser().margin();
            double best = Double.NEGATIVE_INFINITY;
            boolean bestWide = true;
            // Half a turn changes nothing about its extents.
            for (int degrees = 0; degrees < (part.kind().grain() ? 1 : 180); degrees++) {
                Bounds size = part.drawn()
                        .moved(new Pose(0, 0, Math.toRadians(degrees)))
                        .bounds();
                double across = usable[0] - edge - size.width();
                double along = usable[1] - edge - size.height();
                if (Math.min(across, along) > best) {
                    best = Math.min(across, along);
                    bestWide = across < along;
                }
            }
            if (best < least) {
                least = best;
                tightest = part;
                wide = bestWide;
            }
        }
        List<Finding> findings = new ArrayList<>();
        if (tightest != null) {
            findings.add(finding(workshop, tightest, wide, least));
        }
        return findings;
    }

    private static Finding finding(WorkshopFile workshop, Part part, boolean wide, double room) {
        double[] usable = Layout.usable(workshop, part.stock());
        double limit = usable[wide ? 0 : 1] - 2 * workshop.laser().margin();
        String side = wide ? "wide" : "high";
        double size = limit - room;
        return Finding.ask(Topic.FITS_SHEET, say("Does every flat part fit its sheet and the laser?"))
                .answer(room >= 0 ? Status.PASS : Status.FAIL, size, limit, room, "mm")
                .at(new Where(part.name(), null, null))
                .because(
                        say(
                                "{} has the least room: {} {} where {} can be cut",
                                part.name(),
                                mm(size).to(1),
                                side,
                                mm(limit).to(1)),
                        room >= 0
                                ? Sentence.NOTHING
                                : say("Use a larger sheet of {}, or draw the part in two.", part.stock()),
                        String.format(
                                java.util.Locale.ROOT,
                                "room = sheet or bed %.1f − edges 2 · %.1f − part %.1f = %.1f mm",
                                limit + 2 * workshop.laser().margin(),
                                workshop.laser().margin(),
                                size,
                                room));
    }
}
