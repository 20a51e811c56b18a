package jackwork.design;

import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A number of a design or its workshop that can be, and seldom is: a slip of the pen most often.
 *
 * @param path by file: {@code workshop.fits.press}
 * @param field what it usually is, and what it may be
 * @param wide its interval, when it is that which is unusual; else null
 */
public record Unusual(
        String path, double value, Field field, @Nullable Wide wide) {

    /**
     * An interval wider than usual, all in the number's unit.
     *
     * @param usual how wide it usually is at most
     */
    public record Wide(double low, double high, double usual) {}

    /** All of them, in the files' order. */
    public static List<Unusual> of(Design design) {
        List<Unusual> found = new ArrayList<>();
        Walk.over(design.file(), "design", (path, entry, word, value) -> add(path, word, value, found));
        Walk.over(design.box(), "box", (path, entry, word, value) -> add(path, word, value, found));
        Walk.over(design.figure(), "figure", (path, entry, word, value) -> add(path, word, value, found));
        Walk.over(design.workshop(), "workshop", (path, entry, word, value) -> add(path, word, value, found));
        return List.copyOf(found);
    }

    private static void add(String path, Word word, @Nullable Object value, List<Unusual> found) {
        if (value instanceof Place.At place) {
            addIf(Range.OF_PLACES, path, word, place.point().x(), found);
            addIf(Range.OF_PLACES, path, word, place.point().y(), found);
        } else {
            Range.of(word).ifPresent(range -> {
                if (value instanceof Uncertain number) {
                    addIf(range, path, word, number.value(), found);
                    addIfWide(range, path, word, number, found);
                } else if (value instanceof Number number) {
                    addIf(range, path, word, number.doubleValue(), found);
                }
            });
        }
    }

    private static void addIf(Range range, String path, Word word, double number, List<Unusual> found) {
        if (!range.isUsual(number)) {
            found.add(new Unusual(path, number, Field.of(word, range), null));
        }
    }

    private static void addIfWide(Range range, String path, Word word, Uncertain number, List<Unusual> found) {
        IntervalWidth spread = IntervalWidth.of(word, number.value());
        if (!spread.isUsual(number)) {
            found.add(new Unusual(
                    path,
                    number.value(),
                    Field.of(word, range),
                    new Wide(number.low(), number.high(), spread.usual())));
        }
    }
}
