package jackwork.drawing;

/**
 * Lengths with units, in user units (pixels) of 1/96 inch: 1 in = 25.4 mm = 96 px = 72 pt = 6 pc
 * (W3C CSS Values 3, absolute lengths).
 */
final class SvgLength {

    static final double MM_PER_UNIT = 25.4 / 96;

    private SvgLength() {}

    /** @param whole what 100 % is, user units */
    static double of(SvgElement element, String attribute, double fallback, double whole) {
        if (!element.has(attribute) || element.attribute(attribute).equals("auto")) {
            return fallback;
        }
        NumberScanner scanner = new NumberScanner(element, attribute);
        double number = scanner.number();
        String unit = scanner.word();
        double perUnit = switch (unit) {
            case "", "px" -> 1;
            case "mm" -> 96 / 25.4;
            case "cm" -> 960 / 25.4;
            case "Q" -> 24 / 25.4;
            case "in" -> 96;
            case "pt" -> 96.0 / 72;
            case "pc" -> 16;
            case "%" -> whole / 100;
            default ->
                throw element.problem(attribute + " has the unit \"" + unit
                        + "\"; expected mm, cm, in, pt, pc, px, % or none; give it in mm");
        };
        if (scanner.hasMore()) {
            throw scanner.expected("nothing more");
        }
        return number * perUnit;
    }
}
