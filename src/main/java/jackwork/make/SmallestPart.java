package jackwork.make;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.geometry.Bounds;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.util.Comparator;
import java.util.List;

/** The smallest flat part: what is small tips into the grid of the laser's bed and is lost, or tilts into the beam. */
final class SmallestPart {

    /** Long side of the smallest part that lies safely, mm: common practice, no source. */
    private static final double SAFE = 12;

    private SmallestPart() {}

    /** One finding, about the part whose long side is shortest. */
    static List<Finding> ask(Assembly assembly) {
        return assembly.parts().stream()
                .min(Comparator.comparingDouble(SmallestPart::longSide))
                .map(SmallestPart::finding)
                .stream()
                .toList();
    }

    private static double longSide(Part part) {
        Bounds bounds = part.drawn().bounds();
        return Math.max(bounds.width(), bounds.height());
    }

    private static Finding finding(Part part) {
        double side = longSide(part);
        return Finding.ask(Topic.SMALLEST_PART, say("Is every part large enough not to be lost on the laser's bed?"))
                .answer(side >= SAFE ? Status.PASS : Status.DOUBTFUL, side, SAFE, side - SAFE, "mm")
                .at(new Where(part.name(), null, null))
                .because(
                        say("{} is the smallest, {} along its longer side", part.name(), mm(side)),
                        side >= SAFE
                                ? Sentence.NOTHING
                                : say("Leave it held by a small bridge, or lay tape under the sheet there."),
                        "longer side " + Words.number(side) + " mm; " + Words.number(SAFE)
                                + " mm lie safely (common practice, no source)");
    }
}
