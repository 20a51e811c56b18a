package jackwork.design;

import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Every value that a {@code workshop.yaml} says or may say, by its path: found by walking the records that it is read into,
 * so that there is no list to keep. Minutes and money stand in catalogues of their own, {@link jackwork.stock.Operations}
 * and {@link jackwork.stock.PayNumbers}; only the price bands are here.
 */
public final class WorkshopValues {

    /** What kind of value it is, and so how it is written. */
    public enum Kind {
        /** With its interval and what it rests on. */
        NUMBER,
        /** A bare number. */
        PLAIN,
        /** Two or three numbers: {@code [400, 300]}. */
        SIZE,
        /** Text, or one of some words. */
        WORD
    }

    /**
     * @param path {@code sheets.birch-3.thickness}
     * @param about one sentence, as in the schema
     * @param unit of its numbers; empty for words
     * @param words as it stands in the file, or would; empty when nothing stands for it
     * @param number only of the kind that has an interval
     * @param written whether the file says it; else it is our guess
     */
    public record Value(
            String path,
            Kind kind,
            String about,
            String unit,
            String words,
            @Nullable Uncertain number,
            boolean written) {}

    private static final Set<String> NOT_HERE = Set.of("format", "times", "pay");

    private final List<Value> values = new ArrayList<>();
    private final Map<Class<?>, Record> guesses;

    private WorkshopValues(WorkshopFile workshop) {
        WorkshopFile.Fits fits = workshop.fits();
        this.guesses = Map.of(
                SpeedsEntry.class, workshop.laser().speedsOrGuess(),
                PrinterEntry.class, workshop.printerOrGuess(),
                HandlingEntry.class, workshop.handlingOrGuess(),
                WorkshopFile.Fits.class, new WorkshopFile.Fits(fits.running(), fits.press(), fits.pushOrGuess()));
    }

    public static List<Value> of(WorkshopFile workshop) {
        WorkshopValues walk = new WorkshopValues(workshop);
        walk.record("", WorkshopFile.class, workshop);
        List<BandEntry> bands = workshop.payOrNothing().bands();
        for (int i = 0; i < bands.size(); i++) {
            walk.record("pay.bands." + i, BandEntry.class, bands.get(i));
        }
        return List.copyOf(walk.values);
    }

    private void record(String path, Class<?> type, @Nullable Record said) {
        for (Word word : Vocabulary.of(type)) {
            if (!path.isEmpty() || !NOT_HERE.contains(word.key())) {
                Object value = said == null ? null : word.in(said);
                visit(path.isEmpty() ? word.key() : path + "." + word.key(), word, value, guess(type, word));
            }
        }
    }

    /** Of the same name among the guesses for that record; null when there are none. */
    private @Nullable Object guess(Class<?> type, Word word) {
        Record guesses = this.guesses.get(type);
        if (guesses == null) {
            return null;
        }
        for (Word other : Vocabulary.of(guesses.getClass())) {
            if (other.key().equals(word.key())) {
                return other.in(guesses);
            }
        }
        return null;
    }

    private void visit(String path, Word word, @Nullable Object said, @Nullable Object guess) {
        Class<?> type = word.component().getType();
        boolean nothing = said == null || (said instanceof List<?> list && list.isEmpty());
        Object value = nothing && guess != null ? guess : said;
        if (value instanceof Map<?, ?> map) {
            map.forEach((name, inner) -> inner(path + "." + name, word, inner));
        } else if (type.isRecord() && type != Uncertain.class) {
            record(path, type, (Record) said);
        } else if (value instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Record) {
            for (int i = 0; i < list.size(); i++) {
                inner(path + "." + i, word, list.get(i));
            }
        } else if (value instanceof List<?> list && list.isEmpty()) {
            return; // nothing of it is said, nothing is guessed
        } else {
            add(path, word, value, !nothing);
        }
    }

    private void inner(String path, Word word, @Nullable Object value) {
        if (value instanceof Record record && !(value instanceof Uncertain)) {
            record(path, record.getClass(), record);
        } else {
            add(path, word, value, true);
        }
    }

    private void add(String path, Word word, @Nullable Object value, boolean written) {
        values.add(new Value(
                path,
                kind(value),
                word.about(),
                word.isNumber() ? word.unit() : "",
                words(value),
                value instanceof Uncertain number ? number : null,
                written));
    }

    private static Kind kind(@Nullable Object value) {
        if (value instanceof Uncertain) {
            return Kind.NUMBER;
        }
        if (value instanceof Number) {
            return Kind.PLAIN;
        }
        return value instanceof List<?> list && list.get(0) instanceof Number ? Kind.SIZE : Kind.WORD;
    }

    private static String words(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Uncertain number) {
            return DesignEdit.words(number.value());
        }
        if (value instanceof Double number) {
            return DesignEdit.words(number);
        }
        return value instanceof List<?> list
                ? list.stream().map(WorkshopValues::words).collect(Collectors.joining(", "))
                : String.valueOf(value);
    }
}
