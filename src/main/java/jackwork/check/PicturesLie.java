package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Bounds;
import jackwork.parts.Artwork;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.List;

/** Each picture lies over its part, from left to right and from its lower edge up, and is printed about as large. */
final class PicturesLie implements Question {

    /** Of the part's width that must be covered; pictures may show a detail. */
    private static final double COVERED = 0.25;
    /** A picture wider than so many parts is printed in another measure. */
    private static final double WIDEST = 5;

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (Artwork.PartPicture picture : subject.assembly().artwork().pictures()) {
            subject.assembly().parts().stream()
                    .filter(part -> part.name().equals(picture.part()))
                    .findFirst()
                    .ifPresent(part -> findings.add(finding(picture, part)));
        }
        return findings;
    }

    private static Finding finding(Artwork.PartPicture picture, Part part) {
        Bounds bounds = part.drawn().bounds();
        double left = Math.max(picture.at().x(), bounds.minX());
        double right = Math.min(picture.at().x() + picture.width(), bounds.maxX());
        double share = Math.max(0, right - left) / bounds.width();
        boolean beside = picture.at().y() >= bounds.maxY();
        boolean large = picture.width() > WIDEST * bounds.width();
        boolean lies = share >= COVERED && !beside && !large;
        Sentence why;
        if (large) {
            why = say("it is {} wide, its part {}", mm(picture.width()), mm(bounds.width()));
        } else if (beside) {
            why = say("its lower edge lies above all of {}", part.name());
        } else {
            why = say("it covers {} of the width of {}", Measure.of(100 * share, "%"), part.name());
        }
        return Finding.ask(Topic.PICTURE_LIES, picture.part(), say("Does the picture of {} lie on it?", picture.part()))
                .answer(
                        lies ? Status.PASS : Status.FAIL,
                        large ? picture.width() : share,
                        large ? WIDEST * bounds.width() : COVERED,
                        large ? WIDEST * bounds.width() - picture.width() : beside ? -1 : share - COVERED,
                        large ? "mm" : "1")
                .at(new Where(part.name(), null, picture.at()))
                .because(
                        why,
                        lies
                                ? Sentence.NOTHING
                                : say(
                                        "Write `at` as the picture's lower left corner, and `width` as it is printed, in mm."),
                        "covered width / width of the part = " + Words.number(share) + "; at least "
                                + Words.number(COVERED) + ", and no wider than " + Words.number(WIDEST) + " parts");
    }
}
