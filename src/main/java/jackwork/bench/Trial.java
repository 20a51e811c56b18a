package jackwork.bench;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * So many tries with one coin.
 *
 * @param piece serial of the piece tried; null for what has none yet
 * @param coin its code
 * @param failures how many of the tries failed, by cause ({@link Causes})
 */
public record Trial(
        Stamp stamp,
        RevisionName revision,
        @Nullable String piece,
        String coin,
        int tries,
        Map<String, Integer> failures)
        implements Stamped {

    public Trial {
        Texts.require("coin", coin, 1, 40);
        Texts.require("tries", tries, 1, 1_000_000);
        long sum = 0;
        for (Map.Entry<String, Integer> failure : failures.entrySet()) {
            if (!Causes.known(failure.getKey())) {
                throw new IllegalArgumentException("read the cause \"" + failure.getKey() + "\", expected one of "
                        + String.join(", ", Causes.NAMES) + ", other, other-WORD");
            }
            Texts.require(failure.getKey(), failure.getValue(), 1, 1_000_000);
            sum += failure.getValue();
        }
        if (sum > tries) {
            throw new IllegalArgumentException(sum + " failures of " + tries + " tries, expected no more than all");
        }
        failures = Collections.unmodifiableMap(new TreeMap<>(failures));
    }

    public int passes() {
        return tries - failures.values().stream().mapToInt(Integer::intValue).sum();
    }
}
