package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Arc;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Part;
import jackwork.parts.SlideJoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Every peg is drawn on the middle line of its slot, between its ends, and the slot has wood on either side all along. Where
 * it is not, the run begins somewhere else than drawn, and a part is cut in two or its slot lies beside it.
 */
final class PegsInSlots implements Question {

    /** A peg may be drawn so far off its slot's line, mm: a tenth is what a drawing is read to. */
    private static final double OFF = 0.1;
    /** Places along a slot where wood is looked for on either side. */
    private static final int STEPS = 24;

    /** @param off mm; wrong when it is more than {@link #OFF} */
    private record Miss(SlideJoint slide, Point at, double off, Sentence why, Sentence remedy) {}

    @Override
    public boolean appliesTo(Subject subject) {
        return !subject.assembly().slides().isEmpty();
    }

    @Override
    public List<Finding> ask(Subject subject) {
        List<Miss> pegs = new ArrayList<>();
        List<Miss> woods = new ArrayList<>();
        for (SlideJoint slide : subject.assembly().slides()) {
            pegs.add(peg(slide));
            woods.add(wood(subject, slide));
        }
        // A line that misses its peg mostly leaves the wood as well: the peg is told first.
        Comparator<Miss> byOff = Comparator.comparingDouble(Miss::off);
        Miss peg = pegs.stream().max(byOff).orElseThrow();
        Miss worst = peg.off() > OFF
                ? peg
                : Stream.concat(pegs.stream(), woods.stream()).max(byOff).orElseThrow();
        boolean lies = worst.off() <= OFF;
        return List.of(Finding.ask(
                        Topic.PEGS_IN_SLOTS,
                        say("Does every peg lie in its slot as drawn, and every slot in its wood?"))
                .answer(lies ? Status.PASS : Status.FAIL, worst.off(), OFF, OFF - worst.off(), "mm")
                .at(new Where(worst.slide().name(), 0.0, worst.at()))
                .because(
                        lies
                                ? say(
                                        "{} is farthest from where it says, {}",
                                        worst.slide().name(),
                                        mm(worst.off()))
                                : worst.why(),
                        lies ? Sentence.NOTHING : worst.remedy(),
                        "distance of a peg from its slot's middle line, or of that line's sides from wood, greatest = "
                                + Words.number(worst.off()) + " mm, at most " + Words.number(OFF) + " mm"));
    }

    private static Miss peg(SlideJoint slide) {
        double off = line(slide).stream()
                .mapToDouble(piece -> fromPiece(slide.at(), piece))
                .min()
                .orElseThrow();
        return new Miss(
                slide,
                slide.at(),
                off,
                say("the peg of {} stands {} off the middle line of its slot, as drawn", slide.name(), mm(off)),
                say(
                        "Move from, via or to of {}, or its peg: the line between them goes through the peg.",
                        slide.name()));
    }

    /** The wood nearest to the slot's sides, just beyond its width. */
    private static Miss wood(Subject subject, SlideJoint slide) {
        double kerf = subject.assembly().workshop().laser().kerf().value();
        List<Part> parts = subject.assembly().body(slide.slot()).parts().stream()
                .filter(part -> subject.rods().stream()
                        .anyMatch(rod ->
                                rod.name().equals(slide.name()) && rod.parts().contains(part.name())))
                .toList();
        double worst = 0;
        Point where = slide.from();
        for (Part part : parts) {
            double beside =
                    slide.bore().diameter() / 2 + LeastBar.of(part.thickness().value(), kerf) / 2;
            List<Point[]> line = line(slide);
            for (int i = 0; i < line.size(); i++) {
                Point[] piece = line.get(i);
                Point along = piece[1].minus(piece[0]);
                if (along.length() == 0) {
                    continue;
                }
                Point left = new Point(-along.y(), along.x()).times(beside / along.length());
                for (Point middle : piece) {
                    double off = Math.max(off(part.drawn(), middle.plus(left)), off(part.drawn(), middle.minus(left)));
                    if (off > worst) {
                        worst = off;
                        where = middle;
                    }
                }
            }
        }
        return new Miss(
                slide,
                where,
                worst,
                say("beside the slot of {} there is no wood: it begins {} away", slide.name(), mm(worst)),
                say("Draw the part wider along the slot, or move from and to of {} onto it.", slide.name()));
    }

    private static double off(Outline wood, Point at) {
        return wood.contains(at) ? 0 : wood.distanceToEdge(at);
    }

    /** The middle line in short straight pieces. */
    private static List<Point[]> line(SlideJoint slide) {
        List<Point[]> pieces = new ArrayList<>();
        Point before = slide.from();
        Point via = slide.via();
        Point centre = via == null ? null : Arc.centre(slide.from(), via, slide.to());
        for (int i = 1; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            Point next;
            if (via == null || centre == null) {
                next = slide.from().plus(slide.to().minus(slide.from()).times(share));
            } else {
                double span = Arc.span(centre, slide.from(), via, slide.to());
                next = slide.from().turnedAbout(centre, span * share);
            }
            pieces.add(new Point[] {before, next});
            before = next;
        }
        return pieces;
    }

    private static double fromPiece(Point at, Point[] piece) {
        Point along = piece[1].minus(piece[0]);
        double square = along.dot(along);
        double share =
                square == 0 ? 0 : Math.max(0, Math.min(1, at.minus(piece[0]).dot(along) / square));
        return at.distance(piece[0].plus(along.times(share)));
    }
}
