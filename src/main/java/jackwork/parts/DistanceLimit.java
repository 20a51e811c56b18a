package jackwork.parts;

import jackwork.geometry.Point;
import java.util.List;

/** Keeps points of two bodies at least and at most so far apart, mm; {@code most} may be infinite. */
public record DistanceLimit(String name, int a, Point onA, int b, Point onB, double least, double most)
        implements Link {

    @Override
    public List<Integer> bodies() {
        return List.of(a, b);
    }
}
