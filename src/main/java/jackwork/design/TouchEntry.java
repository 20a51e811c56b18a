package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param part one part
 * @param peg the centre of a peg of it that touches; its outline when absent
 * @param rod the peg's rod
 * @param on the part that it touches, by its outline
 */
@About("Two parts that may push each other where they meet.")
public record TouchEntry(
        String part, @Nullable Place peg, @Nullable String rod, String on) {}
