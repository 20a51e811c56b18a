package jackwork.check;

import static jackwork.check.Measure.degrees;
import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.CamPair;
import java.util.ArrayList;
import java.util.List;

/** Cams push their followers well, and a follower is not too thick for its curve. */
final class CamShapes implements Question {

    /** Steepest push that designers allow, degrees: Norton, Cam Design and Manufacturing Handbook, from memory. */
    private static final double STEEPEST = 35;

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (CamPair cam : subject.assembly().links(CamPair.class)) {
            findings.add(steep(cam));
            findings.add(sharp(cam));
        }
        return findings;
    }

    private static Finding steep(CamPair cam) {
        double angle = Math.toDegrees(cam.profile().steepest());
        double margin = STEEPEST - angle;
        return Finding.ask(Topic.CAM_STEEP, cam.name(), say("Does {} push its follower well?", cam.name()))
                .answer(margin > 0 ? Status.PASS : Status.FAIL, angle, STEEPEST, margin, "deg")
                .at(new Where(cam.camPart(), null, cam.centre()))
                .because(
                        say("at its steepest it pushes {} away from the follower's way", degrees(angle)),
                        margin > 0
                                ? Sentence.NOTHING
                                : say(
                                        "Let the rise take a longer turn, or set the follower farther from the cam's centre."),
                        "greatest angle of push and way over a turn = " + Words.number(angle) + "°; usual limit "
                                + Words.number(STEEPEST) + "°");
    }

    private static Finding sharp(CamPair cam) {
        double least = cam.profile().sharpest();
        double margin = least - cam.radius();
        return Finding.ask(Topic.CAM_UNDERCUT, cam.name(), say("Can {} be cut for its follower?", cam.name()))
                .answer(margin > 0 ? Status.PASS : Status.FAIL, least, cam.radius(), margin, "mm")
                .at(new Where(cam.camPart(), null, cam.centre()))
                .because(
                        margin > 0
                                ? say("the follower's path bends no sharper than {}", mm(least))
                                : say(
                                        "the follower's path bends to {}, its peg is thicker: the profile cuts away its own"
                                                + " rise",
                                        mm(least)),
                        margin > 0 ? Sentence.NOTHING : say("Take a thinner peg, a larger cam, or a gentler rise."),
                        "least radius of the follower's path = " + Words.number(least) + " mm; peg "
                                + Words.number(cam.radius()) + " mm");
    }
}
