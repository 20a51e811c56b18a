package jackwork.drawing;

/**
 * A window onto user space: the page, a nested svg or a symbol.
 *
 * @param toPage from user units inside to page mm, y down from the page's upper left corner
 * @param width user units inside, what 100 % is across
 * @param height user units inside, what 100 % is down
 */
record Viewport(Affine toPage, double width, double height) {

    Viewport inner(Affine transform) {
        return new Viewport(toPage.after(transform), width, height);
    }

    /** What 100 % is for a length that is neither across nor down (W3C SVG 1.1, 7.10). */
    double diagonal() {
        return Math.hypot(width, height) / Math.sqrt(2);
    }

    /** The page as seen from outside: pixels, its size as written. */
    static Viewport page(SvgElement svg) {
        double[] box = viewBox(svg);
        // 100 % of a window that is not there: the size is then the view box's own.
        double width = SvgLength.of(svg, "width", Double.NaN, Double.NaN);
        double height = SvgLength.of(svg, "height", Double.NaN, Double.NaN);
        if (box.length == 0 && (Double.isNaN(width) || Double.isNaN(height))) {
            throw svg.problem("the page has no size; give width and height in mm, such as width=\"210mm\"");
        }
        if (Double.isNaN(width)) {
            width = Double.isNaN(height) ? box[2] : height * box[2] / box[3];
        }
        if (Double.isNaN(height)) {
            height = width * box[3] / box[2];
        }
        return new Viewport(Affine.scaling(SvgLength.MM_PER_UNIT, SvgLength.MM_PER_UNIT), width, height);
    }

    /** User space of the outermost svg, which fills its page. */
    Viewport filledBy(SvgElement svg) {
        return window(svg, 0, 0, width, height);
    }

    /** A nested svg, or a symbol as placed by {@code use}; either may leave out its size for the whole of this one. */
    Viewport nested(SvgElement svg, SvgElement sized) {
        boolean placed = svg.name().equals("svg");
        double x = placed ? SvgLength.of(svg, "x", 0, width) : 0;
        double y = placed ? SvgLength.of(svg, "y", 0, height) : 0;
        return window(
                svg, x, y, SvgLength.of(sized, "width", width, width), SvgLength.of(sized, "height", height, height));
    }

    private Viewport window(SvgElement svg, double x, double y, double w, double h) {
        if (!(w > 0
                && h > 0
                && w * SvgLength.MM_PER_UNIT <= Trace.FARTHEST
                && h * SvgLength.MM_PER_UNIT <= Trace.FARTHEST)) {
            throw svg.problem("width " + svg.attribute("width") + " and height " + svg.attribute("height")
                    + " must be more than nothing and at most " + (int) Trace.FARTHEST + " mm");
        }
        double[] box = viewBox(svg);
        if (box.length == 0) {
            return new Viewport(toPage.after(Affine.translation(x, y)), w, h);
        }
        Affine fit = fit(svg, box, w, h);
        return new Viewport(toPage.after(Affine.translation(x, y)).after(fit), box[2], box[3]);
    }

    /** preserveAspectRatio: whole box visible and centred unless told otherwise (W3C SVG 1.1, 7.8). */
    private static Affine fit(SvgElement svg, double[] box, double w, double h) {
        String ratio = svg.attribute("preserveAspectRatio");
        double sx = w / box[2];
        double sy = h / box[3];
        if (!ratio.startsWith("none")) {
            double same = ratio.endsWith("slice") ? Math.max(sx, sy) : Math.min(sx, sy);
            sx = same;
            sy = same;
        }
        double right = ratio.contains("xMin") ? 0 : ratio.contains("xMax") ? 1 : 0.5;
        double down = ratio.contains("YMin") ? 0 : ratio.contains("YMax") ? 1 : 0.5;
        return Affine.translation((w - sx * box[2]) * right, (h - sy * box[3]) * down)
                .after(Affine.scaling(sx, sy))
                .after(Affine.translation(-box[0], -box[1]));
    }

    private static double[] viewBox(SvgElement svg) {
        if (!svg.has("viewBox")) {
            return new double[0];
        }
        NumberScanner scanner = new NumberScanner(svg, "viewBox");
        double[] box = {scanner.number(), scanner.number(), scanner.number(), scanner.number()};
        if (!(box[2] > 0 && box[3] > 0) || scanner.hasMore()) {
            throw svg.problem("viewBox is \"" + svg.attribute("viewBox")
                    + "\"; four numbers were expected, the last two more than 0");
        }
        return box;
    }
}
