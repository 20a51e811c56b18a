package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param gear the gear that rolls on it
 * @param part the bar; gaps between its teeth are cut from its outline
 * @param toward direction from the gear's centre to the bar, degrees (0 right, 90 up)
 * @param module size of the teeth, mm
 * @param teeth number cut on either side of the place of touch
 * @param pressureAngle degrees; 20 when absent
 */
@About("A bar with teeth on which a gear rolls.")
public record RackEntry(
        String gear,
        String part,
        @Unit("deg") double toward,
        @Unit("mm") double module,
        int teeth,
        @Unit("deg") @Nullable Double pressureAngle) {}
