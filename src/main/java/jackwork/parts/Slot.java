package jackwork.parts;

import jackwork.geometry.Arc;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** A slot, or a bar, with round ends, straight or an arc. */
public final class Slot {

    private static final int ARC_STEPS = 24;

    private Slot() {}

    /** Round the straight line between two points. */
    public static Outline along(Point from, Point to, double width) {
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

    /** A slot along the arc through three points. */
    static Outline along(Point from, Point via, Point to, double width) {
        Point centre = Arc.centre(from, via, to);
        double span = Arc.span(centre, from, via, to);
        Point out = from.minus(centre).times(1 / from.distance(centre));
        double radius = from.distance(centre);
        double sense = Math.signum(span);
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i <= 2 * ARC_STEPS; i++) {
            Point at = out.turned(span * i / (2 * ARC_STEPS));
            ring.add(centre.plus(at.times(radius + width / 2)));
        }
        for (int i = 1; i < ARC_STEPS; i++) {
            Point at = out.turned(span);
            ring.add(to.plus(at.times(width / 2).turned(sense * Math.PI * i / ARC_STEPS)));
        }
        for (int i = 2 * ARC_STEPS; i >= 0; i--) {
            Point at = out.turned(span * i / (2 * ARC_STEPS));
            ring.add(centre.plus(at.times(radius - width / 2)));
        }
        for (int i = 1; i < ARC_STEPS; i++) {
            ring.add(from.minus(out.times(width / 2).turned(sense * Math.PI * i / ARC_STEPS)));
        }
        return Outline.of(ring);
    }
}
