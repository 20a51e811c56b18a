package jackwork.parts;

import jackwork.design.CamEntry;
import jackwork.design.CaseEntry;
import jackwork.design.Design;
import jackwork.design.MountEntry;
import jackwork.design.Named;
import jackwork.design.PinEntry;
import jackwork.design.Place;
import jackwork.design.PointOf;
import jackwork.design.SlideEntry;
import jackwork.design.StringEntry;
import jackwork.design.TouchEntry;
import jackwork.design.Works;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Circle;
import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What joints and the case ask of the wood: round holes for rods and cords, slots for pegs, openings for screws. */
final class Borings {

    /** A slot for a peg is so much longer than its peg at the least, mm: common practice, no source. */
    private static final double SHORTEST = 0.5;

    /** How much wider than its cord an eye is, mm: to thread it by hand, common practice, no source. */
    private static final double EYE_PLAY = 0.6;

    /** An eyelet is two printed lines thick all round, mm on diameter. */
    private static final double LEAST_WALLS = 1.6;

    /** Flattening of round holes, mm: well below what a laser can show. */
    static final double RIM = 0.002;

    private final Design design;
    private final WorkshopFile workshop;
    private final Map<String, List<Hole>> holes = new LinkedHashMap<>();
    private final Map<String, List<Cut>> slots = new LinkedHashMap<>();
    /** What asks for each hole, by part and hole, as {@code figure.yaml: pins.hip}. */
    private final Map<String, String> places = new LinkedHashMap<>();

    /** @param place what asks for it, as {@code figure.yaml: slides.track} */
    private record Cut(Outline outline, String place) {}

    private Borings(Design design) {
        this.design = design;
        this.workshop = design.workshop();
    }

    /** Of box and figure. */
    static Borings of(Design design) {
        Borings borings = new Borings(design);
        borings.bore(design.box().works());
        borings.bore(design.figure().works());
        borings.boreLinks(design.box().works());
        borings.boreLinks(design.figure().works());
        borings.boreCase();
        return borings;
    }

    /** Round holes of a part. */
    List<Hole> holes(String part) {
        return List.copyOf(holes.getOrDefault(part, List.of()));
    }

    /** Something else that is cut out of a part. */
    void cut(String part, Outline outline, String place) {
        slots.computeIfAbsent(part, k -> new ArrayList<>()).add(new Cut(outline, place));
    }

    /** A part without what is cut out of it. */
    Outline slotted(String part, Outline whole) {
        Outline outline = whole;
        for (Cut slot : slots.getOrDefault(part, List.of())) {
            Outline before = outline;
            outline = PartException.unless(
                    slot.place(), part, "what it cuts out of it", () -> before.without(slot.outline()));
        }
        return outline;
    }

    /** What is left of a part once its holes are bored; it has its slots by then. */
    Outline left(String part, Outline outline) {
        Outline rest = outline;
        for (Hole hole : holes(part)) {
            Point at = hole.circle().centre();
            String place = Named.in(places, part + "/" + hole.joint());
            if (!outline.contains(at)) {
                throw new PartException(
                        place,
                        String.format(
                                Locale.ROOT,
                                "its hole in %s lies (%.2f, %.2f) mm from the box's origin, but there is no wood of it there; move the point,"
                                        + " or draw the part up to it",
                                part,
                                at.x(),
                                at.y()));
            }
            try {
                rest = rest.without(hole.circle(), RIM);
            } catch (InvalidOutlineException e) {
                throw new PartException(
                        place,
                        String.format(
                                Locale.ROOT,
                                "its hole, %.2f mm wide at (%.2f, %.2f) mm, breaks %s apart; leave more wood around it, or"
                                        + " take a thinner rod",
                                2 * hole.circle().radius(),
                                at.x(),
                                at.y(),
                                part));
            }
        }
        return rest;
    }

    private Point at(Works works, @Nullable Place place, String fallback) {
        return Places.at(design, works, place, fallback);
    }

    private String place(Works works, String section, String name) {
        return design.fileOf(works) + ": " + section + "." + name;
    }

    private void bore(Works works) {
        for (Map.Entry<String, PinEntry> entry : works.pins().entrySet()) {
            PinEntry pin = entry.getValue();
            Point at = Posts.at(design, works, entry.getKey(), pin);
            Object holder = gluedWith(tight(pin));
            for (String part : pin.parts()) {
                boolean grips = gluedWith(part).equals(holder);
                Double shoulder = pin.shoulder();
                Bore bore = shoulder != null && !grips
                        ? Bores.onShoulder(design, part, shoulder)
                        : Bores.on(design, part, pin.rod(), grips);
                bored(works, "pins", part, at, entry.getKey(), bore);
            }
        }
        for (Map.Entry<String, MountEntry> entry : works.mounts().entrySet()) {
            MountEntry mount = entry.getValue();
            for (String part : mount.parts()) {
                hole(works, "mounts", part, at(works, mount.at(), entry.getKey()), mount.rod(), entry.getKey(), true);
            }
        }
        for (Map.Entry<String, SlideEntry> entry : works.slides().entrySet()) {
            SlideEntry slide = entry.getValue();
            hole(
                    works,
                    "slides",
                    slide.part(),
                    at(works, slide.peg(), entry.getKey()),
                    slide.rod(),
                    entry.getKey(),
                    true);
            double width = Bores.on(design, slide.in(), slide.rod(), false).diameter();
            Point from = at(works, slide.from(), "");
            Point to = at(works, slide.to(), "");
            Point via = slide.via() == null ? null : at(works, slide.via(), "");
            String place = place(works, "slides", entry.getKey());
            if (from.distance(to) < SHORTEST) {
                throw new PartException(
                        place + ".to",
                        String.format(
                                Locale.ROOT,
                                "from and to are %.2f mm apart, expected %.1f mm or more: a peg slides from one to the other",
                                from.distance(to),
                                SHORTEST));
            }
            Outline slot = PartException.unless(
                    place,
                    slide.in(),
                    "the ends of its slot",
                    () -> via == null ? Slot.along(from, to, width) : Slot.along(from, via, to, width));
            cut(slide.in(), slot, place);
        }
    }

