package jackwork.drawing;

import java.util.List;
import java.util.Set;

/** The elements that draw something, each as the lines and curves that it stands for (W3C SVG 2, 10). */
final class BasicShapes {

    private static final Set<String> NAMES = Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");

    private BasicShapes() {}

    static boolean draws(SvgElement element) {
        return NAMES.contains(element.name());
    }

    static List<Contour> contours(SvgElement element, Viewport viewport, Budget budget) {
        Trace trace = new Trace(element, viewport.toPage(), budget);
        double w = viewport.width();
        double h = viewport.height();
        switch (element.name()) {
            case "path" -> PathData.trace(element, trace);
            case "rect" -> rectangle(element, viewport, trace);
            case "circle" -> {
                double r = SvgLength.of(element, "r", 0, viewport.diagonal());
                ellipse(element, viewport, r, r, trace);
            }
            case "ellipse" -> {
                double rx = SvgLength.of(element, "rx", 0, w);
                double ry = SvgLength.of(element, "ry", 0, h);
                ellipse(element, viewport, rx, ry, trace);
            }
            case "line" -> {
                trace.moveTo(SvgLength.of(element, "x1", 0, w), SvgLength.of(element, "y1", 0, h));
                trace.lineTo(SvgLength.of(element, "x2", 0, w), SvgLength.of(element, "y2", 0, h));
            }
            default -> points(element, trace);
        }
        return trace.contours();
    }

    private static void points(SvgElement element, Trace trace) {
        NumberScanner scanner = new NumberScanner(element, "points");
        if (!scanner.hasMore()) {
            return;
        }
        trace.moveTo(scanner.number(), scanner.number());
        while (scanner.hasMore()) {
            trace.lineTo(scanner.number(), scanner.number());
        }
        if (element.name().equals("polygon")) {
            trace.close();
        }
    }

    private static void ellipse(SvgElement element, Viewport viewport, double rx, double ry, Trace trace) {
        notNegative(element, "radius", Math.min(rx, ry));
        if (rx == 0 || ry == 0) {
            return;
        }
        double x = SvgLength.of(element, "cx", 0, viewport.width());
        double y = SvgLength.of(element, "cy", 0, viewport.height());
        trace.moveTo(x + rx, y);
        EllipticArc.ellipse(x, y, rx, ry).draw(trace);
        trace.close();
    }

    private static void rectangle(SvgElement element, Viewport viewport, Trace trace) {
        double x = SvgLength.of(element, "x", 0, viewport.width());
        double y = SvgLength.of(element, "y", 0, viewport.height());
        double w = SvgLength.of(element, "width", 0, viewport.width());
        double h = SvgLength.of(element, "height", 0, viewport.height());
        notNegative(element, "width or height", Math.min(w, h));
        if (w == 0 || h == 0) {
            return;
        }
        // A radius that is left out is the other one; neither may pass the middle.
        double givenX = SvgLength.of(element, "rx", Double.NaN, viewport.width());
        double givenY = SvgLength.of(element, "ry", Double.NaN, viewport.height());
        double rx = Double.isNaN(givenX) ? (Double.isNaN(givenY) ? 0 : givenY) : givenX;
        double ry = Double.isNaN(givenY) ? rx : givenY;
        notNegative(element, "corner radius", Math.min(rx, ry));
        rx = Math.min(rx, w / 2);
        ry = Math.min(ry, h / 2);
        trace.moveTo(x + rx, y);
        trace.lineTo(x + w - rx, y);
        corner(trace, x + w - rx, y + ry, rx, ry, -Math.PI / 2);
        trace.lineTo(x + w, y + h - ry);
        corner(trace, x + w - rx, y + h - ry, rx, ry, 0);
        trace.lineTo(x + rx, y + h);
        corner(trace, x + rx, y + h - ry, rx, ry, Math.PI / 2);
        trace.lineTo(x, y + ry);
        corner(trace, x + rx, y + ry, rx, ry, Math.PI);
        trace.close();
    }

    private static void corner(Trace trace, double cx, double cy, double rx, double ry, double from) {
        if (rx > 0 && ry > 0) {
            Affine toUser = Affine.translation(cx, cy).after(Affine.scaling(rx, ry));
            trace.arc(toUser, from, Math.PI / 2);
        }
    }

    private static void notNegative(SvgElement element, String what, double value) {
        if (value < 0) {
            throw element.problem(what + " is negative; 0 or more was expected");
        }
    }
}
