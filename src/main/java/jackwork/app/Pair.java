package jackwork.app;

import jackwork.geometry.Point;
import java.util.List;

/** A point, mm, as {@code [x, y]}. */
@Tuple
record Pair(@Places(4) double x, @Places(4) double y) {

    static Pair of(Point point) {
        return new Pair(point.x(), point.y());
    }

    static List<Pair> ring(List<Point> points) {
        return points.stream().map(Pair::of).toList();
    }
}
