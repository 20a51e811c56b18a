package jackwork.drawing;

import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A drawing of parts and points in real millimetres, each with its id, for Jackwork and any vector editor. */
public final class DrawingSvg {

    /** Attribute of the whole: how much larger than its original it was made. */
    static final String SCALE = "data-scale";

    /** Bare paper around everything, mm. */
    private static final double MARGIN = 10;

    private final StringBuilder out = new StringBuilder();
    private final Bounds page;

    private DrawingSvg(Bounds page) {
        this.page = page;
    }

    /**
     * @param what a line of words for whoever opens the file
     * @param scale how much larger than its original it is
     * @param outlines by id, back to front; mm, y up
     * @param circles by id
     * @param lines by id
     */
    public static String write(
            String what,
            double scale,
            Map<String, Outline> outlines,
            Map<String, Circle> circles,
            Map<String, List<Point>> lines) {
        DrawingSvg writer = new DrawingSvg(page(outlines, circles));
        writer.head(what, scale);
        writer.out.append("  <g id=\"parts\" fill=\"none\" stroke=\"#444\" stroke-width=\"0.3\">\n");
        outlines.forEach(writer::outline);
        writer.out.append("  </g>\n");
        if (!lines.isEmpty()) {
            writer.out.append("  <!-- burnt on the face, not cut -->\n");
            writer.out.append("  <g id=\"engraving\" fill=\"none\" stroke=\"#a66\" stroke-width=\"0.2\">\n");
            lines.forEach((id, line) -> writer.path(id, List.of(line), ""));
            writer.out.append("  </g>\n");
        }
        writer.out.append("  <!-- pivots and points that the files name; the program bores the holes -->\n");
        writer.out.append("  <g id=\"points\" fill=\"none\" stroke=\"#06c\" stroke-width=\"0.2\">\n");
        if (!circles.containsKey(SvgReader.ORIGIN)) {
            writer.circle(SvgReader.ORIGIN, new Circle(Point.ORIGIN, 0.5));
        }
        circles.forEach(writer::circle);
        writer.out.append("  </g>\n</svg>\n");
        return writer.out.toString();
    }

    private static Bounds page(Map<String, Outline> outlines, Map<String, Circle> circles) {
        Bounds all = new Bounds(0, 0, 0, 0);
        for (Outline outline : outlines.values()) {
            all = all.union(outline.bounds());
        }
        for (Circle circle : circles.values()) {
            Point at = circle.centre();
            all = all.union(new Bounds(at.x(), at.y(), at.x(), at.y()));
        }
        return new Bounds(all.minX() - MARGIN, all.minY() - MARGIN, all.maxX() + MARGIN, all.maxY() + MARGIN);
    }

    private void head(String what, double scale) {
        String w = SvgWriter.number(page.width());
        String h = SvgWriter.number(page.height());
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- ")
                .append(what.replace("--", "- -").replaceAll("[<>&\\p{Cntrl}]", " "))
                .append(" -->\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(w)
                .append("mm\" height=\"")
                .append(h)
                .append("mm\" viewBox=\"0 0 ")
                .append(w)
                .append(' ')
                .append(h)
                .append('"');
        if (scale != 1) {
            out.append(' ')
                    .append(SCALE)
                    .append("=\"")
                    .append(new java.math.BigDecimal(scale)
                            .round(new java.math.MathContext(10))
                            .stripTrailingZeros()
                            .toPlainString());
            out.append('"');
        }
        out.append(">\n");
    }

    private void outline(String id, Outline outline) {
        List<List<Point>> rings = new java.util.ArrayList<>();
        rings.add(outline.outer());
        rings.addAll(outline.holes());
        path(id, rings, " Z");
    }

    private void path(String id, List<List<Point>> lines, String end) {
        out.append("    <path id=\"").append(safe(id)).append("\" d=\"");
        String between = "";
        for (List<Point> line : lines) {
            String pen = between + "M";
            for (Point point : line) {
                out.append(pen).append(SvgWriter.number(right(point))).append(',');
                out.append(SvgWriter.number(down(point)));
                pen = " L";
            }
            out.append(end);
            between = " ";
        }
        out.append("\"/>\n");
    }

    private void circle(String id, Circle circle) {
        out.append("    <circle id=\"").append(safe(id)).append("\" cx=\"");
        out.append(SvgWriter.number(right(circle.centre()))).append("\" cy=\"");
        out.append(SvgWriter.number(down(circle.centre()))).append("\" r=\"");
        out.append(SvgWriter.number(circle.radius())).append("\"/>\n");
    }

    private double right(Point point) {
        return point.x() - page.minX();
    }

    private double down(Point point) {
        return page.maxY() - point.y();
    }

    private static String safe(String id) {
        return Optional.of(id)
                .filter(name -> name.matches("[A-Za-z][A-Za-z0-9-]*"))
                .orElseThrow(() -> new IllegalArgumentException("the id reads \"" + id + "\""));
    }
}
