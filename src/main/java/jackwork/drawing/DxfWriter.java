package jackwork.drawing;

import jackwork.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/**
 * A sheet as DXF of release 12, the oldest that everything reads: entities alone, one drawing unit is one mm, y upward,
 * layers named by what they do. The same sheet gives the same bytes.
 */
public final class DxfWriter {

    private final StringBuilder out = new StringBuilder();

    private DxfWriter() {}

    public static byte[] write(CutSheet sheet) {
        DxfWriter writer = new DxfWriter();
        writer.pair(0, "SECTION");
        writer.pair(2, "ENTITIES");
        for (CutKind kind : CutKind.values()) {
            sheet.paths(kind).forEach(path -> writer.path(kind.group(), path.shape()));
            sheet.labels(kind).forEach(label -> writer.label(kind.group(), label));
        }
        writer.pair(0, "ENDSEC");
        writer.pair(0, "EOF");
        return writer.out.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private void path(String layer, CutShape shape) {
        if (shape instanceof CutShape.Round round) {
            pair(0, "CIRCLE");
            pair(8, layer);
            point(round.circle().centre());
            pair(40, number(round.circle().radius()));
        } else if (shape instanceof CutShape.Ring ring) {
            polyline(layer, ring.points(), true);
        } else if (shape instanceof CutShape.Line line) {
            polyline(layer, line.points(), false);
        }
    }

    private void polyline(String layer, List<Point> points, boolean closed) {
        pair(0, "POLYLINE");
        pair(8, layer);
        // Vertices follow; the point is a dummy whose height is that of all.
        pair(66, "1");
        point(Point.ORIGIN);
        pair(70, closed ? "1" : "0");
        for (Point vertex : points) {
            pair(0, "VERTEX");
            pair(8, layer);
            point(vertex);
        }
        pair(0, "SEQEND");
        pair(8, layer);
    }

    private void label(String layer, Label label) {
        pair(0, "TEXT");
        pair(8, layer);
        point(label.at());
        pair(40, number(label.height()));
        pair(1, plain(label.text()));
    }

    private void point(Point point) {
        pair(10, number(point.x()));
        pair(20, number(point.y()));
        pair(30, "0");
    }

    private void pair(int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d", code))
                .append("\r\n")
                .append(value)
                .append("\r\n");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }

    /** Release 12 holds ASCII on one line; what it cannot hold becomes a question mark. */
    private static String plain(String text) {
        return text.replaceAll("[^ -~]", "?");
    }
}
