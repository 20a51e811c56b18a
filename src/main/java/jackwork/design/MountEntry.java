package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * @param parts the parts that have this hole
 * @param rod the rod through it
 * @param at where; the circle with the mount's own name when absent
 */
@About("A hole by which figure and box are joined; both name it alike.")
public record MountEntry(
        List<String> parts, String rod, @Nullable Place at) {}
