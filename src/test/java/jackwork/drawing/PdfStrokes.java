package jackwork.drawing;

import jackwork.geometry.Point;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDPage;

/** What a page's content strokes, read back from its operators: page mm, y up. */
final class PdfStrokes {

    /** One stroked path: its end points, the points half way along its curves, and all of both. */
    record Stroke(List<Point> points, List<Point> onCurves, boolean closed) {}

    private PdfStrokes() {}

    static List<Stroke> of(PDPage page) throws IOException {
        List<Stroke> strokes = new ArrayList<>();
        List<Point> points = new ArrayList<>();
        List<Point> onCurves = new ArrayList<>();
        boolean closed = false;
        List<Double> numbers = new ArrayList<>();
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSNumber number) {
                numbers.add((double) number.floatValue());
            } else if (token instanceof Operator operator) {
                switch (operator.getName()) {
                    case "m", "l" -> points.add(point(numbers, 0));
                    case "c" -> {
                        curve(points.get(points.size() - 1), numbers, onCurves);
                        points.add(point(numbers, 4));
                    }
                    case "h" -> closed = true;
                    case "S" -> {
                        strokes.add(new Stroke(List.copyOf(points), List.copyOf(onCurves), closed));
                        points.clear();
                        onCurves.clear();
                        closed = false;
                    }
                    case "cm", "re", "v", "y", "s", "b", "B" ->
                        throw new IOException("this reader expects no operator " + operator.getName());
                    default -> {
                        // Colours, widths and text stroke nothing.
                    }
                }
                numbers.clear();
            }
        }
        return strokes;
    }

    private static void curve(Point from, List<Double> numbers, List<Point> onCurves) {
        for (int i = 1; i < 100; i++) {
            double t = i / 100.0;
            double s = 1 - t;
            onCurves.add(from.times(s * s * s)
                    .plus(point(numbers, 0).times(3 * s * s * t))
                    .plus(point(numbers, 2).times(3 * s * t * t))
                    .plus(point(numbers, 4).times(t * t * t)));
        }
    }

    private static Point point(List<Double> numbers, int at) {
        return new Point(numbers.get(at), numbers.get(at + 1)).times(25.4 / 72);
    }
}
