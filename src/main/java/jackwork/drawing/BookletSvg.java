package jackwork.drawing;

import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import java.util.List;
import java.util.Locale;

/** A booklet's picture as SVG, for the screen: the same shapes, as large as there is room. */
public final class BookletSvg {

    private static final double EDGE = 3;
    /** Height of its words over the picture's longer side. */
    private static final double WORDS = 0.045;

    private BookletSvg() {}

    public static String write(BookletWriter.Picture picture) {
        Bounds all = BookletWriter.bounds(picture);
        double size = WORDS * Math.max(all.width(), all.height());
        StringBuilder out = new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"%.2f %.2f %.2f %.2f\" stroke-linejoin=\"round\">%n",
                all.minX() - EDGE,
                -all.maxY() - EDGE,
                all.width() + 2 * EDGE,
                all.height() + 2 * EDGE));
        for (BookletWriter.Shape shape : picture.shapes()) {
            out.append("<path fill-rule=\"evenodd\" fill=\"")
                    .append(String.format(Locale.ROOT, "#%06x", shape.fill()))
                    .append(shape.faint() ? "\" stroke=\"#8a8f94\"" : "\" stroke=\"#3b3b3b\"")
                    .append(" stroke-width=\"0.3\" d=\"");
            shape.rings().forEach(ring -> ring(out, ring));
            out.append("\"/>\n");
        }
        for (BookletWriter.Note note : picture.notes()) {
            out.append(String.format(
                            Locale.ROOT,
                            "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" text-anchor=\"middle\" fill=\"#222\""
                                    + " font-family=\"Helvetica, Arial, sans-serif\" stroke=\"#fff\" stroke-width=\"%.2f\""
                                    + " paint-order=\"stroke\">",
                            note.at().x(),
                            size / 3 - note.at().y(),
                            size,
                            size / 5))
                    .append(SvgWriter.escaped(note.text()))
                    .append("</text>\n");
        }
        return out.append("</svg>\n").toString();
    }

    private static void ring(StringBuilder out, List<Point> ring) {
        String before = "M";
        for (Point point : ring) {
            out.append(before).append(hundredths(point.x())).append(' ').append(hundredths(-point.y()));
            before = "L";
        }
        out.append('Z');
    }

    private static String hundredths(double mm) {
        return SvgWriter.number(Math.rint(100 * mm) / 100);
    }
}
