package jackwork.bench;

import org.jspecify.annotations.Nullable;

/**
 * An entry as the log has it.
 *
 * @param number by which it can be struck
 * @param struck why it does not count; null when it does
 */
public record Logged<T>(long number, T entry, @Nullable String struck) {

    public boolean counts() {
        return struck == null;
    }
}
