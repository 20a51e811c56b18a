package jackwork.check;

import jackwork.parts.CamPair;
import jackwork.parts.Link;
import java.util.ArrayList;
import java.util.List;

/** Cams push their followers well, and a follower is not too thick for its curve. */
final class CamShapes implements Question {

    /** Steepest push that designers allow, degrees: Norton, Cam Design and Manufacturing Handbook, from memory. */
    private static final double STEEPEST = 35;

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (Link link : subject.assembly().links()) {
            if (link instanceof CamPair cam) {
                findings.add(steep(cam));
                findings.add(sharp(cam));
            }
        }
        return findings;
    }

    private static Finding steep(CamPair cam) {
        double angle = Math.toDegrees(cam.profile().steepest());
        double margin = STEEPEST - angle;
        return new Finding(
                "cam-steep/" + cam.name(),
                "Does " + cam.name() + " push its follower well?",
                margin > 0 ? Status.PASS : Status.FAIL,
                angle,
                STEEPEST,
                margin,
                "deg",
                new Where(cam.camPart(), null, cam.centre()),
                "at its steepest it pushes " + Words.number(angle) + "° away from the follower's way",
                margin > 0 ? "" : "Let the rise take a longer turn, or set the follower farther from the cam's centre.",
                "greatest angle of push and way over a turn = " + Words.number(angle) + "°; usual limit "
                        + Words.number(STEEPEST) + "°",
                List.of());
    }

    private static Finding sharp(CamPair cam) {
        double least = cam.profile().sharpest();
        double margin = least - cam.radius();
        return new Finding(
                "cam-undercut/" + cam.name(),
                "Can " + cam.name() + " be cut for its follower?",
                margin > 0 ? Status.PASS : Status.FAIL,
                least,
                cam.radius(),
                margin,
                "mm",
                new Where(cam.camPart(), null, cam.centre()),
                margin > 0
                        ? "the follower's path bends no sharper than " + Words.number(least) + " mm"
                        : "the follower's path bends to " + Words.number(least)
                                + " mm, its peg is thicker: the profile cuts away its own rise",
                margin > 0 ? "" : "Take a thinner peg, a larger cam, or a gentler rise.",
                "least radius of the follower's path = " + Words.number(least) + " mm; peg "
                        + Words.number(cam.radius()) + " mm",
                List.of());
    }
}
