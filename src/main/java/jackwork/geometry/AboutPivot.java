package jackwork.geometry;

import java.util.Arrays;
import java.util.List;

/**
 * An outline about a pivot, corner by corner, each with the edge that begins there, wood on its left: what {@link TurnedMeeting}
 * asks of it, once for all that it may meet. Immutable.
 */
public final class AboutPivot {

    final Point pivot;
    final int count;
    final double[] x;
    final double[] y;
    /** Of the corner, mm. */
    final double[] radius;

    final double[] alongX;
    final double[] alongY;
    final double[] length;
    /** Place along the edge that is nearest to the pivot, be it beyond its ends, mm. */
    final double[] foot;
    /** Distance of the edge's line from the pivot, mm. */
    final double[] off;
    /** Of the edge's farther end, mm. */
    final double[] reach;

    final double nearest;
    final double farthest;

    public AboutPivot(Outline outline, Point pivot) {
        this.pivot = pivot;
        int corners = outline.outer().size();
        for (List<Point> hole : outline.holes()) {
            corners += hole.size();
        }
        count = corners;
        x = new double[count];
        y = new double[count];
        radius = new double[count];
        alongX = new double[count];
        alongY = new double[count];
        length = new double[count];
        foot = new double[count];
        off = new double[count];
        reach = new double[count];
        int at = ring(outline.outer(), pivot, 0);
        for (List<Point> hole : outline.holes()) {
            at = ring(hole, pivot, at);
        }
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i < count; i++) {
            boolean beside = foot[i] < 0 || foot[i] > length[i];
            least = Math.min(least, beside ? radius[i] : off[i]);
            most = Math.max(most, radius[i]);
        }
        nearest = least;
        farthest = most;
    }

    /** Whether one could come to the other by turning about the pivot that both are told of. */
    public boolean mayMeet(AboutPivot other) {
        return nearest <= other.farthest + TurnedMeeting.BESIDE && other.nearest <= farthest + TurnedMeeting.BESIDE;
    }

    /** Edges that come anywhere so far from the pivot, mm. */
    int[] between(double least, double most) {
        int[] some = new int[count];
        int found = 0;
        for (int i = 0; i < count; i++) {
            if (off[i] <= most + TurnedMeeting.BESIDE && reach[i] >= least - TurnedMeeting.BESIDE) {
                some[found++] = i;
            }
        }
        return Arrays.copyOf(some, found);
    }

    private int ring(List<Point> ring, Point pivot, int start) {
        int n = ring.size();
        for (int i = 0; i < n; i++) {
            Point corner = ring.get(i);
            x[start + i] = corner.x() - pivot.x();
            y[start + i] = corner.y() - pivot.y();
            radius[start + i] = Math.sqrt(x[start + i] * x[start + i] + y[start + i] * y[start + i]);
        }
        for (int i = start; i < start + n; i++) {
            int next = i + 1 == start + n ? start : i + 1;
            double dx = x[next] - x[i];
            double dy = y[next] - y[i];
            length[i] = Math.sqrt(dx * dx + dy * dy);
            alongX[i] = dx / length[i];
            alongY[i] = dy / length[i];
            foot[i] = -(x[i] * alongX[i] + y[i] * alongY[i]);
            off[i] = Math.abs(x[i] * alongY[i] - y[i] * alongX[i]);
            reach[i] = Math.max(radius[i], radius[next]);
        }
        return start + n;
    }
}
