package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param part the part with the teeth
 * @param at its centre; the circle with the gear's own name when absent
 * @param teeth number
 * @param inside true for teeth on the inside of a ring
 */
@About("A gear. Its teeth are drawn from its mesh: the part needs no outline, a ring needs its outer one.")
public record GearEntry(
        String part,
        @Nullable Place at,
        int teeth,
        @Nullable Boolean inside) {}
