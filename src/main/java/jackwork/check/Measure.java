package jackwork.check;

import java.util.Locale;

/**
 * A number as a sentence says it: with its unit, and no more figures than a maker can use. This is the one place where
 * a finding's numbers become words, in millimetres or in inches.
 *
 * @param value in its unit; NaN when it could not be computed
 * @param unit {@code mm}, {@code N}, {@code N·mm}, {@code deg}, {@code %}, {@code 1}
 * @param decimals printed
 * @param named whether the unit is said after the number; not where the sentence names it once for several numbers
 */
public record Measure(double value, String unit, int decimals, boolean named) {

    private static final double MM_PER_INCH = 25.4;
    /** A thousandth of an inch is what a maker's calliper shows. */
    private static final int INCH_DECIMALS = 3;
    /** More say nothing of wood. */
    private static final int MOST_DECIMALS = 9;

    /** Three significant figures. */
    public static Measure of(double value, String unit) {
        return new Measure(value, unit, decimals(value), true);
    }

    public static Measure mm(double value) {
        return of(value, "mm");
    }

    public static Measure newtons(double value) {
        return of(value, "N");
    }

    public static Measure newtonMillimetres(double value) {
        return of(value, "N·mm");
    }

    public static Measure degrees(double value) {
        return of(value, "deg");
    }

    /** Said in percent. */
    public static Measure share(double share) {
        return new Measure(100 * share, "%", 0, true);
    }

    /** @param share of the stroke, 0 at rest and 1 fully pressed; said in percent */
    public static Measure stroke(double share) {
        return new Measure(100 * share, "% of the stroke", 0, true);
    }

    /** The same, its unit left to the sentence. */
    public Measure bare() {
        return new Measure(value, unit, decimals, false);
    }

    /** The same with so many decimals. */
    public Measure to(int places) {
        return new Measure(value, unit, places, named);
    }

    static int decimals(double value) {
        double size = Math.abs(value);
        return size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
    }

    /** In the units of the files. */
    public String words() {
        return named && !Double.isNaN(value) ? number() + after() : number();
    }

    /** As many decimals as tell two numbers apart; those of the first where no nine do. */
    static int decimalsApart(double a, double b) {
        int usual = decimals(a);
        for (int places = usual; places <= MOST_DECIMALS; places++) {
            if (!plain(a, places).equals(plain(b, places))) {
                return places;
            }
        }
        return usual;
    }

    /** With inches where the files have millimetres. */
    public String inches() {
        if (!unit.equals("mm") || Double.isNaN(value)) {
            return words();
        }
        // One more decimal than a small length has in mm, or it would be said to be nothing.
        String number = plain(value / MM_PER_INCH, Math.max(INCH_DECIMALS, decimals + 1));
        String shown = number.contains(".") ? number.replaceAll("\\.?0+$", "") : number;
        return named ? shown + " in" : shown;
    }

    private String number() {
        return Double.isNaN(value) ? unknown() : plain(value, decimals);
    }

    /** In place of a number, so that the sentence still is one. */
    private String unknown() {
        return switch (unit) {
            case "mm" -> "a length that is not computed";
            case "N" -> "a force that is not computed";
            case "N·mm" -> "a moment that is not computed";
            case "stroke" -> "one that is not computed";
            default -> "a number that is not computed";
        };
    }

    private String after() {
        return switch (unit) {
            case "1", "" -> "";
            case "deg" -> "°";
            default -> " " + unit;
        };
    }

    private static String plain(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.equals("-0.000") ? "0.000" : text;
    }
}
