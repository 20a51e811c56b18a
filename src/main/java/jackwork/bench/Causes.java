package jackwork.bench;

import java.util.List;

/**
 * Why a try fails: the same words as for virtual builds, so that both can be laid beside each other, and {@code other} or
 * {@code other-WORD} for what no build knows.
 */
public final class Causes {

    /** In the order of a coin's way. */
    public static final List<String> NAMES = List.of(
            "slot", "gap", "bearing", "twist", "lands", "frees", "acts", "thrown", "returns", "locks", "refuses");

    private Causes() {}

    public static boolean known(String cause) {
        return NAMES.contains(cause) || cause.matches("other(-[a-z0-9]{1,40}){0,4}");
    }
}
