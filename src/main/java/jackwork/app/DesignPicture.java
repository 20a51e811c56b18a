package jackwork.app;

import jackwork.design.Design;
import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import jackwork.parts.Assembler;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** A design as a small picture to choose it by: its parts at rest, back to front, in their colours. */
final class DesignPicture {

    private static final String WOOD = "#e3c690";
    private static final double MARGIN = 3;
    /** Corners nearer than this to a straight line are left out, mm. */
    private static final double COARSE = 0.3;

    private DesignPicture() {}

    static String svg(Design design) {
        List<Part> parts = new ArrayList<>(Assembler.assemble(design).parts());
        parts.sort(Comparator.comparingInt(Part::layer));
        int front =
                parts.stream().filter(Part::ofBox).mapToInt(Part::layer).max().orElse(0);
        Bounds all = parts.stream()
                .map(part -> part.drawn().bounds())
                .reduce(Bounds::union)
                .orElseThrow();
        StringBuilder out = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"%.1f %.1f %.1f %.1f\">",
                all.minX() - MARGIN,
                -all.maxY() - MARGIN,
                all.width() + 2 * MARGIN,
                all.height() + 2 * MARGIN));
        out.append("<g transform=\"scale(1 -1)\" stroke=\"#6d5433\" stroke-width=\".7\" stroke-linejoin=\"round\"")
                .append(" fill-rule=\"evenodd\">");
        for (Part part : parts) {
            boolean lid = part.ofBox() && part.layer() == front;
            String paint = Objects.requireNonNullElse(part.paint(), WOOD);
            out.append("<path fill=\"").append(lid ? "none" : paint).append("\" d=\"");
            ring(part.outline().outerWithin(COARSE), out);
            part.outline().simplified(COARSE).holes().forEach(hole -> ring(hole, out));
            out.append("\"/>");
        }
        return out.append("</g></svg>").toString();
    }

    private static void ring(List<Point> ring, StringBuilder out) {
        String pen = "M";
        for (Point point : ring) {
            out.append(String.format(Locale.ROOT, "%s%.2f %.2f", pen, point.x(), point.y()));
            pen = "L";
        }
        out.append('Z');
    }
}
