package jackwork.design;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a number may be, and what it usually is.
 *
 * @param unit of all four
 * @param least lower is refused
 * @param most higher is refused
 * @param usualFrom lower is unusual
 * @param usualTo higher is unusual
 * @param why what the bounds rest on, in one clause
 */
record Range(String unit, double least, double most, double usualFrom, double usualTo, String why) {

    /** Of a point's two numbers, mm. */
    static final Range OF_PLACES = new Range("mm", -5000, 5000, -1000, 1000, "a figure stands on a table");

    /** Empty for what is no number, and for numbers whose bounds stand in a table elsewhere. */
    static Optional<Range> of(Word word) {
        return word.quantity()
                .map(quantity -> new Range(
                        quantity.unit(),
                        quantity.least(),
                        quantity.most(),
                        Double.isNaN(quantity.usualFrom()) ? quantity.least() : quantity.usualFrom(),
                        Double.isNaN(quantity.usualTo()) ? quantity.most() : quantity.usualTo(),
                        quantity.why()));
    }

    boolean holds(double number) {
        return number >= least && number <= most;
    }

    boolean isUsual(double number) {
        return number >= usualFrom && number <= usualTo;
    }

    /** What is told of a number outside. */
    String refusal(double number) {
        String of = unit.equals("1") ? "" : unit.equals("deg") ? " degrees" : " " + unit;
        return "read " + plain(number) + ", expected " + plain(least) + " to " + plain(most) + of + ": " + why;
    }

    /** As a person writes it, in full unless that would fill the line. */
    static String plain(double number) {
        if (Math.abs(number) >= 1e9 || (number != 0 && Math.abs(number) < 1e-6)) {
            return String.valueOf(number);
        }
        return new BigDecimal(String.valueOf(number)).stripTrailingZeros().toPlainString();
    }
}
