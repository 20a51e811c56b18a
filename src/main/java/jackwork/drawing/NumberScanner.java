package jackwork.drawing;

/**
 * Reads numbers, flags and letters from an attribute by SVG's own number grammar, in which
 * {@code 1.5.5-2e1} is the three numbers 1.5, .5 and -20 (W3C SVG 2, 9.3.9).
 */
final class NumberScanner {

    private final SvgElement element;
    private final String attribute;
    private final String text;
    private int at;

    NumberScanner(SvgElement element, String attribute) {
        this.element = element;
        this.attribute = attribute;
        this.text = element.attribute(attribute);
    }

    boolean hasMore() {
        skipSeparators();
        return at < text.length();
    }

    boolean hasNumber() {
        skipSeparators();
        return at < text.length() && "+-.0123456789".indexOf(text.charAt(at)) >= 0;
    }

    double number() {
        skipSeparators();
        int start = at;
        skipSign();
        int digits = skipDigits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits += skipDigits();
        }
        if (digits == 0) {
            at = start;
            throw expected("a number");
        }
        skipExponent();
        double value = Double.parseDouble(text.substring(start, at));
        if (!Double.isFinite(value)) {
            at = start;
            throw expected("a number that is not beyond all bounds");
        }
        return value;
    }

    /** An arc's flag: a single 0 or 1, which needs nothing between it and the next number. */
    boolean flag() {
        skipSeparators();
        if (at < text.length() && (text.charAt(at) == '0' || text.charAt(at) == '1')) {
            return text.charAt(at++) == '1';
        }
        throw expected("a flag, 0 or 1,");
    }

    /** The next letter, left where it is; 0 at the end. */
    char peek() {
        skipSeparators();
        return at < text.length() ? text.charAt(at) : 0;
    }

    char letter() {
        skipSeparators();
        return at < text.length() ? text.charAt(at++) : 0;
    }

    /** The letters that follow directly, such as a unit or a function's name; may be empty. */
    String word() {
        int start = at;
        while (at < text.length() && (Character.isLetter(text.charAt(at)) || text.charAt(at) == '%')) {
            at++;
        }
        return text.substring(start, at);
    }

    void expect(char c) {
        skipSeparators();
        if (at >= text.length() || text.charAt(at) != c) {
            throw expected("\"" + c + "\"");
        }
        at++;
    }

    DrawingException expected(String what) {
        int from = Math.min(at, text.length());
        String read = from == text.length()
                ? "the end"
                : "\"" + text.substring(from, Math.min(text.length(), from + 12)) + "\"";
        return element.problem("in " + attribute + ", character " + (from + 1) + ": read " + read + ", " + what
                + " was expected; mend it or save the drawing again from the drawing program");
    }

    private void skipSeparators() {
        while (at < text.length() && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == ',')) {
            at++;
        }
    }

    private void skipSign() {
        if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
            at++;
        }
    }

    private int skipDigits() {
        int start = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at - start;
    }

    private void skipExponent() {
        int start = at;
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            skipSign();
            if (skipDigits() == 0) {
                // Not an exponent but a unit such as em.
                at = start;
            }
        }
    }
}
