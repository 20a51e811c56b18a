package jackwork.make;

import jackwork.design.CsvCell;
import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.StringEntry;
import jackwork.design.Works;
import jackwork.geometry.Circle;
import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Mesh;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Solid;
import jackwork.geometry.SolidMesh;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import jackwork.parts.PinJoint;
import jackwork.parts.Sleeve;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A printed part.
 *
 * @param each how many one figure with its box needs
 * @param what for people
 */
public record PrintedPiece(String name, int each, String what, Solid solid, Mesh mesh) {

    /** Sides of round printed parts stay so near to the circle, mm: finer than any printer's step. */
    private static final double ROUND = 0.005;
    /** An eyelet's rim: beyond the hole on either side, and how thick, mm. */
    private static final double RIM = 1.2;

    private static final double RIM_THICK = 0.6;

    /** All that a design has printed: bodies, shoulders, eyelets, the spacers of its case. */
    static List<PrintedPiece> of(Design design, Assembly assembly, @Nullable Case housing) {
        List<PrintedPiece> pieces = new ArrayList<>();
        bodies(assembly, pieces);
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            works.pins().forEach((name, pin) -> {
                if (pin.shoulder() != null) {
                    double bore = Named.in(design.workshop().rods(), pin.rod())
                            .diameter()
                            .value();
                    for (PinJoint joint : assembly.pins()) {
                        if (joint.name().equals(name) || joint.name().startsWith(name + "/")) {
                            Sleeve sleeve = new Sleeve(
                                    2 * joint.radius(),
                                    bore,
                                    assembly.bearing(joint).length() + Sleeve.PLAY);
                            String called = "shoulder-" + joint.name().replace('/', '-');
                            pieces.add(piece(called, 1, "pressed on the rod of " + name, solid(sleeve)));
                        }
                    }
                }
            });
            works.joints(StringEntry.class).forEach((name, string) -> eyelets(design, assembly, name, string, pieces));
        }
        if (housing != null && !housing.spacers().isEmpty()) {
            pieces.add(piece(
                    "spacer",
                    housing.spacers().size(),
                    "between the plates of the works, a screw through each",
                    solid(housing.spacer())));
        }
        return pieces;
    }

    private static PrintedPiece piece(String name, int each, String what, Solid solid) {
        try {
            return new PrintedPiece(name, each, what, solid, SolidMesh.of(solid).atOrigin());
        } catch (InvalidOutlineException e) {
            throw new PrintException(name, what, e);
        }
    }

    /** Parts of one body that name one piece, layer upon layer without a gap, as glue would hold them. */
    private static void bodies(Assembly assembly, List<PrintedPiece> pieces) {
        Map<String, List<Part>> groups = new LinkedHashMap<>();
        for (Part part : assembly.parts()) {
            String printed = part.printed();
            if (printed != null) {
                groups.computeIfAbsent(printed, name -> new ArrayList<>()).add(part);
            }
        }
        groups.forEach((name, parts) -> {
            String members = String.join(", ", parts.stream().map(Part::name).toList());
            pieces.add(piece(name, 1, "in place of " + members, stacked(parts)));
        });
    }

    static Solid stacked(List<Part> parts) {
        TreeMap<Integer, Double> thick = new TreeMap<>();
        parts.forEach(part -> thick.merge(part.layer(), part.thickness().value(), Math::max));
        Map<Integer, Double> base = new LinkedHashMap<>();
        double z = 0;
        for (Map.Entry<Integer, Double> layer : thick.entrySet()) {
            base.put(layer.getKey(), z);
            z += layer.getValue();
        }
        List<Solid.Slab> slabs = new ArrayList<>();
        for (Part part : parts) {
            double from = base.getOrDefault(part.layer(), 0.0);
            slabs.add(
                    new Solid.Slab(part.outline(), from, from + part.thickness().value()));
        }
        return new Solid(slabs);
    }

    private static Solid solid(Sleeve sleeve) {
        return new Solid(List.of(new Solid.Slab(ring(sleeve.outside(), sleeve.bore()), 0, sleeve.length())));
    }

    private static Outline ring(double outside, double bore) {
        return Outline.disc(new Circle(Point.ORIGIN, outside / 2), ROUND)
                .without(new Circle(Point.ORIGIN, bore / 2), ROUND);
    }

    private static void eyelets(
            Design design, Assembly assembly, String name, StringEntry string, List<PrintedPiece> pieces) {
        int number = 0;
        for (StringEntry.GuideEntry guide : string.over()) {
            Double outside = guide.eyelet();
            if (outside != null) {
                number++;
                double bore = Math.max(
                        0.5 * outside,
                        Named.in(design.workshop().cords(), string.cord())
                                        .diameter()
                                        .value()
                                + 0.6);
                double thick = assembly.parts().stream()
                        .filter(part -> part.name().equals(guide.part()))
                        .mapToDouble(part -> part.thickness().value())
                        .max()
                        .orElse(3);
                Solid solid = new Solid(List.of(
                        new Solid.Slab(ring(outside + 2 * RIM, bore), 0, RIM_THICK),
                        new Solid.Slab(ring(outside, bore), RIM_THICK, RIM_THICK + thick)));
                pieces.add(piece(
                        "eyelet-" + name + "-" + number, 1, "pressed into " + guide.part() + " for " + name, solid));
            }
        }
    }

    /** The list, CSV after RFC 4180. */
    static String csv(List<PrintedPiece> pieces, double density, int quantity) {
        StringBuilder csv = new StringBuilder("piece,how many,what,width mm,depth mm,height mm,volume mm³,mass g\r\n");
        for (PrintedPiece piece : pieces) {
            double[] size = piece.size();
            csv.append(String.format(
                    Locale.ROOT,
                    "%s,%d,%s,%.1f,%.1f,%.1f,%.0f,%.2f\r\n",
                    CsvCell.written(piece.name()),
                    piece.each() * quantity,
                    CsvCell.written(piece.what()),
                    size[0],
                    size[1],
                    size[2],
                    piece.mesh().volume(),
                    piece.grams(density)));
        }
        return csv.toString();
    }

    /**
     * Printed solid.
     *
     * @param density g/cm³
     */
    public double grams(double density) {
        return mesh.volume() * density / 1000;
    }

    /** Width, depth and height, mm; the mesh stands at the origin. */
    public double[] size() {
        double[] most = new double[3];
        for (int i = 0; i < mesh.vertices().length; i++) {
            most[i % 3] = Math.max(most[i % 3], mesh.vertices()[i]);
        }
        return most;
    }
}
