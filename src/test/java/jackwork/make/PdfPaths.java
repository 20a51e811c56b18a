package jackwork.make;

import jackwork.drawing.Drawing;
import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The closed lines stroked on a PDF page, mm from the page's lower left corner. */
final class PdfPaths extends PDFGraphicsStreamEngine {

    private static final double MM_PER_POINT = 25.4 / 72;

    private final Path2D.Double path = new Path2D.Double();
    private final List<Outline> paths = new ArrayList<>();

    private PdfPaths(PDPage page) {
        super(page);
    }

    static PdfPaths of(PDPage page) throws IOException {
        PdfPaths paths = new PdfPaths(page);
        paths.processPage(page);
        return paths;
    }

    /**
     * Finds every circle and outline of a sheet among the page's paths, all shifted by one margin.
     *
     * @return what is not found: ids of paths that no path of the page follows within {@code tolerance}
     */
    List<String> missing(Drawing sheet, double tolerance) {
        Map<String, Outline> wanted = new LinkedHashMap<>(sheet.outlines());
        sheet.circles().forEach((id, circle) -> wanted.put(id, Outline.disc(circle, 0.001)));
        Outline first = wanted.values().iterator().next();
        List<String> best = List.copyOf(wanted.keySet());
        for (Outline path : paths) {
            Point shift = new Point(
                    path.bounds().minX() - first.bounds().minX(),
                    path.bounds().minY() - first.bounds().minY());
            if (!follows(path, first.moved(shift), tolerance)) {
                continue;
            }
            List<String> missing = new ArrayList<>();
            wanted.forEach((id, outline) -> {
                Outline moved = outline.moved(shift);
                if (paths.stream().noneMatch(p -> follows(p, moved, tolerance))) {
                    missing.add(id);
                }
            });
            if (missing.size() < best.size()) {
                best = missing;
            }
        }
        return best;
    }

    /** Whether each outline's points lie on the other's edge. */
    private static boolean follows(Outline a, Outline b, double tolerance) {
        return near(a, b, tolerance) && near(b, a, tolerance);
    }

    private static boolean near(Outline points, Outline edge, double tolerance) {
        Bounds p = points.bounds();
        Bounds e = edge.bounds();
        if (Math.abs(p.minX() - e.minX()) > tolerance || Math.abs(p.maxY() - e.maxY()) > tolerance) {
            return false;
        }
        return points.outer().stream().allMatch(point -> edge.distanceToEdge(point) <= tolerance);
    }

    /** Keeps the path just stroked when it is a closed line, curves flattened within 0.001 mm. */
    private void take() {
        List<Point> points = new ArrayList<>();
        double[] xy = new double[6];
        boolean closed = false;
        var flat = path.getPathIterator(null, 0.001 / MM_PER_POINT);
        while (!flat.isDone()) {
            if (flat.currentSegment(xy) == PathIterator.SEG_CLOSE) {
                closed = true;
            } else {
                points.add(new Point(xy[0] * MM_PER_POINT, xy[1] * MM_PER_POINT));
            }
            flat.next();
        }
        path.reset();
        while (points.size() > 1 && points.get(0).distance(points.get(points.size() - 1)) < 1e-4) {
            points.remove(points.size() - 1);
        }
        if (closed && points.size() >= 3) {
            paths.add(Outline.of(points));
        }
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void strokePath() {
        take();
    }

    @Override
    public void fillPath(int rule) {
        path.reset();
    }

    @Override
    public void fillAndStrokePath(int rule) {
        take();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void drawImage(PDImage image) {
        throw new IllegalStateException("a sheet holds no pictures");
    }

    @Override
    public void clip(int rule) {
        path.reset();
    }

    @Override
    public void shadingFill(COSName name) {
        throw new IllegalStateException("a sheet holds no shadings");
    }
}
