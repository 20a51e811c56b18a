package jackwork.make;

import jackwork.design.WorkshopFile;
import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutShape;
import jackwork.drawing.CutSheet;
import jackwork.drawing.Label;
import jackwork.geometry.Circle;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Pieces to cut before all others, one page a stock: strips that tell the kerf, a comb of notches that tells the fit of
 * the sheet's own edge, and for each rod a row of holes that tells its running and its press fit. The form says what to
 * do with them, and how the answers become the workshop's values.
 */
final class TestPieces {

    /** Strips of the kerf piece: their cuts add up. */
    static final int STRIPS = 10;
    /** Width of the kerf piece as drawn, mm. */
    static final double STRIPS_WIDE = 100;

    /** From one notch or hole to the next, mm. */
    static final double STEP = 0.05;

    private static final double STRIPS_HIGH = 25;
    private static final double EDGE = 8;
    private static final double NOTCH_DEEP = 12;
    /** Notches from so much tighter than the sheet to so much wider, mm. */
    static final double TIGHTEST_NOTCH = -0.20;

    private static final int NOTCHES = 9;
    /** Holes from so much tighter than the rod, mm. */
    static final double TIGHTEST_HOLE = -0.20;

    private static final int HOLES = 13;

    private TestPieces() {}

    /** One page for each stock that a design uses, in the order given. */
    static List<CutSheet> sheets(List<String> stocks, WorkshopFile workshop) {
        return stocks.stream().map(stock -> sheet(stock, workshop)).toList();
    }

    private static CutSheet sheet(String stock, WorkshopFile workshop) {
        double kerf = workshop.laser().kerf().value();
        double thickness = thickness(stock, workshop);
        List<CutPath> paths = new ArrayList<>();
        List<Label> labels = new ArrayList<>();
        double y = EDGE;
        y = strips(paths, labels, y);
        y = comb(paths, labels, y, thickness, kerf);
        double wide = EDGE;
        for (Map.Entry<String, WorkshopFile.RodEntry> rod : workshop.rods().entrySet()) {
            double diameter = rod.getValue().diameter().value();
            wide = Math.max(wide, holes(paths, labels, y, rod.getKey(), diameter, kerf));
            y += 3 * diameter + 8 + EDGE;
        }
        double width = Math.max(STRIPS_WIDE + 2 * EDGE, wide + EDGE);
        return new CutSheet("test-" + stock, width, y, paths, labels);
    }

    static double thickness(String stock, WorkshopFile workshop) {
        WorkshopFile.SheetEntry entry = workshop.sheets().get(stock);
        if (entry == null) {
            throw new IllegalStateException("stock " + stock + " was not checked on reading");
        }
        return entry.thickness().value();
    }

    /** On the lines as drawn, the beam's width left in: that is what is measured. Returns the next free height. */
    private static double strips(List<CutPath> paths, List<Label> labels, double y) {
        for (int i = 1; i < STRIPS; i++) {
            double x = EDGE + STRIPS_WIDE * i / STRIPS;
            CutShape line = new CutShape.Line(List.of(new Point(x, y), new Point(x, y + STRIPS_HIGH)));
            paths.add(new CutPath(CutKind.INSIDE, line, "strip-" + i));
        }
        paths.add(new CutPath(CutKind.OUTSIDE, box(EDGE, y, STRIPS_WIDE, STRIPS_HIGH), "strips"));
        labels.add(new Label(CutKind.MARK, new Point(EDGE, y - 3), 2, "kerf: push the strips together, measure"));
        return y + STRIPS_HIGH + EDGE;
    }

    private static double comb(List<CutPath> paths, List<Label> labels, double y, double thickness, double kerf) {
        double pitch = thickness + 7;
        double width = NOTCHES * pitch + 7;
        List<Point> ring = new ArrayList<>();
        double top = y + NOTCH_DEEP + 10;
        double half = kerf / 2;
        ring.add(new Point(EDGE - half, y - half));
        ring.add(new Point(EDGE + width + half, y - half));
        ring.add(new Point(EDGE + width + half, top + half));
        for (int i = NOTCHES - 1; i >= 0; i--) {
            double notch = thickness + TIGHTEST_NOTCH + i * STEP;
            double middle = EDGE + 7 + pitch * i + thickness / 2;
            // The beam runs inside the notch by half a kerf on either side and at its foot.
            ring.add(new Point(middle + notch / 2 - half, top + half));
            ring.add(new Point(middle + notch / 2 - half, top - NOTCH_DEEP + half));
            ring.add(new Point(middle - notch / 2 + half, top - NOTCH_DEEP + half));
            ring.add(new Point(middle - notch / 2 + half, top + half));
            labels.add(
                    new Label(CutKind.ENGRAVE, new Point(middle - 2.5, y + 3), 2, signed(TIGHTEST_NOTCH + i * STEP)));
        }
        ring.add(new Point(EDGE - half, top + half));
        paths.add(new CutPath(CutKind.OUTSIDE, new CutShape.Ring(ring), "comb"));
        labels.add(new Label(CutKind.MARK, new Point(EDGE, y - 3), 2, "fit: which notch holds the sheet's own edge?"));
        return top + EDGE;
    }

