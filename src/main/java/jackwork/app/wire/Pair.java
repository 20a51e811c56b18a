package jackwork.app.wire;

import com.fasterxml.jackson.annotation.JsonFormat;
import jackwork.geometry.Point;
import java.util.List;

/** A point, mm, as {@code [x, y]}. */
@Tuple
@JsonFormat(shape = JsonFormat.Shape.ARRAY)
public record Pair(@Places(4) double x, @Places(4) double y) {

    public static Pair of(Point point) {
        return new Pair(point.x(), point.y());
    }

    public static List<Pair> ring(List<Point> points) {
        return points.stream().map(Pair::of).toList();
    }

    public Point point() {
        return new Point(x, y);
    }
}
