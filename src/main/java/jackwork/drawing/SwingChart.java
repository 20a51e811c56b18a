package jackwork.drawing;

import java.util.List;
import java.util.Locale;

/**
 * Which number moves an answer most: a bar a number, from the answer at its lower end to that at its upper, about the
 * answer as it is. The lower end is hatched, the upper plain, so that no colour need be told apart.
 */
public final class SwingChart {

    private static final double WIDE = 720;
    private static final double LEFT = 230;
    private static final double RIGHT = 40;
    private static final double TOP = 64;
    private static final double ROW = 26;
    private static final double BAR = 14;

    private SwingChart() {}

    /**
     * @param label of the number
     * @param atLow the answer with it at its lower end
     * @param atHigh likewise
     */
    public record Bar(String label, double atLow, double atHigh) {}

    /** SVG; the same bars give the same text. */
    public static String write(String title, double answer, String unit, List<Bar> bars) {
        double least = answer;
        double most = answer;
        for (Bar bar : bars) {
            least = Math.min(least, Math.min(bar.atLow(), bar.atHigh()));
            most = Math.max(most, Math.max(bar.atLow(), bar.atHigh()));
        }
        double span = most > least ? most - least : 1;
        double from = least;
        double scale = (WIDE - LEFT - RIGHT) / span;
        double high = TOP + ROW * bars.size() + 34;
        StringBuilder svg = new StringBuilder();
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\""
                        + " font-family=\"sans-serif\" font-size=\"13\" fill=\"#2b2b2b\">\n",
                WIDE,
                high));
        svg.append("<title>").append(escaped(title)).append("</title>\n");
        svg.append("<defs><pattern id=\"low\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\""
                + " patternTransform=\"rotate(45)\"><rect width=\"5\" height=\"5\" fill=\"#fbfaf7\"/>"
                + "<path d=\"M0 0V5\" stroke=\"#8a5a12\" stroke-width=\"2.4\"/></pattern></defs>\n");
        svg.append(String.format(Locale.ROOT, "<rect width=\"%.0f\" height=\"%.0f\" fill=\"#fbfaf7\"/>\n", WIDE, high));
        text(svg, 16, 24, "start", escaped(title) + ", " + money(answer) + " " + escaped(unit));
        text(svg, 16, 44, "start", "hatched: the number at its lower end; plain: at its upper end");
        double middle = LEFT + (answer - from) * scale;
        for (int i = 0; i < bars.size(); i++) {
            bar(svg, bars.get(i), TOP + ROW * i, from, scale, middle);
        }
        svg.append(String.format(
                Locale.ROOT,
                "<path d=\"M%.2f %.2fV%.2f\" stroke=\"#2b2b2b\" stroke-width=\"1\"/>\n",
                middle,
                TOP - 6,
                TOP + ROW * bars.size()));
        text(svg, LEFT, high - 12, "start", money(least));
        text(svg, WIDE - RIGHT, high - 12, "end", money(most));
        return svg.append("</svg>\n").toString();
    }

    private static void bar(StringBuilder svg, Bar bar, double y, double from, double scale, double middle) {
        text(svg, LEFT - 10, y + BAR - 2, "end", escaped(bar.label()));
        part(svg, LEFT + (bar.atLow() - from) * scale, middle, y, "url(#low)");
        part(svg, LEFT + (bar.atHigh() - from) * scale, middle, y, "#c98a2b");
    }

    private static void part(StringBuilder svg, double end, double middle, double y, String fill) {
        svg.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.0f\" fill=\"%s\" stroke=\"#8a5a12\""
                        + " stroke-width=\"0.6\"/>\n",
                Math.min(end, middle),
                y,
                Math.abs(end - middle),
                BAR,
                fill));
    }

    private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
        svg.append(String.format(
                Locale.ROOT, "<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"%s\">%s</text>\n", x, y, anchor, words));
    }

    private static String money(double amount) {
        return String.format(Locale.ROOT, "%.2f", amount);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
