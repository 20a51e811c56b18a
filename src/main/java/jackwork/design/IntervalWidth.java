package jackwork.design;

import jackwork.stock.Uncertain;

/**
 * How wide the interval about one number may be, from end to end.
 *
 * @param usual wider is unusual, in the number's unit
 * @param most wider is refused, likewise
 */
record IntervalWidth(double usual, double most) {

    /** Of money and its habits, which differ more than what is measured: the widest of our own guesses is 3.6. */
    private static final double USUAL_OF_MONEY = 4;

    private static final double MOST_OF_MONEY = 12;
    /** What arithmetic leaves of two that are alike. */
    private static final double SAME = 1e-9;

    /**
     * Of a number where a word stands. The scale is the number itself, however small it may get: 0.5 mm is little of a
     * board and much of a rod. Where 0 is usual (a clearance, a tilt), a share of the number would say nothing, and half
     * of what is usual serves beneath that.
     */
    static IntervalWidth of(Word word, double value) {
        double scale = Math.abs(value);
        return word.quantity()
                .map(quantity -> {
                    Range range = Range.of(word).orElseThrow();
                    double least = range.usualFrom() <= 0 ? (range.usualTo() - range.usualFrom()) / 2 : 0;
                    double from = Math.max(scale, least);
                    return new IntervalWidth(quantity.usualSpread() * from, quantity.mostSpread() * from);
                })
                // Of nothing no share can be taken.
                .orElseGet(() -> scale == 0
                        ? new IntervalWidth(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)
                        : new IntervalWidth(USUAL_OF_MONEY * scale, MOST_OF_MONEY * scale));
    }

    boolean isUsual(Uncertain number) {
        return width(number) <= usual * (1 + SAME);
    }

    boolean holds(double low, double high) {
        return high - low <= most * (1 + SAME);
    }

    static double width(Uncertain number) {
        return number.high() - number.low();
    }

    /** What is told of an interval that is refused. */
    String refusal(double value, double low, double high, String unit) {
        String of = unit.equals("1") ? "" : unit.equals("deg") ? " degrees" : " " + unit;
        return "read " + Range.plain(value) + " with an interval from " + Range.plain(low) + " to " + Range.plain(high)
                + of + ", expected one at most " + Range.plain(rounded(most)) + of
                + " wide: so wide a spread says nothing of it; measure it, and write between what and what it lay";
    }

    private static double rounded(double number) {
        return new java.math.BigDecimal(number)
                .round(new java.math.MathContext(3))
                .doubleValue();
    }
}
