package jackwork.app.core;

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
public final class DesignPicture {

    private static final String WOOD = "#e3c690";
    private static final double MARGIN = 3;
    /** Corners nearer than this to a straight line are left out, mm. */
    private static final double COARSE = 0.3;

    private DesignPicture() {}

    public static String svg(Design design) {
        List<Part> parts = Assembler.assemble(design).parts();
        return frame(bounds(parts)) + inside(parts) + "</svg>";
    }

    /** Of all the parts; there is at least one. */
    public static Bounds bounds(List<Part> parts) {
        return parts.stream()
                .map(part -> part.drawn().bounds())
                .reduce(Bounds::union)
                .orElseThrow();
    }

    /** The picture's beginning: so much of the plane, y up. */
    public static String frame(Bounds shown) {
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"%.1f %.1f %.1f %.1f\">",
                shown.minX() - MARGIN,
                -shown.maxY() - MARGIN,
                shown.width() + 2 * MARGIN,
                shown.height() + 2 * MARGIN);
    }

    /** The parts, back to front. */
    public static String inside(List<Part> all) {
        List<Part> parts = new ArrayList<>(all);
        parts.sort(Comparator.comparingInt(Part::layer));
        int front =
                parts.stream().filter(Part::ofBox).mapToInt(Part::layer).max().orElse(0);
        StringBuilder out = new StringBuilder(
                "<g transform=\"scale(1 -1)\" stroke=\"#6d5433\" stroke-width=\".7\" stroke-linejoin=\"round\""
                        + " fill-rule=\"evenodd\">");
        for (Part part : parts) {
            boolean lid = part.ofBox() && part.layer() == front;
            String paint = Objects.requireNonNullElse(part.paint(), WOOD);
            out.append("<path fill=\"")
                    .append(lid ? "none" : paint)
                    .append("\" d=\"")
                    .append(path(part))
                    .append("\"/>");
        }
        return out.append("</g>").toString();
    }

    /** What is left of a part, as a path with y up. */
    public static String path(Part part) {
        StringBuilder out = new StringBuilder();
        ring(part.outline().outerWithin(COARSE), out);
        part.outline().simplified(COARSE).holes().forEach(hole -> ring(hole, out));
        return out.toString();
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
