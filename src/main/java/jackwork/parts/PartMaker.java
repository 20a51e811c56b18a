package jackwork.parts;

import jackwork.design.CamEntry;
import jackwork.design.CaseEntry;
import jackwork.design.Design;
import jackwork.design.MountEntry;
import jackwork.design.Named;
import jackwork.design.PartEntry;
import jackwork.design.PawlEntry;
import jackwork.design.PinEntry;
import jackwork.design.Place;
import jackwork.design.PointOf;
import jackwork.design.RackEntry;
import jackwork.design.SlideEntry;
import jackwork.design.StringEntry;
import jackwork.design.TouchEntry;
import jackwork.design.Works;
import jackwork.design.WorkshopFile;
import jackwork.drawing.Drawing;
import jackwork.geometry.Circle;
import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.SectionProperties;
import jackwork.stock.Sheets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes the flat parts of a design: outlines in the common frame, with the holes their joints ask for. */
final class PartMaker {

    /** Corners of a cam's outline: half a degree each. */
    private static final int CAM_CORNERS = 720;

    /** A slot for a peg is so much longer than its peg at the least, mm: common practice, no source. */
    private static final double SHORTEST = 0.5;

    /** How much wider than its cord an eye is, mm: to thread it by hand, common practice, no source. */
    private static final double EYE_PLAY = 0.6;

    /** An eyelet is two printed lines thick all round, mm on diameter. */
    private static final double LEAST_WALLS = 1.6;

    /** Flattening of round holes, mm: well below what a laser can show. */
    private static final double RIM = 0.002;

    private final Design design;
    private final WorkshopFile workshop;
    private final Map<String, List<Hole>> holes = new LinkedHashMap<>();
    private final Map<String, List<Cut>> slots = new LinkedHashMap<>();
    /** What asks for each hole, by part and hole, as {@code figure.yaml: pins.hip}. */
    private final Map<String, String> places = new LinkedHashMap<>();

    /** Outlines made from teeth or motion, by part. */
    private final Map<String, Outline> made = new LinkedHashMap<>();

    private final Map<String, Teeth.Placed> teeth;

    /** @param place what asks for it, as {@code figure.yaml: slides.track} */
    private record Cut(Outline outline, String place) {}

    private PartMaker(Design design) {
        this.design = design;
        this.workshop = design.workshop();
        this.teeth = Teeth.of(design);
    }

    /** All parts by name, the box's first. */
    static Map<String, Part> make(Design design) {
        PartMaker maker = new PartMaker(design);
        maker.bore(design.box().works());
        maker.bore(design.figure().works());
        maker.boreLinks(design.box().works());
        maker.boreLinks(design.figure().works());
        maker.boreCase();
        maker.make(design.box().works());
        maker.make(design.figure().works());
        Map<String, Part> parts = new LinkedHashMap<>();
        maker.cut(design.box().works(), design.boxDrawing(), Point.ORIGIN, parts);
        maker.cut(design.figure().works(), design.figureDrawing(), design.figureShift(), parts);
        return parts;
    }

    private Point at(Works works, @Nullable Place place, String fallback) {
        return Places.at(design, works, place, fallback);
    }

    private String place(Works works, String section, String name) {
        return design.fileOf(works) + ": " + section + "." + name;
    }

    private void make(Works works) {
        works.gears().forEach((name, gear) -> {
            String place = place(works, "gears", name);
            Outline teethOf = PartException.unless(
                    place, gear.part(), "its teeth", () -> Teeth.outline(place, Named.in(teeth, name)));
            if (Teeth.isInside(gear)) {
                slots.computeIfAbsent(gear.part(), k -> new ArrayList<>()).add(new Cut(teethOf, place));
            } else {
                made.put(gear.part(), teethOf);
            }
        });
        works.joints(CamEntry.class)
                .forEach((name, cam) -> made.put(
                        cam.part(),
                        PartException.unless(
                                place(works, "cams", name),
                                cam.part(),
                                "the numbers of cam " + name,
                                () -> Cams.profile(design, works, name, cam)
                                        .outline(Cams.centre(design, works, name, cam), CAM_CORNERS))));
        works.joints(PawlEntry.class)
                .forEach((name, pawl) -> made.put(
                        pawl.wheel(),
                        PartException.unless(
                                place(works, "pawls", name),
                                pawl.wheel(),
                                "the numbers of pawl " + name,
                                () -> RatchetWheel.of(pawl)
                                        .outline(
                                                Places.at(design, works, pawl.at(), name),
                                                RatchetWheel.firstTooth(pawl)))));
    }

