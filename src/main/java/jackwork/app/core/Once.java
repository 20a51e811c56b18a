package jackwork.app.core;

import jackwork.app.wire.TooLongException;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Works things out, each once for all who ask for it meanwhile, and keeps those that were asked for last. Whoever asks for
 * one thing waits for no other; what nobody waits for any more is dropped.
 */
public final class Once<K, V> {

    private final int kept;
    private final Duration longest;
    private final Map<K, V> known = new LinkedHashMap<>(16, 0.75f, true);
    private final Map<K, Begun<V>> under = new HashMap<>();

    private static final class Begun<V> {
        private final OwnCores<V> work;
        private int waiting;

        Begun(OwnCores<V> work) {
            this.work = work;
        }
    }

    /**
     * @param kept so many answers are kept
     * @param longest that anybody waits
     */
    public Once(int kept, Duration longest) {
        this.kept = kept;
        this.longest = longest;
    }

    public synchronized Optional<V> known(K key) {
        return Optional.ofNullable(known.get(key));
    }

    /**
     * The answer, kept or worked out; what the work throws, everybody who waits for it gets.
     *
     * @throws TooLongException when it takes longer than anybody waits
     * @throws java.util.concurrent.CancellationException when the caller is interrupted while waiting
     */
    public V of(K key, Supplier<V> work) {
        Begun<V> begun;
        synchronized (this) {
            V answer = known.get(key);
            if (answer != null) {
                return answer;
            }
            begun = under.computeIfAbsent(key, k -> new Begun<>(OwnCores.begin(work::get)));
            begun.waiting++;
        }
        try {
            V answer = begun.work.await(longest);
            keep(key, answer);
            return answer;
        } finally {
            leave(key, begun);
        }
    }

    private synchronized void keep(K key, V answer) {
        known.put(key, answer);
        if (known.size() > kept) {
            known.remove(known.keySet().iterator().next());
        }
    }

    /** The last one takes the work away: it is done and kept, has failed, or nobody wants it. */
    private synchronized void leave(K key, Begun<V> begun) {
        begun.waiting--;
        if (begun.waiting == 0) {
            under.remove(key, begun);
            begun.work.drop();
        }
    }
}
