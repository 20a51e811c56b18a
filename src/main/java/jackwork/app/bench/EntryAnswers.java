package jackwork.app.bench;

import jackwork.app.wire.Payload;
import jackwork.bench.BenchException;
import jackwork.bench.BenchLog;
import jackwork.bench.LogKind;
import jackwork.bench.Stamp;
import jackwork.bench.Stamped;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What became of entries that were sent together: each by itself is on the disk, or refused for good. An id that was logged
 * before counts as logged, so that whoever lost the answer may send all of it anew.
 */
record EntryAnswers(List<OneAnswer> results) implements Payload {

    /** As many as are taken at once. */
    static final int MOST = 200;

    record OneAnswer(String id, boolean logged, @Nullable String problem) {}

    /** @throws BenchException when the log cannot be reached: the same may be sent again */
    static <E> EntryAnswers of(List<E> entries, Function<E, String> id, Consumer<E> log) {
        return new EntryAnswers(
                entries.stream().map(entry -> one(entry, id.apply(entry), log)).toList());
    }

    private static <E> OneAnswer one(E entry, String id, Consumer<E> log) {
        try {
            if (!id.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")) {
                throw new IllegalArgumentException("read the id \"" + id + "\", expected a random UUID");
            }
            log.accept(entry);
            return new OneAnswer(id, true, null);
        } catch (BenchException e) {
            if (e.unreached()) {
                throw e;
            }
            return new OneAnswer(id, false, e.getMessage());
        } catch (IllegalArgumentException e) {
            return new OneAnswer(id, false, e.getMessage());
        }
    }

    static <T extends Stamped> void once(BenchLog log, LogKind<T> kind, Stamp stamp, Supplier<T> entry) {
        if (!log.has(kind, stamp.key())) {
            log.add(kind, entry.get());
        }
    }
}
