package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param from a point of one part
 * @param to a point of another
 * @param least mm; none when absent
 * @param most mm; none when absent
 */
@About("Limits how near and how far two points may be.")
public record LimitEntry(
        PointOf from,
        PointOf to,
        @Unit("mm") @Nullable Double least,
        @Unit("mm") @Nullable Double most) {}
