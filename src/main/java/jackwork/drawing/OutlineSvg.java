package jackwork.drawing;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** One outline as a drawing to go on with: a path in real millimetres that has the part's name. */
public final class OutlineSvg {

    private OutlineSvg() {}

    /**
     * @param name id of the path: a letter, then letters, digits and hyphens
     * @param outline mm from the page's lower left corner, y up
     * @param width of the page, mm
     * @param height of the page, mm
     */
    public static byte[] write(String name, Outline outline, double width, double height) {
        if (!name.matches("[A-Za-z][A-Za-z0-9-]*")) {
            throw new IllegalArgumentException(
                    "the name reads \"" + name + "\", expected a letter, then letters, digits and hyphens");
        }
        String w = SvgWriter.number(width);
        String h = SvgWriter.number(height);
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(w)
                .append("mm\" height=\"");
        out.append(h)
                .append("mm\" viewBox=\"0 0 ")
                .append(w)
                .append(' ')
                .append(h)
                .append("\">\n");
        out.append("<path id=\"").append(name).append("\" fill=\"none\" stroke=\"#444444\" stroke-width=\"0.3\" d=\"");
        ring(outline.outer(), height, out);
        for (List<Point> hole : outline.holes()) {
            out.append(' ');
            ring(hole, height, out);
        }
        out.append("\"/>\n</svg>\n");
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void ring(List<Point> ring, double height, StringBuilder out) {
        String before = "M";
        for (Point point : ring) {
            out.append(before).append(SvgWriter.number(point.x())).append(' ');
            out.append(SvgWriter.number(height - point.y()));
            before = " L";
        }
        out.append(" Z");
    }
}
