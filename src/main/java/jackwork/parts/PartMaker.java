package jackwork.parts;

import jackwork.design.CamEntry;
import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.PartEntry;
import jackwork.design.PawlEntry;
import jackwork.design.RackEntry;
import jackwork.design.Works;
import jackwork.design.WorkshopFile;
import jackwork.drawing.Drawing;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.SectionProperties;
import jackwork.stock.Sheets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes the flat parts of a design: outlines in the common frame, with what {@link Borings} takes out of them. */
final class PartMaker {

    /** Corners of a cam's outline: half a degree each. */
    private static final int CAM_CORNERS = 720;

    private final Design design;
    private final WorkshopFile workshop;
    private final Borings borings;

    /** Outlines made from teeth or motion, by part. */
    private final Map<String, Outline> made = new LinkedHashMap<>();

    private final Map<String, Teeth.Placed> teeth;

    private PartMaker(Design design) {
        this.design = design;
        this.workshop = design.workshop();
        this.borings = Borings.of(design);
        this.teeth = Teeth.of(design);
    }

    /** All parts by name, the box's first. */
    static Map<String, Part> make(Design design) {
        PartMaker maker = new PartMaker(design);
        maker.make(design.box().works());
        maker.make(design.figure().works());
        Map<String, Part> parts = new LinkedHashMap<>();
        maker.cut(design.box().works(), design.boxDrawing(), Point.ORIGIN, parts);
        maker.cut(design.figure().works(), design.figureDrawing(), design.figureShift(), parts);
        return parts;
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
                borings.cut(gear.part(), teethOf, place);
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

    private void cut(Works works, Drawing drawing, Point shift, Map<String, Part> parts) {
        for (Map.Entry<String, PartEntry> entry : works.parts().entrySet()) {
            String name = entry.getKey();
            PartEntry part = entry.getValue();
            String drawn = part.drawn();
            Outline whole = made.containsKey(name)
                    ? Named.in(made, name)
                    : Named.in(drawing.outlines(), drawn == null ? name : drawn).moved(shift);
            Outline outline = slotted(works, name, whole);
            Outline left = borings.left(name, outline);
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
                                borings.holes(name),
                                left,
                                section,
                                // Only the foremost face is seen.
                                ply == 1 ? engraving(drawing, name, part.drawn(), shift) : List.of(),
                                part.paint(),
                                part.printed()));
            }
        }
    }

    /** With its slots, and a rack's teeth. */
    private Outline slotted(Works works, String part, Outline whole) {
        Outline outline = borings.slotted(part, whole);
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
