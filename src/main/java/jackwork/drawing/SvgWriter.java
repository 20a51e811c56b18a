package jackwork.drawing;

import jackwork.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** A sheet as SVG in real millimetres: one user unit is one mm. The same sheet gives the same bytes. */
public final class SvgWriter {

    private final CutSheet sheet;
    private final StringBuilder out = new StringBuilder();

    private SvgWriter(CutSheet sheet) {
        this.sheet = sheet;
    }

    public static byte[] write(CutSheet sheet) {
        return write(sheet, Pens.standard());
    }

    public static byte[] write(CutSheet sheet, Pens pens) {
        SvgWriter writer = new SvgWriter(sheet);
        writer.page(pens);
        return writer.out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void page(Pens pens) {
        String width = number(sheet.width());
        String height = number(sheet.height());
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(width)
                .append("mm\" height=\"")
                .append(height)
                .append("mm\" viewBox=\"0 0 ")
                .append(width)
                .append(' ')
                .append(height)
                .append("\">\n<title>")
                .append(escaped(sheet.title()))
                .append("</title>\n");
        for (CutKind kind : CutKind.values()) {
            group(kind, pens.of(kind));
        }
        out.append("</svg>\n");
    }

    private void group(CutKind kind, Pens.Pen pen) {
        String colour = String.format(Locale.ROOT, "#%06x", pen.colour());
        out.append("<g id=\"")
                .append(kind.group())
                .append("\" fill=\"none\" stroke=\"")
                .append(colour)
                .append("\" stroke-width=\"")
                .append(number(pen.width()))
                .append("\">\n");
        sheet.paths(kind).forEach(this::path);
        sheet.labels(kind).forEach(label -> label(label, colour));
        out.append("</g>\n");
    }

    private void path(CutPath path) {
        String id = path.id().isEmpty() ? "" : " id=\"" + escaped(path.id()) + "\"";
        if (path.shape() instanceof CutShape.Round round) {
            Point centre = round.circle().centre();
            out.append("<circle")
                    .append(id)
                    .append(" cx=\"")
                    .append(number(centre.x()))
                    .append("\" cy=\"")
                    .append(number(down(centre)))
                    .append("\" r=\"")
                    .append(number(round.circle().radius()))
                    .append("\"/>\n");
        } else {
            out.append("<path").append(id).append(" d=\"");
            if (path.shape() instanceof CutShape.Ring ring) {
                points(ring.points());
                out.append(" Z");
            } else if (path.shape() instanceof CutShape.Line line) {
                points(line.points());
            }
            out.append("\"/>\n");
        }
    }

    private void points(List<Point> points) {
        String before = "M";
        for (Point point : points) {
            out.append(before).append(number(point.x())).append(' ').append(number(down(point)));
            before = " L";
        }
    }

    private void label(Label label, String colour) {
        out.append("<text x=\"")
                .append(number(label.at().x()))
                .append("\" y=\"")
                .append(number(down(label.at())))
                .append("\" font-family=\"Helvetica, Arial, sans-serif\" font-size=\"")
                .append(number(label.helveticaSize()))
                .append("\" fill=\"")
                .append(colour)
                .append("\" stroke=\"none\">")
                .append(escaped(label.text()))
                .append("</text>\n");
    }

    private double down(Point point) {
        return sheet.height() - point.y();
    }

    /** At most four decimals (0.1 µm), no exponent, no minus zero. */
    static String number(double value) {
        if (!(Math.abs(value) <= 2 * Trace.FARTHEST)) {
            throw new IllegalArgumentException("coordinate " + value + " mm is not on any sheet");
        }
        long scaled = Math.round(Math.abs(value) * 10_000);
        String sign = value < 0 && scaled != 0 ? "-" : "";
        long fraction = scaled % 10_000;
        if (fraction == 0) {
            return sign + scaled / 10_000;
        }
        // Four digits, zeros in front and all.
        String decimals = Long.toString(10_000 + fraction).substring(1);
        int end = decimals.length();
        while (decimals.charAt(end - 1) == '0') {
            end--;
        }
        return sign + scaled / 10_000 + "." + decimals.substring(0, end);
    }

    /** Safe as text and as an attribute; what XML cannot hold becomes the replacement character. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\t', '\n', '\r' -> safe.append("&#").append(c).append(';');
                default -> safe.appendCodePoint(allowed(c) ? c : 0xfffd);
            }
        });
        return safe.toString();
    }

    /** XML 1.0, production 2 (Char). */
    private static boolean allowed(int c) {
        return (c >= 0x20 && c <= 0xd7ff) || (c >= 0xe000 && c <= 0xfffd) || c >= 0x10000;
    }
}
