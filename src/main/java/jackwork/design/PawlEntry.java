package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param tip the pawl and the centre of its rounded tip
 * @param tipRadius mm
 * @param wheel the ratchet; its outline is made from its teeth
 * @param at the ratchet's centre; the circle with the pawl's own name when absent
 * @param teeth number
 * @param radius over the teeth's tips, mm
 * @param depth of the teeth, mm
 * @param clockwise whether the pawl drives (or lets) it turn clockwise
 * @param first direction of the first tooth's tip from the centre, degrees; 0 when absent
 */
@About("A pawl and the ratchet wheel that it drives or holds.")
public record PawlEntry(
        PointOf tip,
        @Unit("mm") double tipRadius,
        String wheel,
        @Nullable Place at,
        int teeth,
        @Unit("mm") double radius,
        @Unit("mm") double depth,
        @Nullable Boolean clockwise,
        @Unit("deg") @Nullable Double first) {}