    /** The plates of the works, where they are screwed to the case: openings, since no rod goes there. */
    private void boreCase() {
        CaseEntry housing = design.box().housing();
        if (housing == null) {
            return;
        }
        for (int i = 0; i < housing.screws().size(); i++) {
            int screw = i;
            Point at = design.inBox(housing.screws().get(i), "");
            for (String name : design.box().works().fixed()) {
                String drawn = Named.in(design.box().works().parts(), name).drawn();
                boolean wood = design.boxDrawing()
                        .outline(drawn == null ? name : drawn)
                        .map(outline -> outline.contains(at))
                        .orElse(false);
                if (wood) {
                    cut(
                            name,
                            Outline.disc(new Circle(at, RodRun.SCREW_HOLE / 2), RIM),
                            design.fileOf(design.box().works()) + ": case.screws." + screw);
                }
            }
        }
    }

    /** Pegs of cams and touches, posts of strings, and the small holes that strings are tied in. */
    private void boreLinks(Works works) {
        works.joints(CamEntry.class)
                .forEach((name, cam) -> hole(
                        works,
                        "cams",
                        cam.follower().part(),
                        at(works, cam.follower().at(), ""),
                        cam.rod(),
                        name,
                        true));
        works.joints(TouchEntry.class).forEach((name, touch) -> {
            String rod = touch.rod();
            if (rod != null) {
                hole(works, "touches", touch.part(), at(works, touch.peg(), ""), rod, name, true);
            }
        });
        works.joints(StringEntry.class).forEach((name, string) -> {
            double eye = eye(workshop, string.cord());
            for (PointOf end : List.of(string.from(), string.to())) {
                bored(
                        works,
                        "strings",
                        end.part(),
                        name,
                        joint -> Hole.open(new Circle(at(works, end.at(), ""), eye / 2), joint));
            }
            for (StringEntry.GuideEntry guide : string.over()) {
                String rod = guide.rod();
                if (rod == null) {
                    Double eyelet = guide.eyelet();
                    requireWall(place(works, "strings", name), eyelet, eye);
                    Point at = at(works, guide.at(), "");
                    if (eyelet == null) {
                        bored(works, "strings", guide.part(), name, joint -> Hole.open(new Circle(at, eye / 2), joint));
                    } else {
                        bored(works, "strings", guide.part(), at, name, Bores.forEyelet(design, guide.part(), eyelet));
                    }
                } else {
                    hole(works, "strings", guide.part(), at(works, guide.at(), ""), rod, name, true);
                }
            }
        });
    }

    private static void requireWall(String place, @Nullable Double eyelet, double eye) {
        if (eyelet != null && eyelet < eye + LEAST_WALLS) {
            throw new PartException(
                    place,
                    String.format(
                            Locale.ROOT,
                            "an eyelet of %.1f mm around a hole of %.1f mm for its cord leaves less than two printed"
                                    + " lines; make it %.1f mm or wider, or take a thinner cord",
                            eyelet,
                            eye,
                            eye + LEAST_WALLS));
        }
    }

    /** Diameter of a hole that a cord is threaded through, mm. */
    private static double eye(WorkshopFile workshop, String cord) {
        return Named.in(workshop.cords(), cord).diameter().value() + EYE_PLAY;
    }

    /** The group of parts that a part is one body with; parts of the rod's own body all grip it. */
    private Object gluedWith(String part) {
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            if (works.fixed().contains(part)) {
                return "fixed";
            }
            for (List<String> group : works.glued()) {
                if (group.contains(part)) {
                    return group;
                }
            }
        }
        return part.equals(Body.GROUND) ? "fixed" : part;
    }

    static String tight(PinEntry pin) {
        String tight = pin.tight();
        return tight == null ? pin.parts().get(0) : tight;
    }

    private void hole(Works works, String section, String part, Point at, String rod, String joint, boolean grips) {
        bored(works, section, part, at, joint, Bores.on(design, part, rod, grips));
    }

    private void bored(Works works, String section, String part, Point at, String joint, Bore bore) {
        Circle circle = new Circle(at, bore.diameter() / 2);
        bored(works, section, part, joint, name -> new Hole(circle, name, bore.grips(), bore));
    }

    private void bored(Works works, String section, String part, String joint, Function<String, Hole> named) {
        List<Hole> bored = holes.computeIfAbsent(part, k -> new ArrayList<>());
        // Cut files name every hole, so a second one of the same joint needs a name of its own.
        String name = joint;
        for (int again = 2; taken(bored, name); again++) {
            name = joint + "-" + again;
        }
        bored.add(named.apply(name));
        places.put(part + "/" + name, place(works, section, joint));
    }

    private static boolean taken(List<Hole> holes, String name) {
        return holes.stream().anyMatch(hole -> hole.joint().equals(name));
    }
}
