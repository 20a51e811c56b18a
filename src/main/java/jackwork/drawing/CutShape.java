package jackwork.drawing;

import jackwork.geometry.Circle;
import jackwork.geometry.Point;
import java.util.List;

/** Where the beam, the blade or the pencil goes; mm, y up from the sheet's lower left corner. */
public sealed interface CutShape {

    /** A closed line through at least three points, the first not repeated. */
    record Ring(List<Point> points) implements CutShape {
        public Ring {
            points = checked(points, 3, "ring");
        }
    }

    /** A true circle, kept as one where the format can. */
    record Round(Circle circle) implements CutShape {}

    /** An open line through at least two points. */
    record Line(List<Point> points) implements CutShape {
        public Line {
            points = checked(points, 2, "line");
        }
    }

    private static List<Point> checked(List<Point> points, int least, String what) {
        if (points.size() < least || !points.stream().allMatch(Point::isFinite)) {
            throw new IllegalArgumentException("a " + what + " needs at least " + least
                    + " points, all finite numbers; got " + points.size() + " points");
        }
        return List.copyOf(points);
    }
}
