package jackwork.app.core;

import java.util.Arrays;
import java.util.stream.Collectors;

/** Paths of numbers in words that a maker would use. */
final class Wording {

    private Wording() {}

    /** {@code figure.weights.tail.mass} as {@code tail: mass}; {@code box.coin-works.bucket.bearing} as {@code bucket: bearing}. */
    static String of(String path) {
        String[] words = path.split("\\.");
        boolean section = words.length > 3 && !words[1].equals("coin-works");
        String named = section
                ? words[2]
                : Arrays.stream(words, words[1].equals("coin-works") ? 2 : 1, words.length - 1)
                        .collect(Collectors.joining(" "));
        return named + ": " + words[words.length - 1].replace('-', ' ');
    }
}
