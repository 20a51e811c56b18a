package jackwork.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is told in words, its numbers still numbers: {@code say("it moves {} by stroke"
 * + " {}", mm(way), stroke(by))}. Read as
 * text it is in the units of the files; who shows inches takes the pieces.
 *
 * @param pieces in order; empty when there is nothing to say
 */
public record Sentence(List<Said> pieces) implements CharSequence {

    /** Where nothing needs saying. */
    public static final Sentence NOTHING = new Sentence(List.of());

    private static final String PLACE = "{}";

    /**
     * A stretch of text, or a number with its unit.
     *
     * @param words in the units of the files
     * @param inches the same with inches; null where that is no other
     * @param value of a number; null for text
     * @param unit of a number; null for text
     */
    public record Said(
            String words,
            @Nullable String inches,
            @Nullable Double value,
            @Nullable String unit) {

        private static Said of(Object told) {
            if (told instanceof Measure measure) {
                String inches = measure.inches();
                String words = measure.words();
                return new Said(words, inches.equals(words) ? null : inches, measure.value(), measure.unit());
            }
            return new Said(String.valueOf(told), null, null, null);
        }

        private Said finer(double a, double b, int decimals) {
            Double told = value;
            String of = unit;
            if (told == null || of == null || (Math.abs(told) != Math.abs(a) && Math.abs(told) != Math.abs(b))) {
                return this;
            }
            boolean named = words.contains(" ") || words.contains("°");
            return of(new Measure(told, of, decimals, named));
        }

        private boolean isText() {
            return unit == null;
        }
    }

    public Sentence {
        pieces = List.copyOf(pieces);
    }

    /**
     * A sentence.
     *
     * @param text with {@code {}} where something is told
     * @param told in order: a {@link Measure}, another sentence, or whatever is text; one for each place
     */
    public static Sentence say(String text, Object... told) {
        List<Said> pieces = new ArrayList<>();
        int from = 0;
        for (Object one : told) {
            int at = text.indexOf(PLACE, from);
            if (at < 0) {
                throw new IllegalArgumentException("more is told than there are places in: " + text);
            }
            add(pieces, Said.of(text.substring(from, at)));
            if (one instanceof Sentence other) {
                other.pieces.forEach(piece -> add(pieces, piece));
            } else {
                add(pieces, Said.of(one));
            }
            from = at + PLACE.length();
        }
        if (text.indexOf(PLACE, from) >= 0) {
            throw new IllegalArgumentException("less is told than there are places in: " + text);
        }
        add(pieces, Said.of(text.substring(from)));
        return new Sentence(pieces);
    }

    /** Text without a number to show otherwise, whatever is in it. */
    public static Sentence plain(String text) {
        return say(PLACE, text);
    }

    /** Text joins the text before it. */
    private static void add(List<Said> pieces, Said next) {
        int last = pieces.size() - 1;
        if (next.isText() && last >= 0 && pieces.get(last).isText()) {
            pieces.set(last, Said.of(pieces.get(last).words() + next.words()));
        } else if (!next.isText() || !next.words().isEmpty()) {
            pieces.add(next);
        }
    }

    /** The same; two numbers that differ and would read alike are told with as many decimals as tell them apart. */
    Sentence tellingApart(double a, double b) {
        int decimals = Measure.decimalsApart(a, b);
        if (decimals == Measure.decimals(a)) {
            return this;
        }
        return new Sentence(
                pieces.stream().map(piece -> piece.finer(a, b, decimals)).toList());
    }

    /** With inches where the files have millimetres. */
    public String inches() {
        return pieces.stream()
                .map(piece -> piece.inches() == null ? piece.words() : piece.inches())
                .collect(Collectors.joining());
    }

    /** In the units of the files. */
    @Override
    public String toString() {
        return pieces.stream().map(Said::words).collect(Collectors.joining());
    }

    @Override
    public int length() {
        return toString().length();
    }

    @Override
    public char charAt(int index) {
        return toString().charAt(index);
    }

    @Override
    public CharSequence subSequence(int start, int end) {
        return toString().subSequence(start, end);
    }
}
