package jackwork.check;

import java.util.Locale;

/** Numbers as findings print them: no more figures than a maker can use. */
public final class Words {

    private Words() {}

    /** Three significant figures, plain notation. */
    public static String number(double value) {
        if (Double.isNaN(value)) {
            return "not computed";
        }
        double size = Math.abs(value);
        int decimals = size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.equals("-0.000") ? "0.000" : text;
    }

    public static String stroke(double stroke) {
        return String.format(Locale.ROOT, "%.2f", stroke);
    }
}
