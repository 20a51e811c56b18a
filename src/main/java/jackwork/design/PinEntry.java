package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * @param parts the parts it passes through, two or more; parts of different bodies turn on each other here
 * @param rod a rod of the workshop
 * @param tight the part that grips the rod; the first when absent; the others run on it
 * @param at where; the circle with the pin's own name when absent
 * @param shoulder outside diameter of a printed sleeve on the rod that the others turn on; the rod itself when absent
 */
@About("A rod through several parts, about which they turn.")
public record PinEntry(
        List<String> parts,
        String rod,
        @Nullable String tight,
        @Nullable Place at,
        @Unit("mm") @Nullable Double shoulder) {}
