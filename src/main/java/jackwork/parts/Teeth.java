package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.GearEntry;
import jackwork.design.MeshEntry;
import jackwork.design.Named;
import jackwork.design.RackEntry;
import jackwork.design.Works;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The gears of a design: their teeth sized from the meshes (module = twice the distance over the sum, or
 * difference, of teeth) and turned so that they run in each other as drawn.
 */
final class Teeth {

    private static final double USUAL_PLAY = 0.1;
    /** Modules of two meshes of one gear may differ by this share before they cannot run. */
    private static final double SAME = 1e-3;

    /** @param turned direction of the middle of the first tooth, rad */
    record Placed(GearEntry entry, Point centre, InvoluteGear gear, double turned, double play) {}

    /** Finest teeth, mm of module: as a rack's. */
    private static final double FINEST = 0.3;

    /** Play between teeth, in modules: common practice, no source. */
    private static final double MOST_PLAY = 0.25;

    private final Map<String, GearEntry> entries = new LinkedHashMap<>();
    private final Map<String, Point> centres = new LinkedHashMap<>();
    private final Map<String, Placed> placed = new LinkedHashMap<>();

    private Teeth() {}

    /** Every gear by name. */
    static Map<String, Placed> of(Design design) {
        Teeth teeth = new Teeth();
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            works.gears().forEach((name, gear) -> {
                teeth.entries.put(name, gear);
                teeth.centres.put(name, Places.at(design, works, gear.at(), name));
            });
        }
        List<Asked> meshes = new ArrayList<>();
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            works.joints(MeshEntry.class)
                    .forEach((name, mesh) -> meshes.add(new Asked(design.fileOf(works) + ": meshes." + name, mesh)));
        }
        // Meshes with a gear that is placed already come first, so that trains turn together.
        while (!meshes.isEmpty()) {
            Asked next = meshes.stream()
                    .filter(asked -> asked.mesh().between().stream().anyMatch(teeth.placed::containsKey))
                    .findFirst()
                    .orElse(meshes.get(0));
            meshes.remove(next);
            teeth.place(next.place(), next.mesh());
        }
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            works.joints(RackEntry.class)
                    .forEach((name, rack) -> teeth.place(design.fileOf(works) + ": racks." + name, rack));
        }
        return teeth.placed;
    }

    /** @param place where it stands, as {@code figure.yaml: meshes.drive} */
    private record Asked(String place, MeshEntry mesh) {}

    private void place(String place, MeshEntry mesh) {
        boolean known = placed.containsKey(mesh.between().get(1))
                && !placed.containsKey(mesh.between().get(0));
        String first = mesh.between().get(known ? 1 : 0);
        String second = mesh.between().get(known ? 0 : 1);
        GearEntry a = Named.in(entries, first);
        GearEntry b = Named.in(entries, second);
        Point centreA = Named.in(centres, first);
        Point centreB = Named.in(centres, second);
        int sum = isInside(a) ? a.teeth() - b.teeth() : isInside(b) ? b.teeth() - a.teeth() : a.teeth() + b.teeth();
        if (sum <= 0) {
            throw new PartException(
                    place + ".between",
                    "gears " + first + " and " + second
                            + ": a ring needs more teeth than the gear that runs inside it");
        }
        double module = 2 * centreA.distance(centreB) / sum;
        Double angle = mesh.pressureAngle();
        Double written = mesh.play();
        double pressure = Math.toRadians(angle == null ? MeshEntry.USUAL_ANGLE : angle);
        double play = written == null ? USUAL_PLAY : written;
        requireApart(place, first, second, centreA.distance(centreB), module);
        requirePlay(place, first, second, play, module);
        Point line = centreB.minus(centreA);
        double direction = Math.atan2(line.y(), line.x());
        if (!placed.containsKey(first)) {
            placed.put(first, made(a, centreA, module, pressure, direction, play));
        }
        Placed before = Named.in(placed, first);
        if (Math.abs(before.gear().module() / module - 1) > SAME) {
            throw new PartException(
                    place + ".between",
                    String.format(
                            Locale.ROOT,
                            "gears %s and %s: their distance asks for teeth of module %.3f mm, another mesh for %.3f mm;"
                                    + " move a centre or change a number of teeth",
                            first,
                            second,
                            module,
                            before.gear().module()));
        }
        requireOne(place, first, second, before, pressure);
        double ratio = (double) a.teeth() / b.teeth();
        double turned;
        if (isInside(a) || isInside(b)) {
            // Both teeth and gaps stand on the same side of both centres.
            double touch = isInside(b) ? direction + Math.PI : direction;
            turned = touch + (before.turned() - touch) * ratio;
        } else {
            turned = direction + Math.PI + Math.PI / b.teeth() - (before.turned() - direction) * ratio;
        }
        Placed mate = placed.putIfAbsent(second, made(b, centreB, module, pressure, turned, play));
        if (mate != null) {
            requireOne(place, first, second, mate, pressure);
        }
    }

    /** Finer teeth than a laser leaves are no teeth: their centres are what is wrong, not the play that is left. */
    private static void requireApart(String place, String first, String second, double apart, double module) {
        if (!(module >= FINEST)) {
            throw new PartException(
                    place + ".between",
                    String.format(
                            Locale.ROOT,
                            "gears %s and %s: their centres are %.2f mm apart, which asks for teeth of module %.3f mm; expected"
                                    + " %.1f mm or more, since finer teeth burn away: move one of the centres, or take other"
                                    + " numbers of teeth",
                            first,
                            second,
                            apart,
                            module,
                            FINEST));
        }
    }

    private static void requireOne(String place, String first, String second, Placed before, double pressure) {
        if (Math.abs(before.gear().pressureAngle() - pressure) > SAME) {
            throw new PartException(
                    place + ".pressure-angle",
                    String.format(
                            Locale.ROOT,
                            "%s and %s: teeth of %.1f° do not run in teeth of %.1f°; write one pressure-angle for all that run"
                                    + " together",
                            first,
                            second,
                            Math.toDegrees(pressure),
                            Math.toDegrees(before.gear().pressureAngle())));
        }
    }

    private static void requirePlay(String place, String first, String second, double play, double module) {
        if (!(play >= 0 && play <= MOST_PLAY * module)) {
            throw new PartException(
                    place + ".play",
                    String.format(
                            java.util.Locale.ROOT,
                            "gears %s and %s: a play of %.2f mm between teeth of module %.2f mm; expected 0 to a quarter of the"
                                    + " module, %.2f mm: less than none jams, more leaves no teeth",
                            first,
                            second,
                            play,
                            module,
                            MOST_PLAY * module));
        }
    }

    private void place(String place, RackEntry rack) {
        Double angle = rack.pressureAngle();
        GearEntry gear = Named.in(entries, rack.gear());
        Placed before = placed.get(rack.gear());
        if (before != null) {
            requireOne(
                    place,
                    rack.part(),
                    rack.gear(),
                    before,
                    Math.toRadians(angle == null ? MeshEntry.USUAL_ANGLE : angle));
            if (Math.abs(before.gear().module() / rack.module() - 1) > SAME) {
                throw new PartException(
                        place + ".module",
                        String.format(
                                Locale.ROOT,
                                "rack %s: read a module of %.3f mm, but %s has teeth of %.3f mm from another mesh; write that"
                                        + " module, or move the mesh's centres",
                                rack.part(),
                                rack.module(),
                                rack.gear(),
                                before.gear().module()));
            }
        }
        placed.putIfAbsent(
                rack.gear(),
                made(
                        gear,
                        Named.in(centres, rack.gear()),
                        rack.module(),
                        Math.toRadians(angle == null ? MeshEntry.USUAL_ANGLE : angle),
                        Math.toRadians(rack.toward()),
                        USUAL_PLAY));
    }

    private static Placed made(
            GearEntry entry, Point centre, double module, double pressure, double turned, double play) {
        InvoluteGear gear = isInside(entry)
                ? InvoluteGear.hole(entry.teeth(), module, pressure)
                : InvoluteGear.standard(entry.teeth(), module, pressure);
        return new Placed(entry, centre, gear, turned, play);
    }

    static boolean isInside(GearEntry gear) {
        return Boolean.TRUE.equals(gear.inside());
    }

    /** The teeth to cut: a gear's whole outline, or the hole of a ring. */
    static Outline outline(String place, Placed gear) {
        // A ring's gaps are widened by the play, a gear's teeth thinned.
        InvoluteGear made = gear.gear();
        double thinned = isInside(gear.entry()) ? -gear.play() : gear.play();
        return PartException.unless(
                place,
                gear.entry().part(),
                String.format(
                        Locale.ROOT,
                        "%d teeth of module %.3f mm and a play of %s mm between them",
                        made.teeth(),
                        made.module(),
                        gear.play()),
                () -> made.outline(gear.centre(), gear.turned(), thinned));
    }

    /** A rack's bar with the gaps between its teeth cut away. */
    static Outline rack(String place, Outline bar, RackEntry rack, Placed gear) {
        InvoluteGear teeth = gear.gear();
        double toward = Math.toRadians(rack.toward());
        double m = teeth.module();
        double slope = Math.tan(teeth.pressureAngle());
        double pitch = Math.PI * m;
        // A gap faces the tooth that stands nearest to the bar.
        double tooth = Math.IEEEremainder(gear.turned() - toward, 2 * Math.PI / teeth.teeth());
        double offset = teeth.pitchRadius() * tooth;
        Outline cut = bar;
        for (int k = -rack.teeth(); k <= rack.teeth(); k++) {
            double along = offset + k * pitch;
            List<Point> gap = new ArrayList<>();
            for (double[] corner : new double[][] {
                {-2 * m, -1}, {1.25 * m, -1}, {1.25 * m, 1}, {-2 * m, 1},
            }) {
                double half = pitch / 4 - slope * corner[0] + gear.play() / 2;
                Point local = new Point(teeth.pitchRadius() + corner[0], along + corner[1] * half);
                gap.add(gear.centre().plus(local.turned(toward)));
            }
            Outline bare = cut;
            cut = PartException.unless(
                    place,
                    rack.part(),
                    String.format(Locale.ROOT, "%d teeth of module %.3f mm", rack.teeth(), m),
                    () -> bare.without(Outline.of(gap)));
        }
        return cut;
    }
}
