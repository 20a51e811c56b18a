package jackwork.make;

import jackwork.geometry.Bounds;
import jackwork.parts.Body;
import jackwork.parts.Hole;
import jackwork.parts.Lump;
import jackwork.parts.Part;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/** The parts list, CSV after RFC 4180. */
final class PartsList {

    private PartsList() {}

    static String csv(List<Body> bodies, List<SheetLayout> layouts) {
        StringBuilder csv = new StringBuilder("piece,part of,belongs to,layer,stock,thickness mm,sheet,"
                + "width mm,height mm,cut length mm,holes,mass g\r\n");
        for (SheetLayout layout : layouts) {
            for (Placement placement : layout.placements()) {
                csv.append(row(bodies, layout, placement)).append("\r\n");
            }
        }
        for (Body body : bodies) {
            for (Lump lump : body.lumps()) {
                StringJoiner row = new StringJoiner(",");
                row.add(quoted(lump.name()))
                        .add(quoted(body.name()))
                        .add("")
                        .add("")
                        .add(quoted(lump.kind()));
                row.add("").add("").add("").add("").add("").add("").add(number(lump.mass(), 2));
                csv.append(row).append("\r\n");
            }
        }
        return csv.toString();
    }

    private static StringJoiner row(List<Body> bodies, SheetLayout layout, Placement placement) {
        Part part = placement.part();
        Bounds bounds = part.drawn().bounds();
        String body = bodies.stream()
                .filter(b -> b.parts().contains(part))
                .map(Body::name)
                .findFirst()
                .orElse("");
        double length = part.outline().cutLength();
        double mass = part.section().area()
                * part.thickness().value()
                * part.kind().density().value()
                / 1000;
        return new StringJoiner(",")
                .add(quoted(placement.name()))
                .add(quoted(body))
                .add(part.ofBox() ? "box" : "figure")
                .add(Integer.toString(part.layer()))
                .add(quoted(part.stock()))
                .add(number(part.thickness().value(), 2))
                .add(layout.name())
                .add(number(bounds.width(), 1))
                .add(number(bounds.height(), 1))
                .add(number(length, 0))
                .add(quoted(holes(part)))
                .add(number(mass, 2));
    }

    private static String holes(Part part) {
        StringJoiner holes = new StringJoiner("; ");
        for (Hole hole : part.holes()) {
            holes.add(hole.joint() + " ⌀" + number(hole.circle().diameter(), 2));
        }
        return holes.toString();
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private static String quoted(String text) {
        return text.matches("[A-Za-z0-9 ./⌀-]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
