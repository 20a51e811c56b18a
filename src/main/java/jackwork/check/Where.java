package jackwork.check;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
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

    /** What the coin turns, where it turns, with the lever at rest. */
    static Where bucket(Assembly assembly) {
        return new Where(
                assembly.body(assembly.coinWorks().bucket()).name(),
                0.0,
                assembly.coinWorks().pivot());
    }

    static Where nowhere() {
        return new Where(null, null, null);
    }
}