    private void bore(Works works) {
        for (Map.Entry<String, PinEntry> entry : works.pins().entrySet()) {
            PinEntry pin = entry.getValue();
            Point at = at(works, pin.at(), entry.getKey());
            Object holder = gluedWith(tight(pin));
            for (String part : pin.parts()) {
                boolean grips = gluedWith(part).equals(holder);
                Double shoulder = pin.shoulder();
                if (shoulder != null && !grips) {
                    double running = workshop.fits().running().value();
                    bored(works, "pins", part, new Circle(at, (shoulder + running) / 2), entry.getKey(), false);
                } else {
                    hole(works, "pins", part, at, pin.rod(), entry.getKey(), grips);
                }
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
            double width = Named.in(workshop.rods(), slide.rod()).diameter().value()
                    + workshop.fits().running().value();
            Point from = at(works, slide.from(), "");
            Point to = at(works, slide.to(), "");
            Point via = slide.via() == null ? null : at(works, slide.via(), "");
            String place = place(works, "slides", entry.getKey());
            if (from.distance(to) < SHORTEST) {
                throw new PartException(
                        place + ".to",
                        String.format(
                                java.util.Locale.ROOT,
                                "from and to are %.2f mm apart, expected %.1f mm or more: a peg slides from one to the other",
                                from.distance(to),
                                SHORTEST));
            }
            Outline slot = PartException.unless(
                    place,
                    slide.in(),
                    "the ends of its slot",
                    () -> via == null ? Slot.along(from, to, width) : Slot.along(from, via, to, width));
            slots.computeIfAbsent(slide.in(), k -> new ArrayList<>()).add(new Cut(slot, place));
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
                    slots.computeIfAbsent(name, k -> new ArrayList<>())
                            .add(new Cut(
                                    Outline.disc(new Circle(at, RodRun.SCREW_HOLE / 2), 0.002),
                                    design.fileOf(design.box().works()) + ": case.screws." + screw));
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
                bored(works, "strings", end.part(), new Circle(at(works, end.at(), ""), eye / 2), name, false);
            }
            for (StringEntry.GuideEntry guide : string.over()) {
                String rod = guide.rod();
                if (rod == null) {
                    Double eyelet = guide.eyelet();
                    requireWall(place(works, "strings", name), eyelet, eye);
                    double diameter = eyelet == null
                            ? eye
                            : eyelet + workshop.fits().press().value();
                    bored(
                            works,
                            "strings",
                            guide.part(),
                            new Circle(at(works, guide.at(), ""), diameter / 2),
                            name,
                            eyelet != null);
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
    static double eye(WorkshopFile workshop, String cord) {
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
        double diameter = Named.in(workshop.rods(), rod).diameter().value();
        double clearance = (grips ? workshop.fits().press() : workshop.fits().running()).value();
        bored(works, section, part, new Circle(at, (diameter + clearance) / 2), joint, grips);
    }

    private void bored(Works works, String section, String part, Circle circle, String joint, boolean grips) {
        List<Hole> bored = holes.computeIfAbsent(part, k -> new ArrayList<>());
        // Cut files name every hole, so a second one of the same joint needs a name of its own.
        String name = joint;
        for (int again = 2; taken(bored, name); again++) {
            name = joint + "-" + again;
        }
        bored.add(new Hole(circle, name, grips));
        places.put(part + "/" + name, place(works, section, joint));
    }

    private static boolean taken(List<Hole> holes, String name) {
        return holes.stream().anyMatch(hole -> hole.joint().equals(name));
    }

    private void cut(Works works, Drawing drawing, Point shift, Map<String, Part> parts) {
        for (Map.Entry<String, PartEntry> entry : works.parts().entrySet()) {
            String name = entry.getKey();
            PartEntry part = entry.getValue();
            String drawn = part.drawn();
            Outline whole = made.containsKey(name)
                    ? Named.in(made, name)
                    : Named.in(drawing.outlines(), drawn == null ? name : drawn).moved(shift);
            Outline outline = slotted(works, name, whole);
            List<Hole> bored = List.copyOf(holes.getOrDefault(name, List.of()));
            Outline left = bored(name, outline, bored);
            SectionProperties section = SectionProperties.of(left);
            WorkshopFile.SheetEntry sheet = Named.in(workshop.sheets(), part.stock());
            for (int ply = 1; ply <= part.pliesOrOne(); ply++) {
                String one = PartEntry.ply(name, ply);
                parts.put(
                        one,
                        new Part(
                                one,
                                design.isOfBox(works),
                                part.layer() + 1 - ply,
                                part.stock(),
                                part.printed() == null
                                        ? Sheets.catalogue().find(sheet.kind()).orElseThrow()
                                        : Printing.kind(workshop),
                                part.printed() == null ? sheet.thickness() : Printing.thickness(workshop, sheet),
                                outline,
                                bored,
                                left,
                                section,
                                // Only the foremost face is seen.
                                ply == 1 ? engraving(drawing, name, part.drawn(), shift) : List.of(),
                                part.paint(),
                                part.printed()));
            }
        }
    }

    private Outline slotted(Works works, String part, Outline whole) {
        Outline outline = whole;
        for (Cut slot : slots.getOrDefault(part, List.of())) {
            Outline before = outline;
            outline = PartException.unless(
                    slot.place(), part, "what it cuts out of it", () -> before.without(slot.outline()));
        }
        for (Map.Entry<String, RackEntry> rack : works.joints(RackEntry.class).entrySet()) {
            if (rack.getValue().part().equals(part)) {
                outline = Teeth.rack(
                        place(works, "racks", rack.getKey()),
                        outline,
                        rack.getValue(),
                        Named.in(teeth, rack.getValue().gear()));
            }
        }
        return outline;
    }

    /** What is left of a part once its holes are bored. */
    private Outline bored(String part, Outline outline, List<Hole> holes) {
        Outline rest = outline;
        for (Hole hole : holes) {
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

    /** Open paths called {@code engrave-PART} or {@code engrave-PART-N}, after the part or the outline that it is drawn as. */
    private static List<List<Point>> engraving(Drawing drawing, String part, @Nullable String drawn, Point shift) {
        List<List<Point>> lines = new ArrayList<>();
        drawing.lines().forEach((id, line) -> {
            if (isEngraved(id, part) || (drawn != null && isEngraved(id, drawn))) {
                lines.add(line.stream().map(p -> p.plus(shift)).toList());
            }
        });
        return List.copyOf(lines);
    }

    private static boolean isEngraved(String id, String on) {
        String name = "engrave-" + on;
        return id.equals(name) || (id.startsWith(name + "-") && isNumber(id.substring(name.length() + 1)));
    }

    private static boolean isNumber(String text) {
        return !text.isEmpty() && text.chars().allMatch(Character::isDigit);
    }
}
