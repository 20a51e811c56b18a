package jackwork.builds;

import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import jackwork.motion.coin.CoinCycle;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Part;
import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One build's cycle with one coin, as an animated SVG that any browser plays: everything that moved, to scale. */
public final class Replay implements CoinCycle.Watcher {

    /** Between two pictures, s of the run. */
    private static final double FRAME = 0.01;
    /** A run is shown so many times slower than it was. */
    private static final double SLOWER = 4;

    private static final double MARGIN = 8;

    private final Assembly assembly;
    private final Coin coin;
    private final List<double[]> poses = new ArrayList<>();
    private final List<Double> times = new ArrayList<>();

    /** @param assembly of the build that is shown */
    public Replay(Assembly assembly, Coin coin) {
        this.assembly = assembly;
        this.coin = coin;
    }

    @Override
    public void at(double time, double[] pose) {
        if (times.isEmpty() || time - times.get(times.size() - 1) >= FRAME) {
            times.add(time);
            poses.add(pose.clone());
        }
    }

    /** @param caption what came of it */
    public String svg(String caption) {
        Bounds all = assembly.parts().stream()
                .map(part -> part.drawn().bounds())
                .reduce(Bounds::union)
                .orElseThrow();
        double width = all.maxX() - all.minX() + 2 * MARGIN;
        double height = all.maxY() - all.minY() + 2 * MARGIN + 8;
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100%%\""
                        + " height=\"100%%\" viewBox=\"0 0 %.2f %.2f\">\n",
                width,
                height));
        out.append("<title>")
                .append(escaped(caption))
                .append("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#fbfaf6\"/>\n");
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"4\" y=\"6\" font-size=\"4\" font-family=\"sans-serif\" fill=\"#333\">%s</text>\n",
                escaped(caption + ", " + (int) SLOWER + " times slower")));
        out.append(String.format(
                Locale.ROOT,
                "<g transform=\"translate(%.3f %.3f) scale(1 -1)\" stroke=\"#3b352c\" stroke-width=\"0.25\" stroke-linejoin=\"round\">\n",
                MARGIN - all.minX(),
                all.maxY() + MARGIN + 8));
        for (int layer = lowest(); layer <= highest(); layer++) {
            for (int b = 0; b < assembly.bodies().size(); b++) {
                body(out, b, layer);
            }
            if (layer == assembly.coinWorks().layer()) {
                coin(out);
            }
        }
        return out.append("</g>\n</svg>\n").toString();
    }

    private int lowest() {
        return assembly.parts().stream().mapToInt(Part::layer).min().orElse(0);
    }

    private int highest() {
        return assembly.parts().stream().mapToInt(Part::layer).max().orElse(0);
    }

    private void body(StringBuilder out, int number, int layer) {
        Body body = assembly.body(number);
        List<Part> here =
                body.parts().stream().filter(part -> part.layer() == layer).toList();
        if (here.isEmpty()) {
            return;
        }
        boolean coinLayer = layer == assembly.coinWorks().layer();
        String fill = number == 0 ? "#d9cfbb" : number == assembly.coinWorks().bucket() ? "#8fb0c9" : "#c98f6a";
        double opacity = coinLayer ? 0.95 : number == 0 ? 0.12 : 0.35;
        out.append(String.format(Locale.ROOT, "<g fill=\"%s\" fill-opacity=\"%.2f\">", fill, opacity));
        if (number > 0) {
            moved(out, number - 1, body.centre());
        }
        for (Part part : here) {
            path(out, part.drawn().outerWithin(0.05));
        }
        out.append(number > 0 ? "</g></g>" : "").append("</g>\n");
    }

    private void coin(StringBuilder out) {
        int number = poses.get(0).length / 3 - 1;
        out.append("<g fill=\"#d8b24a\">");
        moved(out, number, new Point(poses.get(0)[3 * number], poses.get(0)[3 * number + 1]));
        Point at = new Point(poses.get(0)[3 * number], poses.get(0)[3 * number + 1]);
        out.append(String.format(
                Locale.ROOT, "<circle cx=\"%.3f\" cy=\"%.3f\" r=\"%.3f\"/>", at.x(), at.y(), coin.radius()));
        out.append(String.format(Locale.ROOT, "<path d=\"M%.3f %.3fh%.3f\"/>", at.x(), at.y(), coin.radius()));
        out.append("</g></g></g>\n");
    }

    /** Opens two groups: one that goes along with the centre, one that turns about it. */
    private void moved(StringBuilder out, int body, Point centre) {
        StringBuilder way = new StringBuilder();
        StringBuilder turn = new StringBuilder();
        StringBuilder key = new StringBuilder();
        double whole = times.get(times.size() - 1);
        for (int i = 0; i < times.size(); i++) {
            double[] pose = poses.get(i);
            String next = i == 0 ? "" : ";";
            way.append(next)
                    .append(String.format(
                            Locale.ROOT, "%.3f %.3f", pose[3 * body] - centre.x(), pose[3 * body + 1] - centre.y()));
            turn.append(next)
                    .append(String.format(
                            Locale.ROOT, "%.3f %.3f %.3f", Math.toDegrees(pose[3 * body + 2]), centre.x(), centre.y()));
            key.append(next).append(String.format(Locale.ROOT, "%.5f", whole == 0 ? 0 : times.get(i) / whole));
        }
        animated(out, "translate", way, key, whole);
        animated(out, "rotate", turn, key, whole);
    }

    private static void animated(
            StringBuilder out, String type, StringBuilder values, StringBuilder key, double seconds) {
        out.append(String.format(
                Locale.ROOT,
                "<g><animateTransform attributeName=\"transform\" type=\"%s\" dur=\"%.2fs\" repeatCount=\"indefinite\""
                        + " values=\"%s\" keyTimes=\"%s\"/>",
                type,
                SLOWER * seconds,
                values,
                key));
    }

    private static void path(StringBuilder out, List<Point> outline) {
        out.append("<path d=\"");
        for (int i = 0; i < outline.size(); i++) {
            out.append(String.format(
                    Locale.ROOT,
                    "%s%.2f %.2f",
                    i == 0 ? "M" : "L",
                    outline.get(i).x(),
                    outline.get(i).y()));
        }
        out.append("Z\"/>");
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
