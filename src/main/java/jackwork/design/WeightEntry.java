package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param on the part that carries it
 * @param at where; the circle with the weight's own name when absent
 * @param what a nut or washer of the catalogue; else {@code mass} is given
 * @param count how many of them; 1 when absent
 * @param mass grams, for anything that is not in the catalogue
 */
@About("Nuts, washers or any other mass fixed to a part.")
public record WeightEntry(
        String on,
        @Nullable Place at,
        @Nullable String what,
        @Nullable Integer count,
        @Unit("g") @Nullable Double mass) {}
