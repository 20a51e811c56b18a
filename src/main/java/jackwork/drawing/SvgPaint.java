package jackwork.drawing;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a shape is painted, as far as its attributes say; style sheets are not read.
 *
 * @param fill colour within, as written; null when nothing says so
 * @param stroke colour of the line
 */
record SvgPaint(@Nullable String fill, @Nullable String stroke) {

    /** What SVG takes where nothing is said: black within, no line. Left open, since a style sheet may say more. */
    static final SvgPaint USUAL = new SvgPaint(null, null);

    /** What an element inherits and says itself. */
    SvgPaint inside(SvgElement element) {
        String ownFill = element.property("fill");
        String ownStroke = element.property("stroke");
        return new SvgPaint(
                ownFill.isEmpty() || ownFill.equals("inherit") ? fill : ownFill,
                ownStroke.isEmpty() || ownStroke.equals("inherit") ? stroke : ownStroke);
    }

    /** Whether it has paint within. */
    boolean filled() {
        return !"none".equals(fill) && !"transparent".equals(fill);
    }

    /** The colour within as {@code #rrggbb}, when it is written as one. */
    Optional<String> colour() {
        if (fill == null) {
            return Optional.empty();
        }
        if (fill.matches("#[0-9A-Fa-f]{6}")) {
            return Optional.of(fill.toLowerCase(Locale.ROOT));
        }
        if (fill.matches("#[0-9A-Fa-f]{3}")) {
            StringBuilder full = new StringBuilder("#");
            fill.substring(1).chars().forEach(c -> full.append((char) c).append((char) c));
            return Optional.of(full.toString().toLowerCase(Locale.ROOT));
        }
        return Optional.empty();
    }
}
