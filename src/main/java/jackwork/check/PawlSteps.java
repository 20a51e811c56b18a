package jackwork.check;

import static jackwork.check.Measure.degrees;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.RatchetPair;
import java.util.List;

/**
 * A pawl takes the next tooth at each press: there and back, or on one of the two ways, it and its ratchet pass each other by
 * more than one tooth. Else the first press turns the wheel, and no later one does.
 */
final class PawlSteps implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        return subject.assembly().links(RatchetPair.class).stream()
                .map(pawl -> finding(subject, pawl))
                .toList();
    }

    private static Finding finding(Subject subject, RatchetPair pawl) {
        double passed = passed(new RunPoses(subject), pawl);
        double tooth = 2 * Math.PI / pawl.shape().teeth();
        double margin = passed - tooth;
        boolean steps = margin > 0;
        return Finding.ask(
                        Topic.PAWL_STEPS, pawl.name(), say("Does {} take the next tooth at each press?", pawl.name()))
                .answer(
                        steps ? Status.PASS : Status.FAIL,
                        Math.toDegrees(passed),
                        Math.toDegrees(tooth),
                        Math.toDegrees(margin),
                        "deg")
                .at(new Where(pawl.name(), 1.0, pawl.tip()))
                .because(
                        say(
                                "{} and its ratchet pass each other by {}, one tooth is {}",
                                pawl.name(),
                                degrees(Math.toDegrees(passed)),
                                degrees(Math.toDegrees(tooth))),
                        steps
                                ? Sentence.NOTHING
                                : say("Give the ratchet more teeth, or let the lever move {} farther.", pawl.name()),
                        "greatest turn of the tip of " + pawl.name()
                                + " about the ratchet's middle, as the ratchet sees it, over the"
                                + " press and back = " + Words.number(Math.toDegrees(passed)) + "°; a tooth = 360° / "
                                + pawl.shape().teeth() + " = " + Words.number(Math.toDegrees(tooth)) + "°");
    }

    /** Rad. */
    private static double passed(RunPoses poses, RatchetPair pawl) {
        Point centre = new Point(
                pawl.teeth().stream().mapToDouble(Point::x).average().orElse(0),
                pawl.teeth().stream().mapToDouble(Point::y).average().orElse(0));
        double least = 0;
        double most = 0;
        double before = Double.NaN;
        double turned = 0;
        for (int i = 0; i < poses.count(); i++) {
            Point arm = poses.at(i, pawl.pawl(), pawl.tip()).minus(poses.at(i, pawl.wheel(), centre));
            double now = Math.atan2(arm.y(), arm.x()) - poses.angle(i, pawl.wheel());
            turned += Double.isNaN(before) ? 0 : Math.IEEEremainder(now - before, 2 * Math.PI);
            before = now;
            least = Math.min(least, turned);
            most = Math.max(most, turned);
        }
        return most - least;
    }
}
