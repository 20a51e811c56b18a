package jackwork.drawing;

/**
 * The d attribute of a path: every command, absolute and relative (W3C SVG 2, 9.3). Letters below are
 * the standard's: (x, y) the current point, (cx, cy) the control point that a smooth curve mirrors.
 */
final class PathData {

    private final NumberScanner in;
    private final Trace trace;
    private double x;
    private double y;
    private double startX;
    private double startY;
    private double cx;
    private double cy;
    private char before = ' ';
    private boolean begun;

    private PathData(SvgElement element, Trace trace) {
        this.in = new NumberScanner(element, "d");
        this.trace = trace;
    }

    static void trace(SvgElement element, Trace trace) {
        new PathData(element, trace).run();
    }

    private void run() {
        if (!in.hasMore()) {
            return;
        }
        if (in.hasNumber() || "Mm".indexOf(in.peek()) < 0) {
            throw in.expected("M, where the path begins,");
        }
        char command = ' ';
        while (in.hasMore()) {
            if (!in.hasNumber()) {
                if ("MmZzLlHhVvCcSsQqTtAa".indexOf(in.peek()) < 0) {
                    throw in.expected("a path command (M Z L H V C S Q T A)");
                }
                command = in.letter();
            } else if (command == 'Z' || command == 'z') {
                throw in.expected("a path command after Z");
            } else if (command == 'M' || command == 'm') {
                // Pairs after the first are lines.
                command = command == 'M' ? 'L' : 'l';
            }
            step(Character.toUpperCase(command), Character.isLowerCase(command));
        }
    }

    private void step(char command, boolean relative) {
        double ox = relative ? x : 0;
        double oy = relative ? y : 0;
        if (command != 'M' && command != 'Z' && !begun) {
            // Drawing on after Z begins anew where the closed part began.
            trace.moveTo(x, y);
            begun = true;
        }
        switch (command) {
            case 'M' -> {
                startX = ox + in.number();
                startY = oy + in.number();
                trace.moveTo(startX, startY);
                begun = true;
                at(startX, startY);
            }
            case 'Z' -> {
                trace.close();
                begun = false;
                at(startX, startY);
            }
            case 'L' -> line(ox + in.number(), oy + in.number());
            case 'H' -> line(ox + in.number(), y);
            case 'V' -> line(x, oy + in.number());
            case 'C' ->
                cubic(
                        ox + in.number(),
                        oy + in.number(),
                        ox + in.number(),
                        oy + in.number(),
                        ox + in.number(),
                        oy + in.number());
            case 'S' -> {
                boolean smooth = before == 'C' || before == 'S';
                cubic(
                        smooth ? 2 * x - cx : x,
                        smooth ? 2 * y - cy : y,
                        ox + in.number(),
                        oy + in.number(),
                        ox + in.number(),
                        oy + in.number());
            }
            case 'Q' -> quadratic(ox + in.number(), oy + in.number(), ox + in.number(), oy + in.number());
            case 'T' -> {
                boolean smooth = before == 'Q' || before == 'T';
                quadratic(smooth ? 2 * x - cx : x, smooth ? 2 * y - cy : y, ox + in.number(), oy + in.number());
            }
            default -> ellipticArc(ox, oy);
        }
        before = command;
    }

    private void at(double toX, double toY) {
        x = toX;
        y = toY;
    }

    private void line(double toX, double toY) {
        trace.lineTo(toX, toY);
        at(toX, toY);
    }

    private void cubic(double x1, double y1, double x2, double y2, double toX, double toY) {
        trace.curveTo(x1, y1, x2, y2, toX, toY);
        cx = x2;
        cy = y2;
        at(toX, toY);
    }

    /** The same curve as a cubic one: control points two thirds of the way to the quadratic's. */
    private void quadratic(double x1, double y1, double toX, double toY) {
        trace.curveTo(
                x + (x1 - x) * 2 / 3,
                y + (y1 - y) * 2 / 3,
                toX + (x1 - toX) * 2 / 3,
                toY + (y1 - toY) * 2 / 3,
                toX,
                toY);
        cx = x1;
        cy = y1;
        at(toX, toY);
    }

    private void ellipticArc(double ox, double oy) {
        double rx = Math.abs(in.number());
        double ry = Math.abs(in.number());
        double turn = Math.toRadians(in.number());
        boolean large = in.flag();
        boolean sweep = in.flag();
        double toX = ox + in.number();
        double toY = oy + in.number();
        if (rx == 0 || ry == 0) {
            line(toX, toY);
        } else if (toX != x || toY != y) {
            EllipticArc.between(x, y, rx, ry, turn, large, sweep, toX, toY).draw(trace);
            at(toX, toY);
        }
    }
}
