package jackwork.app.wire;

import org.jspecify.annotations.Nullable;

/** Where a body's centre of mass stands, mm, and its turning since rest, degrees; null beyond the mechanism's reach. */
@Tuple
public record PoseEntry(
        @Nullable Double x, @Nullable Double y, @Nullable Double angle) {}
