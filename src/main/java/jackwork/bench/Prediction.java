package jackwork.bench;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What virtual builds of a revision came to.
 *
 * @param passes builds in which every coin passes
 * @param numbers how many were drawn for each build
 * @param guesses how many of those are guesses
 * @param coins builds that pass, by coin
 * @param causes builds that fail, by the first cause
 */
public record Prediction(
        Stamp stamp,
        RevisionName revision,
        long seed,
        int builds,
        int passes,
        int numbers,
        int guesses,
        Map<String, Integer> coins,
        Map<String, Integer> causes)
        implements Stamped {

    public Prediction {
        Texts.require("builds", builds, 1, 1_000_000);
        Texts.require("passes", passes, 0, builds);
        Texts.require("guesses", guesses, 0, numbers);
        coins.forEach((coin, passing) -> Texts.require(coin, passing, 0, builds));
        causes.forEach((cause, failing) -> Texts.require(cause, failing, 1, builds));
        coins = Collections.unmodifiableMap(new TreeMap<>(coins));
        causes = Collections.unmodifiableMap(new TreeMap<>(causes));
    }
}
