package jackwork.make;

import jackwork.drawing.CutShape;
import jackwork.geometry.Point;
import java.util.List;

/** How far a cut reaches. */
final class Extent {

    private Extent() {}

    /** Rightmost and topmost, mm. */
    static double[] most(CutShape shape) {
        if (shape instanceof CutShape.Round round) {
            Point centre = round.circle().centre();
            double radius = round.circle().radius();
            return new double[] {centre.x() + radius, centre.y() + radius};
        }
        List<Point> points = shape instanceof CutShape.Ring ring ? ring.points() : ((CutShape.Line) shape).points();
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            right = Math.max(right, point.x());
            top = Math.max(top, point.y());
        }
        return new double[] {right, top};
    }
}
