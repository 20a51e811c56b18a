package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param part the part that carries the peg
 * @param peg where the peg sits in that part; the circle with the slide's own name when absent
 * @param in the part with the slot
 * @param from one end of the slot's middle line
 * @param via a point between them when the slot is an arc; straight when absent
 * @param to the other end
 * @param rod the peg's rod
 */
@About("A peg of one part that runs in a slot of another, straight or an arc.")
public record SlideEntry(
        String part,
        @Nullable Place peg,
        String in,
        Place from,
        @Nullable Place via,
        Place to,
        String rod) {}
