package jackwork;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Times over a number, both by powers of ten, as an SVG: a straight line is a power, its slope the exponent. */
final class GrowthPicture {

    private static final double WIDE = 420;
    private static final double HIGH = 260;
    private static final double LEFT = 64;
    private static final double FOOT = 44;
    private static final List<String> DASHES = List.of("none", "6 4", "2 3");

    /** @param time ms */
    record At(double number, double time) {}

    private GrowthPicture() {}

    /**
     * @param title what was timed
     * @param number what is counted along the foot
     * @param series points by what else was varied, in their order; an empty name for the only one
     */
    static String of(String title, String number, Map<String, List<At>> series) {
        Scale x = Scale.over(
                series.values().stream()
                        .flatMap(List::stream)
                        .mapToDouble(At::number)
                        .toArray(),
                WIDE);
        Scale y = Scale.over(
                series.values().stream()
                        .flatMap(List::stream)
                        .mapToDouble(At::time)
                        .toArray(),
                HIGH);
        StringBuilder svg = new StringBuilder();
        line(
                svg,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" font-family=\"serif\" font-size=\"12\">",
                LEFT + WIDE + 90,
                HIGH + FOOT + 30);
        line(svg, "<rect width=\"100%%\" height=\"100%%\" fill=\"#f6eee1\"/>");
        line(svg, "<text x=\"%.0f\" y=\"18\" font-weight=\"bold\">%s</text>", LEFT, title);
        line(svg, "<g transform=\"translate(%.0f 30)\" stroke=\"#6b5d52\" fill=\"none\">", LEFT);
        line(svg, "<path d=\"M0 0V%.0fH%.0f\"/>", HIGH, WIDE);
        int drawn = 0;
        for (Map.Entry<String, List<At>> one : series.entrySet()) {
            StringBuilder path = new StringBuilder();
            for (At at : one.getValue()) {
                path.append(String.format(
                        Locale.ROOT,
                        "%s%.1f %.1f",
                        path.isEmpty() ? "M" : "L",
                        x.at(at.number()),
                        HIGH - y.at(at.time())));
            }
            line(
                    svg,
                    "<path d=\"%s\" stroke=\"#b8470f\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>",
                    path,
                    DASHES.get(drawn++ % DASHES.size()));
            At last = one.getValue().get(one.getValue().size() - 1);
            text(svg, x.at(last.number()) + 6, HIGH - y.at(last.time()) + 4, "start", one.getKey());
        }
        List<At> all = series.values().iterator().next();
        for (At at : all) {
            text(svg, x.at(at.number()), HIGH + 16, "middle", plain(at.number()));
            text(svg, -6, HIGH - y.at(at.time()) + 4, "end", plain(at.time()));
        }
        text(svg, WIDE / 2, HIGH + 36, "middle", number);
        text(svg, -6, -4, "end", "ms");
        return svg.append("</g>\n</svg>\n").toString();
    }

    /** Powers of ten on a length. */
    private record Scale(double low, double perPower) {
        static Scale over(double[] values, double length) {
            double least = Double.POSITIVE_INFINITY;
            double most = 0;
            for (double value : values) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
            double low = Math.log10(least) - 0.1;
            return new Scale(low, length / (Math.log10(most) + 0.1 - low));
        }

        double at(double value) {
            return (Math.log10(value) - low) * perPower;
        }
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.2g" : "%.0f", value).replaceAll("\\.0+$", "");
    }

    private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
        line(
                svg,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" stroke=\"none\" fill=\"#2a2420\">%s</text>",
                x,
                y,
                anchor,
                words);
    }

    private static void line(StringBuilder svg, String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