    /** Returns how far right it reaches. */
    private static double holes(
            List<CutPath> paths, List<Label> labels, double y, String rod, double diameter, double kerf) {
        double pitch = diameter + 7;
        double width = HOLES * pitch + 7;
        double high = 3 * diameter + 8;
        for (int i = 0; i < HOLES; i++) {
            double hole = diameter + TIGHTEST_HOLE + i * STEP;
            Point middle = new Point(EDGE + 7 + pitch * i + diameter / 2, y + high - 1.5 * diameter);
            Circle beam = new Circle(middle, (hole - kerf) / 2);
            paths.add(new CutPath(CutKind.INSIDE, new CutShape.Round(beam), rod + "-hole-" + (i + 1)));
            Point under = new Point(middle.x() - 2.5, y + 2);
            labels.add(new Label(CutKind.ENGRAVE, under, 2, signed(TIGHTEST_HOLE + i * STEP)));
        }
        double half = kerf / 2;
        CutShape.Ring edge = box(EDGE - half, y - half, width + kerf, high + kerf);
        paths.add(new CutPath(CutKind.OUTSIDE, edge, rod + "-holes"));
        labels.add(new Label(CutKind.MARK, new Point(EDGE, y - 3), 2, rod + ": which turns freely, which grips?"));
        return EDGE + width;
    }

    private static CutShape.Ring box(double x, double y, double width, double height) {
        return new CutShape.Ring(List.of(
                new Point(x, y), new Point(x + width, y), new Point(x + width, y + height), new Point(x, y + height)));
    }

    private static String signed(double difference) {
        return String.format(Locale.ROOT, "%+.2f", Math.abs(difference) < 1e-9 ? 0 : difference);
    }

    /** What to do with them, as words for the bench. */
    static String form(List<String> stocks, WorkshopFile workshop) {
        StringBuilder form = new StringBuilder("Test pieces, one page for each sheet stock.\n");
        question(form, 1, TestQuestion.SHEET);
        for (String stock : stocks) {
            form.append(String.format(
                    Locale.ROOT,
                    "     %-12s reckoned %.2f mm    measured ______ mm    then: --measured %s=______%n",
                    stock,
                    thickness(stock, workshop),
                    stock));
        }
        question(form, 2, TestQuestion.KERF);
        for (String stock : stocks) {
            form.append(String.format(Locale.ROOT, "     %-12s ______ mm   ______ mm   ______ mm%n", stock));
        }
        form.append(String.format(
                Locale.ROOT,
                "   %s. Or: jackwork measure kerf --drawn %.0f --strips %d --outside A,B,C%n",
                TestQuestion.KERF.becomes(),
                STRIPS_WIDE,
                STRIPS));
        question(form, 3, TestQuestion.SHEET_FIT);
        for (String stock : stocks) {
            form.append(String.format(
                    Locale.ROOT,
                    "     %-12s first that holds without force ______   last that still grips ______%n",
                    stock));
        }
        question(form, 4, TestQuestion.ROD_FIT);
        workshop.rods()
                .keySet()
                .forEach(rod -> form.append(String.format(
                        Locale.ROOT,
                        "     %-12s first in which it turns freely ______ (fits: running)   last that grips ______"
                                + " (fits: press)%n",
                        rod)));
        return form.append("\nWrite what you found into workshop.yaml with basis: measured.\n")
                .toString();
    }

    private static void question(StringBuilder form, int number, TestQuestion question) {
        form.append('\n')
                .append(number)
                .append(". ")
                .append(question.heading())
                .append(". ")
                .append(question.how())
                .append('\n');
    }
}
