package jackwork.builds;

import jackwork.parts.Bearing;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import java.util.Locale;

/**
 * What lies out of the mechanism's plane, as an animated SVG, to scale: the bucket on its rod between its neighbours,
 * seen along the rod's square; or a coin over its slot, or in its gap, seen from above. Paint and kerf as this build has them.
 */
final class AcrossView {

    private static final String WOOD = "#d9cfbb";
    private static final String BUCKET = "#8fb0c9";
    private static final String TROUBLE = "#b3402e";
    private static final String STROKE = "stroke=\"#3b352c\" stroke-width=\"0.25\"";
    /** Thickness drawn of a neighbour, and of the wood round a hole, mm. */
    private static final double WALL = 3;
    /** Of a picture, mm: the words find room. */
    private static final double WIDE = 170;

    private final StringBuilder out = new StringBuilder();

    private AcrossView() {}

    static String bucket(Build build, String caption) {
        CoinWorks works = build.assembly.coinWorks();
        double thick = build.assembly.body(works.bucket()).parts().stream()
                .mapToDouble(part -> part.thickness().value())
                .sum();
        double reach = works.reach();
        double free = works.sideGap() - 2 * build.film;
        double half = thick / 2 + free + WALL;
        Bearing bearing = build.assembly.bucketBearing();
        double clearance = bearing.clearance();
        double shift = works.shift(bearing);
        // Seen straight across, the neighbour stops it: as far as that, if it tilts so far.
        double tilt = Math.toDegrees(Math.atan(Math.min(shift, free) / reach));
        AcrossView view = new AcrossView();
        view.begin(WIDE, reach + 44, caption + ", seen across the mechanism, to scale");
        view.group(WIDE / 2, reach + 24);
        for (int side : new int[] {-1, 1}) {
            double at = side < 0 ? -half : half - WALL;
            view.box(at, -8, WALL, reach + 16, WOOD, 1);
        }
        double rod = works.rodRadius();
        view.box(-half, -rod, 2 * half, 2 * rod, "#c9a978", 1);
        view.out.append("<g>");
        if (clearance > 0) {
            view.out.append(String.format(
                    Locale.ROOT,
                    "<animateTransform attributeName=\"transform\" type=\"rotate\" dur=\"4s\" repeatCount=\"indefinite\""
                            + " values=\"0;%1$.3f;%1$.3f;0;%2$.3f;%2$.3f;0\" keyTimes=\"0;0.15;0.35;0.5;0.65;0.85;1\"/>",
                    tilt,
                    -tilt));
        }
        double hole = rod + Math.max(0, clearance) / 2;
        double length = bearing.length();
        view.box(-length / 2, hole, length, WALL, BUCKET, 0.85);
        view.box(-length / 2, -hole - WALL, length, WALL, BUCKET, 0.85);
        view.box(-thick / 2, hole + WALL, thick, reach - hole - WALL, BUCKET, 0.85);
        boolean meets = shift >= free;
        if (meets) {
            view.box(-thick / 2, reach - 4, thick, 4, TROUBLE, 0.9);
        }
        view.out.append("</g></g>\n");
        view.say(
                4,
                reach + 40,
                clearance <= 0
                        ? String.format(Locale.ROOT, "the hole is %.2f mm tighter than the rod", -clearance)
                        : String.format(
                                Locale.ROOT,
                                "%.2f mm clearance over %.1f mm of bearing: %.2f mm at its end, %.2f mm free",
                                clearance,
                                length,
                                shift,
                                free));
        return view.end();
    }

    static String slot(Build build, Coin coin, String caption) {
        CoinWorks works = build.assembly.coinWorks();
        double taken = build.kerf - 2 * build.film;
        return opening(build, coin, "slot", works.slotLength() + taken, works.slotWidth() + taken, caption);
    }

    /** The gap in which the coin runs: open at its ends, so it is drawn longer than the coin. */
    static String gap(Build build, Coin coin, String caption) {
        double width = build.assembly.coinGap() - 2 * build.film;
        return opening(build, coin, "gap", coin.diameter() + 10, width, caption);
    }

    private static String opening(Build build, Coin coin, String what, double length, double width, String caption) {
        double diameter = coin.diameter() + build.coinWidth;
        AcrossView view = new AcrossView();
        view.begin(WIDE, width + 44, caption + ", seen from above, to scale");
        view.group(WIDE / 2, 22 + width / 2);
        view.box(-length / 2 - 8, -width / 2 - 8, length + 16, width + 16, WOOD, 1);
        view.box(-length / 2, -width / 2, length, width, "#fbfaf6", 1);
        boolean sticks = diameter >= length || coin.thickness() >= width;
        view.box(-diameter / 2, -coin.thickness() / 2, diameter, coin.thickness(), sticks ? TROUBLE : "#d8b24a", 0.7);
        view.out.append("</g>\n");
        view.say(
                4,
                width + 40,
                String.format(
                        Locale.ROOT,
                        "%s %.2f mm wide%s, coin %.2f by %.2f mm",
                        what,
                        width,
                        what.equals("slot") ? String.format(Locale.ROOT, " and %.2f mm long", length) : "",
                        diameter,
                        coin.thickness()));
        return view.end();
    }

    private void begin(double width, double height, String caption) {
        out.append(String.format(
                Locale.ROOT,
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100%%\""
                        + " height=\"100%%\" viewBox=\"0 0 %.2f %.2f\">\n<title>%s</title>\n"
                        + "<rect width=\"100%%\" height=\"100%%\" fill=\"#fbfaf6\"/>\n",
                width,
                height,
                Replay.escaped(caption)));
        say(4, 6, caption);
    }

    /** Opens a group with y upward about a place. */
    private void group(double x, double y) {
        out.append(String.format(Locale.ROOT, "<g transform=\"translate(%.3f %.3f) scale(1 -1)\" %s>\n", x, y, STROKE));
    }

    private void box(double x, double y, double width, double height, String fill, double opacity) {
        out.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.3f\" y=\"%.3f\" width=\"%.3f\" height=\"%.3f\" fill=\"%s\" fill-opacity=\"%.2f\"/>\n",
                x,
                y,
                width,
                height,
                fill,
                opacity));
    }

    private void say(double x, double y, String text) {
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%.2f\" y=\"%.2f\" font-size=\"3\" font-family=\"sans-serif\" fill=\"#333\">%s</text>\n",
                x,
                y,
                Replay.escaped(text)));
    }

    private String end() {
        return out.append("</svg>\n").toString();
    }
}
