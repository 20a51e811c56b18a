package jackwork.parts;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** A straight slot with round ends. */
final class Slot {

    private static final int ARC_STEPS = 24;

    private Slot() {}

    static Outline along(Point from, Point to, double width) {
        Point direction = to.minus(from).times(1 / from.distance(to));
        Point left = new Point(-direction.y(), direction.x()).times(width / 2);
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i <= ARC_STEPS; i++) {
            ring.add(from.plus(left.turned(Math.PI * i / ARC_STEPS)));
        }
        for (int i = 0; i <= ARC_STEPS; i++) {
            ring.add(to.minus(left.turned(Math.PI * i / ARC_STEPS)));
        }
        return Outline.of(ring);
    }
}
