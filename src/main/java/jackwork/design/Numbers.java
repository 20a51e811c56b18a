package jackwork.design;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as makers write them: {@code 12}, {@code 12 mm}, {@code 0.5 in}, {@code 1/8 in}, {@code 14 deg}. */
final class Numbers {

    private static final double MM_PER_INCH = 25.4;
    private static final Pattern NUMBER = Pattern.compile(
            "([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d{1,3})?)(?:/(\\d+(?:\\.\\d+)?))?\\s*([A-Za-z/°%]*)");

    private Numbers() {}

    /** The number in {@code unit}; empty when it is not a finite number in that unit. */
    static Optional<Double> read(String text, String unit) {
        Matcher matcher = NUMBER.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1));
        if (matcher.group(2) != null) {
            value /= Double.parseDouble(matcher.group(2));
        }
        String written = matcher.group(3);
        if (unit.equals("mm") && written.equals("in")) {
            value *= MM_PER_INCH;
        } else if (!written.isEmpty() && !written.equals(unit) && !(unit.equals("deg") && written.equals("°"))) {
            return Optional.empty();
        }
        return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
    }

    /** What to expect, in words. */
    static String expected(String unit) {
        return switch (unit) {
            case "mm" -> "a number of mm (or inches: 0.5 in)";
            case "deg" -> "a number of degrees";
            case "1" -> "a plain number";
            default -> "a number of " + unit;
        };
    }
}
