package jackwork.drawing;

import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Takes the steps of pixels out of a closed line and leaves its corners where they are. Pixels. */
final class LoopSmoothing {

    /** Passes of a quarter, a half, a quarter: steps of one pixel are gone after so many. */
    private static final int PASSES = 6;

    private LoopSmoothing() {}

    /** @param most how far a point may move, pixels */
    static List<Point> of(List<Point> loop, double most) {
        if (loop.size() < 8 * LoopCorners.REACH) {
            return loop;
        }
        LoopCorners sharp = LoopCorners.of(loop);
        List<Point> smooth = sharp.points();
        int count = smooth.size();
        for (int pass = 0; pass < PASSES; pass++) {
            List<Point> next = new ArrayList<>(count);
            for (int i = 0; i < count; i++) {
                Point here = smooth.get(i);
                Point neighbours = smooth.get((i + count - 1) % count).plus(smooth.get((i + 1) % count));
                Point moved = sharp.corner()[i] ? here : here.times(0.5).plus(neighbours.times(0.25));
                next.add(within(sharp.points().get(i), moved, most));
            }
            smooth = next;
        }
        return smooth;
    }

    private static Point within(Point from, Point to, double most) {
        double distance = from.distance(to);
        return distance <= most ? to : from.plus(to.minus(from).times(most / distance));
    }
}
