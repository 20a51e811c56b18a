package jackwork.parts;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.SectionProperties;
import jackwork.stock.SheetKind;
import jackwork.stock.Uncertain;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A flat part as it must be once cut, in the common frame, in the position drawn.
 *
 * @param layer counted from the back
 * @param stock the workshop's name for its sheet
 * @param thickness of that sheet, mm
 * @param drawn the outline as drawn, with its cut-outs and slots but without round holes
 * @param holes round holes for rods
 * @param outline the region of wood that is left, holes taken out, rims flattened within 0.002 mm
 * @param section area, centroid and polar second moment of what is left, mm
 * @param engraving lines burnt on its face
 * @param paint {@code #rrggbb}, or null for bare wood
 * @param printed the piece that it is printed with; null when it is cut from a sheet
 */
public record Part(
        String name,
        boolean ofBox,
        int layer,
        String stock,
        SheetKind kind,
        Uncertain thickness,
        Outline drawn,
        List<Hole> holes,
        Outline outline,
        SectionProperties section,
        List<List<Point>> engraving,
        @Nullable String paint,
        @Nullable String printed) {

    /** The same part cut from a sheet of another thickness and density. */
    Part of(Uncertain otherThickness, SheetKind otherKind) {
        return new Part(
                name,
                ofBox,
                layer,
                stock,
                otherKind,
                otherThickness,
                drawn,
                holes,
                outline,
                section,
                engraving,
                paint,
                printed);
    }

    /** g. */
    public double mass() {
        return section.area() * arealDensity();
    }

    /** Mass per area, g/mm². */
    double arealDensity() {
        return thickness.value() * kind.density().value() / 1000;
    }
}
