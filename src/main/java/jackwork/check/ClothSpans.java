package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Measure.stroke;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.motion.rest.StrokeResult;
import jackwork.parts.Artwork;
import jackwork.parts.Body;
import java.util.ArrayList;
import java.util.List;

/** Each piece of cloth that is fixed at two places reaches from one to the other all along the stroke. */
final class ClothSpans implements Question {

    /** Shorter by this is as long, mm: cloth gives more. */
    private static final double GIVES = 0.01;

    /** Two places that never come further apart are one, mm: a stitch. */
    private static final double STITCH = 1;
    /** Cloth hangs in folds when it is longer than its way by more, as a share of that: common practice, no source. */
    private static final double FOLDS = 3;

    /** Longer by more it lies in a heap, caught by whatever moves. */
    private static final double HEAP = 6;

    /** The greatest distance and when. */
    private record Farthest(double distance, double stroke) {}

    @Override
    public boolean appliesTo(Subject subject) {
        return subject.assembly().artwork().cloths().stream().anyMatch(cloth -> cloth.span() != null);
    }

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (Artwork.Cloth cloth : subject.assembly().artwork().cloths()) {
            Artwork.Span span = cloth.span();
            if (span != null) {
                findings.add(find(subject, cloth.name(), span));
            }
        }
        return findings;
    }

    private static Finding find(Subject subject, String name, Artwork.Span span) {
        Farthest farthest = farthest(subject, span);
        if (farthest.distance() < STITCH) {
            return inOnePlace(name, span, farthest);
        }
        if (span.length() > FOLDS * farthest.distance()) {
            return tooLong(name, span, farthest);
        }
        double margin = span.length() - farthest.distance();
        boolean reaches = margin >= -GIVES;
        return Finding.ask(Topic.CLOTH_SPANS, name, say("Is {} long enough for how its parts move?", name))
                .answer(reaches ? Status.PASS : Status.FAIL, span.length(), farthest.distance(), margin, "mm")
                .at(new Where(span.fromPart(), farthest.stroke(), span.from()))
                .because(
                        say(
                                "{} is {} long between {} and {}, which are {} apart at most, at {}",
                                name,
                                mm(span.length()),
                                span.fromPart(),
                                span.toPart(),
                                mm(farthest.distance()),
                                stroke(farthest.stroke())),
                        reaches
                                ? Sentence.NOTHING
                                : say(
                                        "Give {} at least {} more, or fix it nearer the joint between them.",
                                        name,
                                        mm(-margin)),
                        "greatest distance between the two places = " + Words.number(farthest.distance()) + " mm at "
                                + Words.stroke(farthest.stroke()) + "; cloth " + Words.number(span.length()) + " mm");
    }

    private static Finding inOnePlace(String name, Artwork.Span span, Farthest farthest) {
        return Finding.ask(Topic.CLOTH_SPANS, name, say("Does {} reach from one place to another?", name))
                .answer(Status.FAIL, farthest.distance(), STITCH, farthest.distance() - STITCH, "mm")
                .at(new Where(span.fromPart(), farthest.stroke(), span.from()))
                .because(
                        say(
                                "both its ends are fixed in one place, on {} and on {}, never further apart than {}",
                                span.fromPart(),
                                span.toPart(),
                                mm(farthest.distance())),
                        say("Move cloths.{}.from or .to, or leave both out when it hangs from one place.", name),
                        "greatest distance between the two places = " + Words.number(farthest.distance()) + " mm");
    }

    private static Finding tooLong(String name, Artwork.Span span, Farthest farthest) {
        boolean heap = span.length() > HEAP * farthest.distance();
        double limit = FOLDS * farthest.distance();
        return Finding.ask(Topic.CLOTH_SPANS, name, say("Is {} as long as its way asks?", name))
                .answer(heap ? Status.FAIL : Status.DOUBTFUL, span.length(), limit, limit - span.length(), "mm")
                .at(new Where(span.fromPart(), farthest.stroke(), span.from()))
                .because(
                        say(
                                "{} is {} long between {} and {}, which are never further apart than {}",
                                name,
                                mm(span.length()),
                                span.fromPart(),
                                span.toPart(),
                                mm(farthest.distance())),
                        say("Give it less, so that it is not caught by what moves: cloths.{}.length.", name),
                        "cloth " + Words.number(span.length()) + " mm; at most " + Words.number(FOLDS)
                                + " times the greatest distance, " + Words.number(limit)
                                + " mm (common practice, no source)");
    }

    private static Farthest farthest(Subject subject, Artwork.Span span) {
        StrokeResult stroke = subject.stroke();
        Farthest farthest = new Farthest(span.from().distance(span.to()), 0);
        for (double[][] way : List.of(stroke.pose(), stroke.returnPose())) {
            for (int i = 0; i < way.length; i++) {
                Point from = now(subject, span.fromPart(), span.from(), way[i]);
                Point to = now(subject, span.toPart(), span.to(), way[i]);
                // Beyond reach there are no poses, and no number is greater than any.
                if (from.distance(to) > farthest.distance()) {
                    farthest = new Farthest(from.distance(to), stroke.stroke()[i]);
                }
            }
        }
        return farthest;
    }

    private static Point now(Subject subject, String part, Point drawn, double[] pose) {
        Body body = subject.assembly().body(subject.assembly().bodyOf(part));
        if (body.isGround()) {
            return drawn;
        }
        int number = subject.mechanism().bodyNumber(body.name());
        return drawn.minus(body.centre())
                .turned(pose[3 * number + 2])
                .plus(new Point(pose[3 * number], pose[3 * number + 1]));
    }
}
