package jackwork.make;

import jackwork.drawing.Drawing;
import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The extents of every stroked path of a PDF page, mm from the page's lower left corner. */
final class PdfPaths extends PDFGraphicsStreamEngine {

    private static final double MM_PER_POINT = 25.4 / 72;

    private final java.awt.geom.GeneralPath path = new java.awt.geom.GeneralPath();
    private final List<Bounds> extents = new ArrayList<>();

    private PdfPaths(PDPage page) {
        super(page);
    }

    static PdfPaths of(PDPage page) throws IOException {
        PdfPaths paths = new PdfPaths(page);
        paths.processPage(page);
        return paths;
    }

    /** How many of a sheet's circles and outlines are here, all shifted by one common margin. */
    int matches(Drawing sheet, double tolerance) {
        List<Bounds> wanted = new ArrayList<>();
        for (Circle circle : sheet.circles().values()) {
            double r = circle.radius();
            wanted.add(new Bounds(
                    circle.centre().x() - r,
                    circle.centre().y() - r,
                    circle.centre().x() + r,
                    circle.centre().y() + r));
        }
        for (Outline outline : sheet.outlines().values()) {
            wanted.add(outline.bounds());
        }
        int best = 0;
        for (Bounds first : extents) {
            double dx = first.minX() - wanted.get(0).minX();
            double dy = first.minY() - wanted.get(0).minY();
            int found = 0;
            for (Bounds bounds : wanted) {
                if (extents.stream().anyMatch(e -> same(e, bounds, dx, dy, tolerance))) {
                    found++;
                }
            }
            best = Math.max(best, found);
        }
        return best == wanted.size() ? best : 0;
    }

    private static boolean same(Bounds found, Bounds wanted, double dx, double dy, double tolerance) {
        return Math.abs(found.minX() - wanted.minX() - dx) < tolerance
                && Math.abs(found.minY() - wanted.minY() - dy) < tolerance
                && Math.abs(found.maxX() - wanted.maxX() - dx) < tolerance
                && Math.abs(found.maxY() - wanted.maxY() - dy) < tolerance;
    }

    private void take() {
        if (path.getCurrentPoint() != null) {
            Rectangle2D box = new java.awt.geom.Area(path).isEmpty() ? path.getBounds2D() : tight();
            extents.add(new Bounds(
                    box.getMinX() * MM_PER_POINT,
                    box.getMinY() * MM_PER_POINT,
                    box.getMaxX() * MM_PER_POINT,
                    box.getMaxY() * MM_PER_POINT));
        }
        path.reset();
    }

    /** The curve's own extent, not that of its control points. */
    private Rectangle2D tight() {
        return new java.awt.geom.Area(path).getBounds2D();
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
