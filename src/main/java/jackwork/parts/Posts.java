package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.PartEntry;
import jackwork.design.PinEntry;
import jackwork.design.StopEntry;
import jackwork.design.Works;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.geometry.TurnedMeeting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where posts stand. A post that is to stop something keeps its distance from that part's pivot, as drawn, and is moved round
 * it until it touches the part where that is wished to end. Outlines as drawn: teeth and cams, which the program shapes, have
 * no posts.
 */
final class Posts {

    /** A post is moved no farther than this from its circle, mm: that says where there is room. */
    private static final double FAR = 30;

    /** A post drawn inside the part is first taken out of it, in steps, rad. */
    private static final double STEP = Math.toRadians(0.5);

    /** @param angle from the position drawn, rad; sense +1 when it comes there counter-clockwise */
    private record Wish(Point pivot, double angle, double sense) {}

    private Posts() {}

    /** Where a pin stands, common frame. */
    static Point at(Design design, Works works, String name, PinEntry pin) {
        Point drawn = Places.at(design, works, pin.at(), name);
        PinEntry.Stopped stopped = pin.stops();
        if (stopped == null) {
            return drawn;
        }
        String place = design.fileOf(works) + ": pins." + name + ".stops";
        requireStanding(design, works, pin, stopped, place);
        Wish wish = wish(design, works, stopped, place);
        double far = FAR / Math.max(1, drawn.distance(wish.pivot()));
        double radius = Named.in(design.workshop().rods(), pin.rod()).diameter().value() / 2;
        List<Outline> wood = wood(design, works, pin, stopped.part()).stream()
                .map(outline -> outline.moved(Pose.about(wish.pivot(), wish.angle())))
                .toList();
        Outline disc = Outline.disc(new Circle(drawn, radius), Borings.RIM);
        double out = 0;
        while (Math.abs(out) < far && overlaps(disc, wish, out, wood)) {
            out += wish.sense() * STEP;
        }
        double nearest = Double.NaN;
        for (Outline outline : wood) {
            Optional<TurnedMeeting> met =
                    TurnedMeeting.first(disc, wish.pivot(), outline, out, out - wish.sense() * far);
            if (met.isPresent() && (Double.isNaN(nearest) || (met.get().angle() - nearest) * wish.sense() > 0)) {
                nearest = met.get().angle();
            }
        }
        // It stays where it is drawn then, and the finding of that end says that nothing stops it.
        if (Double.isNaN(nearest) || Math.abs(nearest) > far) {
            return drawn;
        }
        return drawn.turnedAbout(wish.pivot(), nearest);
    }

    /** A post stands still against what it stops: it is held by none of it, and, but for a figure's own limits, by the ground. */
    private static void requireStanding(
            Design design, Works works, PinEntry pin, PinEntry.Stopped stopped, String place) {
        List<String> body = bodyOf(design, works, stopped.part());
        if (isFixed(design, stopped.part())) {
            throw new PartException(
                    place + ".part", "read " + stopped.part() + ", which is fixed; expected a part that turns");
        }
        for (String holder : pin.parts()) {
            boolean turns = body.contains(holder);
            boolean ofWorks = body.contains(design.box().lever().part())
                    || body.contains(design.box().coinWorks().bucket().part());
            if (turns || (ofWorks && !holder.equals(Body.GROUND) && !isFixed(design, holder))) {
                throw new PartException(
                        place,
                        "read " + holder
                                + " among the pin's parts, which moves; a post is held by parts that stand still, and is no"
                                + " pivot and no dowel of what it stops");
            }
        }
    }

    private static boolean isFixed(Design design, String part) {
        return design.box().works().fixed().contains(part)
                || design.figure().works().fixed().contains(part);
    }

    private static boolean overlaps(Outline disc, Wish wish, double turned, List<Outline> wood) {
        Outline there = disc.moved(Pose.about(wish.pivot(), turned));
        return wood.stream().anyMatch(there::overlaps);
    }

