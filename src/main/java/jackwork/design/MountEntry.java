package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param part the part whose hole it is
 * @param rod the rod through it
 * @param at where; the circle with the mount's own name when absent
 */
@About("A hole by which figure and box are joined; both name it alike.")
public record MountEntry(
        String part,
        String rod,
        @Nullable Place at) {}
