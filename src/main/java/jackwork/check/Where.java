package jackwork.check;

import jackwork.geometry.Point;
import org.jspecify.annotations.Nullable;

/**
 * The place a finding speaks of.
 *
 * @param part a part or joint
 * @param stroke 0 to 1
 * @param at a point of the drawn position, mm
 */
public record Where(
        @Nullable String part,
        @Nullable Double stroke,
        @Nullable Point at) {

    static Where nowhere() {
        return new Where(null, null, null);
    }
}
