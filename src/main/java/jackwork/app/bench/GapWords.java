package jackwork.app.bench;

import org.jspecify.annotations.Nullable;

/** What the chance of a gap between builds and tries means, for people. */
final class GapWords {

    /** Below it, one looks for what the numbers miss; a habit in statistics, no more. */
    private static final double SELDOM = 0.05;

    private GapWords() {}

    /** @param chance null where there is nothing to lay beside each other */
    static String of(@Nullable Double chance) {
        if (chance == null) {
            return "";
        }
        if (chance > 0.995) {
            return "What was tried and what was predicted lie as near as can be.";
        }
        return chance < SELDOM
                ? "Chance alone sets them so far apart " + times(chance)
                        + ": look for what the workshop's numbers miss, or for what this piece has of its own."
                : "Chance alone sets them so far apart " + times(chance) + ": they do not contradict each other.";
    }

    private static String times(double chance) {
        long times = Math.round(100 * chance);
        if (chance < 0.01) {
            return "less than once in 100 times";
        }
        return times == 1 ? "about once in 100 times" : "about " + times + " in 100 times";
    }
}