    private static Wish wish(Design design, Works works, PinEntry.Stopped stopped, String place) {
        Works box = design.box().works();
        String when = stopped.when();
        List<String> body = bodyOf(design, works, stopped.part());
        if (body.contains(design.box().lever().part())) {
            Point pivot = pin(design, box, design.box().lever().pin());
            Double turn = design.box().lever().turn();
            return wish(pivot, when, "pressed", turn, CoinWorksMaker.leverSense(design), place, "lever.throw");
        }
        if (body.contains(design.box().coinWorks().bucket().part())) {
            Point pivot = pin(design, box, design.box().coinWorks().bucket().pin());
            Double tip = design.box().coinWorks().bucket().tip();
            return wish(pivot, when, "tipped", tip, CoinWorksMaker.bucketSense(design), place, "coin-works.bucket.tip");
        }
        for (Works of : List.of(design.figure().works(), box)) {
            for (StopEntry stop : of.stops().values()) {
                Wish wish = wish(design, of, stop, body, when);
                if (wish != null) {
                    return wish;
                }
            }
        }
        throw new PartException(
                place,
                "read part " + stopped.part() + ", when " + when
                        + "; expected the lever (rest, pressed), the bucket (rest, tipped), or a part whose turning `stops` limit"
                        + " (from, to)");
    }

    private static Wish wish(
            Point pivot, String when, String end, @Nullable Double way, double sense, String place, String key) {
        if (when.equals("rest")) {
            return new Wish(pivot, 0, -sense);
        }
        if (!when.equals(end)) {
            throw new PartException(place + ".when", "read " + when + ", expected rest or " + end);
        }
        if (way == null) {
            throw new PartException(
                    place,
                    key
                            + " is left out, so nothing says where the post is to stand; write it, or leave `stops` out and the post"
                            + " stays where it is drawn");
        }
        return new Wish(pivot, sense * Math.toRadians(way), sense);
    }

    private static @Nullable Wish wish(Design design, Works works, StopEntry stop, List<String> body, String when) {
        boolean first = body.contains(stop.between().get(0));
        boolean ofIt = first || body.contains(stop.between().get(1));
        if (!ofIt || !List.of("from", "to").contains(when)) {
            return null;
        }
        Works of = works.pins().containsKey(stop.pin()) ? works : design.box().works();
        double sign = first ? 1 : -1;
        double angle = Math.toRadians(when.equals("from") ? stop.from() : stop.to());
        return new Wish(pin(design, of, stop.pin()), sign * angle, sign * (when.equals("from") ? -1 : 1));
    }

    private static Point pin(Design design, Works works, String name) {
        return Places.at(design, works, Named.in(works.pins(), name).at(), name);
    }

    /** The parts that are one body with one of them. */
    private static List<String> bodyOf(Design design, Works works, String part) {
        for (Works of : List.of(works, design.figure().works(), design.box().works())) {
            for (List<String> group : of.glued()) {
                if (group.contains(part)) {
                    return group;
                }
            }
        }
        return List.of(part);
    }

    /** What a rod may meet of a body: its parts in the layers between those that hold the rod. */
    private static List<Outline> wood(Design design, Works works, PinEntry pin, String part) {
        int low = Integer.MAX_VALUE;
        int high = Integer.MIN_VALUE;
        for (String holder : pin.reaches()) {
            PartEntry entry = entry(design, holder);
            if (entry != null) {
                low = Math.min(low, entry.layer() + 1 - entry.pliesOrOne());
                high = Math.max(high, entry.layer());
            }
        }
        List<Outline> wood = new ArrayList<>();
        for (String one : bodyOf(design, works, part)) {
            PartEntry entry = entry(design, one);
            if (entry != null && entry.layer() >= low && entry.layer() + 1 - entry.pliesOrOne() <= high) {
                boolean ofBox = design.box().works().parts().containsKey(one);
                String drawn = entry.drawn();
                String name = drawn == null ? one : drawn;
                (ofBox ? design.boxDrawing() : design.figureDrawing())
                        .outline(name)
                        .map(outline -> ofBox ? outline : outline.moved(design.figureShift()))
                        .ifPresent(wood::add);
            }
        }
        return wood;
    }

    private static @Nullable PartEntry entry(Design design, String part) {
        PartEntry ofBox = design.box().works().parts().get(part);
        return ofBox == null ? design.figure().works().parts().get(part) : ofBox;
    }
}
