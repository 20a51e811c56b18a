package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** A PDF page drawn on in mm, y up from {@code origin}. */
final class PdfCanvas implements AutoCloseable {

    /** User space is 1/72 inch (ISO 32000-1, 8.3.2.3). */
    static final double POINTS_PER_MM = 72 / 25.4;

    private final PDPageContentStream stream;
    private final PdfText text;
    private Point origin = Point.ORIGIN;

    PdfCanvas(PDDocument document, PdfText text, double width, double height) throws IOException {
        this.text = text;
        PDPage page = new PDPage(new PDRectangle((float) (width * POINTS_PER_MM), (float) (height * POINTS_PER_MM)));
        document.addPage(page);
        stream = new PDPageContentStream(document, page);
        stream.setLineCapStyle(1);
        stream.setLineJoinStyle(1);
    }

    /** Coordinates given from now on are from here, page mm. */
    void origin(Point at) {
        origin = at;
    }

    void pen(Pens.Pen pen) throws IOException {
        float[] rgb = {(pen.colour() >> 16) / 255f, (pen.colour() >> 8 & 255) / 255f, (pen.colour() & 255) / 255f};
        stream.setStrokingColor(rgb[0], rgb[1], rgb[2]);
        stream.setNonStrokingColor(rgb[0], rgb[1], rgb[2]);
        stream.setLineWidth((float) (pen.width() * POINTS_PER_MM));
    }

    void draw(CutShape shape) throws IOException {
        if (shape instanceof CutShape.Ring ring) {
            polyline(ring.points());
            stream.closePath();
        } else if (shape instanceof CutShape.Line line) {
            polyline(line.points());
        } else if (shape instanceof CutShape.Round round) {
            circle(round.circle());
        }
        stream.stroke();
    }

    /** Fills a region, holes left free by the even-odd rule, and draws its rim with the pen. */
    void fill(List<List<Point>> rings, int colour) throws IOException {
        stream.setNonStrokingColor((colour >> 16) / 255f, (colour >> 8 & 255) / 255f, (colour & 255) / 255f);
        for (List<Point> ring : rings) {
            polyline(ring);
            stream.closePath();
        }
        stream.fillAndStrokeEvenOdd();
    }

    /** A region's edge and the edges of its holes. */
    void region(Outline outline) throws IOException {
        draw(new CutShape.Ring(outline.outer()));
        for (List<Point> hole : outline.holes()) {
            draw(new CutShape.Ring(hole));
        }
    }

    /** @param arm from its middle, mm */
    void cross(Point at, double arm) throws IOException {
        Point across = new Point(arm, 0);
        Point up = new Point(0, arm);
        draw(new CutShape.Line(List.of(at.minus(across), at.plus(across))));
        draw(new CutShape.Line(List.of(at.minus(up), at.plus(up))));
    }

    /** Lines drawn from now on have gaps; none without lengths. Lengths in mm: drawn, left out. */
    void dashes(double... lengths) throws IOException {
        float[] points = new float[lengths.length];
        for (int i = 0; i < points.length; i++) {
            points[i] = (float) (lengths[i] * POINTS_PER_MM);
        }
        stream.setLineDashPattern(points, 0);
    }

    /** What is drawn until {@link #unclip} shows only within this region. */
    void clip(Outline region) throws IOException {
        stream.saveGraphicsState();
        polyline(region.outer());
        stream.closePath();
        for (List<Point> hole : region.holes()) {
            polyline(hole);
            stream.closePath();
        }
        stream.clipEvenOdd();
    }

    void unclip() throws IOException {
        stream.restoreGraphicsState();
    }

    void image(PDImageXObject image, Point lowerLeft, double width, double height) throws IOException {
        stream.drawImage(
                image, x(lowerLeft), y(lowerLeft), (float) (width * POINTS_PER_MM), (float) (height * POINTS_PER_MM));
    }

    /** @param size type size, mm */
    void write(double size, Point at, String words) throws IOException {
        stream.beginText();
        stream.setFont(text.font(), (float) (size * POINTS_PER_MM));
        stream.newLineAtOffset(x(at), y(at));
        stream.showText(text.safe(words));
        stream.endText();
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }

    private void polyline(List<Point> points) throws IOException {
        stream.moveTo(x(points.get(0)), y(points.get(0)));
        for (Point point : points.subList(1, points.size())) {
            stream.lineTo(x(point), y(point));
        }
    }

    /**
     * Cubic curves with control points k·r along the tangents, k = 4/3·tan(θ/4) for arcs of θ. Four of
     * them leave the circle by 2.73e-4 r, and twice as many by 2^-6 of that: as many as hold the tolerance.
     */
    private void circle(Circle circle) throws IOException {
        int arcs = 4;
        for (double error = 2.73e-4 * circle.radius(); error > Trace.TOLERANCE; error /= 64) {
            arcs *= 2;
        }
        double theta = 2 * Math.PI / arcs;
        double k = 4 / 3.0 * Math.tan(theta / 4);
        Point c = circle.centre();
        Point radius = new Point(circle.radius(), 0);
        stream.moveTo(x(c.plus(radius)), y(c.plus(radius)));
        for (int i = 0; i < arcs; i++) {
            Point from = radius.turned(i * theta);
            Point to = radius.turned((i + 1) * theta);
            Point first = c.plus(from).plus(from.turned(Math.PI / 2).times(k));
            Point second = c.plus(to).minus(to.turned(Math.PI / 2).times(k));
            stream.curveTo(x(first), y(first), x(second), y(second), x(c.plus(to)), y(c.plus(to)));
        }
        stream.closePath();
    }

    private float x(Point point) {
        return (float) ((origin.x() + point.x()) * POINTS_PER_MM);
    }

    private float y(Point point) {
        return (float) ((origin.y() + point.y()) * POINTS_PER_MM);
    }
}
