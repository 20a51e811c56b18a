package jackwork.make;

import jackwork.design.CsvCell;
import jackwork.design.Named;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Bounds;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Hole;
import jackwork.parts.Lump;
import jackwork.parts.Part;
import jackwork.stock.Sheets;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;

/** The parts list, CSV after RFC 4180. */
final class PartsList {

    private PartsList() {}

    static String csv(Assembly assembly, List<SheetLayout> layouts) {
        List<Body> bodies = assembly.bodies();
        StringBuilder csv = new StringBuilder("piece,part of,belongs to,layer,stock,thickness mm,sheet,"
                + "width mm,height mm,cut length mm,holes,mass g\r\n");
        for (SheetLayout layout : layouts) {
            for (Placement placement : layout.placements()) {
                double density = density(assembly.workshop(), layout.stock());
                csv.append(row(bodies, layout, placement, density)).append("\r\n");
            }
        }
        for (Body body : bodies) {
            for (Lump lump : body.lumps()) {
                StringJoiner row = new StringJoiner(",");
                row.add(CsvCell.written(lump.name()))
                        .add(CsvCell.written(body.name()))
                        .add("")
                        .add("")
                        .add(CsvCell.written(lump.kind()));
                row.add("").add("").add("").add("").add("").add("").add(number(lump.mass(), 2));
                csv.append(row).append("\r\n");
            }
        }
        return csv.toString();
    }

    private static StringJoiner row(List<Body> bodies, SheetLayout layout, Placement placement, double density) {
        FlatPiece piece = placement.piece();
        Bounds bounds = piece.drawn().bounds();
        Part part = part(bodies, piece.name());
        String body = part == null
                ? "case"
                : bodies.stream()
                        .filter(b -> b.parts().contains(part))
                        .map(Body::name)
                        .findFirst()
                        .orElseThrow();
        double length = piece.drawn().cutLength();
        double area = piece.drawn().area();
        for (Hole hole : piece.holes()) {
            double radius = hole.circle().radius();
            length += 2 * Math.PI * radius;
            area -= Math.PI * radius * radius;
        }
        double mass = area * piece.thickness() * density / 1000;
        return new StringJoiner(",")
                .add(CsvCell.written(placement.name()))
                .add(CsvCell.written(body))
                .add(part == null || part.ofBox() ? "box" : "figure")
                .add(part == null ? "" : Integer.toString(part.layer()))
                .add(CsvCell.written(piece.stock()))
                .add(number(piece.thickness(), 2))
                .add(layout.name())
                .add(number(bounds.width(), 1))
                .add(number(bounds.height(), 1))
                .add(number(length, 0))
                .add(CsvCell.written(holes(piece)))
                .add(number(mass, 2));
    }

    /** g/cm³. */
    static double density(WorkshopFile workshop, String stock) {
        return Sheets.catalogue()
                .find(Named.in(workshop.sheets(), stock).kind())
                .orElseThrow()
                .density()
                .value();
    }

    private static @Nullable Part part(List<Body> bodies, String name) {
        return bodies.stream()
                .flatMap(body -> body.parts().stream())
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static String holes(FlatPiece part) {
        StringJoiner holes = new StringJoiner("; ");
        for (Hole hole : part.holes()) {
            holes.add(hole.joint() + " ⌀" + number(hole.circle().diameter(), 2));
        }
        return holes.toString();
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
