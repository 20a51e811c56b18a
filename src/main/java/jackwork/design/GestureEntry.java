package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param part the part that must move
 * @param point the point of it that is watched; the circle with the gesture's own name when absent
 * @param distance how far that point must have moved, mm at least
 * @param toward direction that counts, degrees (0 right, 90 up); any when absent
 * @param by stroke by which it must be there, 0 to 1; 1 when absent
 */
@About("What a part must have done by a given stroke.")
public record GestureEntry(
        String part,
        @Nullable Place point,
        @Unit("mm") double distance,
        @Unit("deg") @Nullable Double toward,
        @Unit("1") @Nullable Double by) {}
