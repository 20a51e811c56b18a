package jackwork.parts;

import jackwork.design.PawlEntry;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A ratchet: each tooth has a steep face that a pawl pushes or holds, and a long back over which it slips.
 *
 * @param teeth number
 * @param tip radius, mm
 * @param depth of a tooth, mm
 * @param undercut by how much the steep face leans in under its tip, so that the pawl is drawn in, rad
 * @param clockwise whether the wheel is driven clockwise
 */
public record RatchetWheel(int teeth, double tip, double depth, double undercut, boolean clockwise) {

    /** Rad. */
    private static final double UNDERCUT = Math.toRadians(5);

    /** @param turned angle of the first tooth's tip, rad */
    public Outline outline(Point centre, double turned) {
        List<Point> points = new ArrayList<>();
        double root = tip - depth;
        double lean = depth * Math.tan(undercut) / root;
        for (int k = 0; k < teeth; k++) {
            // The steep face looks towards the pawl that pushes it; the back falls from the tip to the next root.
            double at = turned + 2 * Math.PI * k / teeth;
            Point top = centre.plus(new Point(tip, 0).turned(at));
            Point foot = centre.plus(new Point(root, 0).turned(clockwise ? at - lean : at + lean));
            points.add(clockwise ? top : foot);
            points.add(clockwise ? foot : top);
        }
        return Outline.of(points);
    }

    /** Way of a tooth round the tip circle, mm. */
    public double pitch() {
        return 2 * Math.PI * tip / teeth;
    }

    /** The wheel that a pawl's entry describes. */
    static RatchetWheel of(PawlEntry pawl) {
        return new RatchetWheel(
                pawl.teeth(), pawl.radius(), pawl.depth(), UNDERCUT, Boolean.TRUE.equals(pawl.clockwise()));
    }

    /** Direction of the first tooth's tip, rad. */
    static double firstTooth(PawlEntry pawl) {
        Double first = pawl.first();
        return first == null ? 0 : Math.toRadians(first);
    }
}
