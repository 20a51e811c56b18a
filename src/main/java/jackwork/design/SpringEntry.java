package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param from where one end is held
 * @param to where the other is held
 * @param stiffness N/mm
 * @param free length at which it bears nothing, mm
 * @param band true for an elastic band, which only pulls
 */
@About("A spring or an elastic band between two parts.")
public record SpringEntry(
        PointOf from,
        PointOf to,
        @Unit("N/mm") double stiffness,
        @Unit("mm") double free,
        @Nullable Boolean band) {}
