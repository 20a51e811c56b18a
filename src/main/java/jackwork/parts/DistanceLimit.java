package jackwork.parts;

import jackwork.design.LimitEntry;
import jackwork.geometry.Point;
import java.util.List;

/** Keeps points of two bodies at least and at most so far apart, mm; {@code most} may be infinite. */
public record DistanceLimit(String name, int a, Point onA, int b, Point onB, double least, double most)
        implements Link {

    @Override
    public List<Integer> bodies() {
        return List.of(a, b);
    }

    /** As it is written. */
    public static DistanceLimit of(String name, LimitEntry limit, Joining around) {
        Double least = limit.least();
        Double most = limit.most();
        return new DistanceLimit(
                name,
                around.body(limit.from().part()),
                around.at(limit.from()),
                around.body(limit.to().part()),
                around.at(limit.to()),
                least == null ? 0 : least,
                most == null ? Double.POSITIVE_INFINITY : most);
    }
}
