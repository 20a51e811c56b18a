package jackwork.parts;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A spur gear with involute teeth, after the basic rack of ISO 53 (addendum 1, dedendum 1.25 modules, 20°).
 * Flanks are true involutes; below the base circle they run straight to the centre, where a generated tooth would
 * curve away. The hole of an internal gear is the same shape with addendum and dedendum exchanged.
 *
 * @param module mm
 * @param pressureAngle of the rack, rad
 * @param shift of the profile, in modules
 * @param addendum in modules
 * @param dedendum in modules
 */
public record InvoluteGear(
        int teeth, double module, double pressureAngle, double shift, double addendum, double dedendum) {

    private static final int FLANK = 10;

    /** A gear of standard depth. */
    public static InvoluteGear standard(int teeth, double module, double pressureAngle) {
        return new InvoluteGear(teeth, module, pressureAngle, 0, 1, 1.25);
    }

    /** The hole of an internal gear of standard depth. */
    public static InvoluteGear hole(int teeth, double module, double pressureAngle) {
        return new InvoluteGear(teeth, module, pressureAngle, 0, 1.25, 1);
    }

    public double pitchRadius() {
        return module * teeth / 2;
    }

    public double baseRadius() {
        return pitchRadius() * Math.cos(pressureAngle);
    }

    public double tipRadius() {
        return pitchRadius() + module * (addendum + shift);
    }

    public double rootRadius() {
        return pitchRadius() - module * (dedendum - shift);
    }

    /** inv α = tan α − α. */
    public static double involute(double angle) {
        return Math.tan(angle) - angle;
    }

    /** Angle from a tooth's middle to its flank at a radius, rad. */
    double halfAngle(double radius) {
        double at = Math.acos(Math.min(1, baseRadius() / radius));
        return (Math.PI / 2 + 2 * shift * Math.tan(pressureAngle)) / teeth + involute(pressureAngle) - involute(at);
    }

    /** Width of a tooth along its tip circle, mm; below 0 the flanks meet before it. */
    public double tipThickness() {
        return 2 * tipRadius() * halfAngle(tipRadius());
    }

    /** Width of a tooth along its narrowest circle near the root (the base or the root circle), mm. */
    public double rootThickness() {
        double radius = Math.max(baseRadius(), rootRadius());
        return 2 * rootRadius() * halfAngle(radius);
    }

    /** Least number of teeth that a rack would not undercut: 2 (1 − x) / sin² α. */
    public double leastTeeth() {
        return 2 * (addendum - shift) / Math.pow(Math.sin(pressureAngle), 2);
    }

    /** Least profile shift without undercut, modules. */
    public double leastShift() {
        return addendum - teeth * Math.pow(Math.sin(pressureAngle), 2) / 2;
    }

    public boolean isUndercut() {
        return shift < leastShift() - 1e-12;
    }

    /** Length over k teeth between parallel jaws, mm: m cos α [π (k − ½) + z inv α] + 2 x m sin α. */
    public double span(int k) {
        return module * Math.cos(pressureAngle) * (Math.PI * (k - 0.5) + teeth * involute(pressureAngle))
                + 2 * shift * module * Math.sin(pressureAngle);
    }

    /**
     * Mean number of teeth in touch with another gear at a centre distance; interference not considered.
     *
     * @param distance mm
     */
    public double contactRatio(InvoluteGear other, double distance) {
        double working = Math.acos((baseRadius() + other.baseRadius()) / distance);
        double mine = Math.sqrt(tipRadius() * tipRadius() - baseRadius() * baseRadius());
        double its = Math.sqrt(other.tipRadius() * other.tipRadius() - other.baseRadius() * other.baseRadius());
        return (mine + its - distance * Math.sin(working)) / (Math.PI * module * Math.cos(pressureAngle));
    }

    /**
     * The teeth.
     *
     * @param turned angle of the middle of the first tooth, rad
     * @param thinned width taken off every tooth at the pitch circle, mm, for play
     */
    public Outline outline(Point centre, double turned, double thinned) {
        List<Point> points = new ArrayList<>();
        double play = thinned / 2 / pitchRadius();
        double low = Math.max(baseRadius(), rootRadius());
        for (int k = 0; k < teeth; k++) {
            double middle = turned + 2 * Math.PI * k / teeth;
            List<Point> rising = new ArrayList<>();
            if (rootRadius() < low) {
                rising.add(at(rootRadius(), -(halfAngle(low) - play)));
            }
            for (int i = 0; i <= FLANK; i++) {
                double radius = low + (tipRadius() - low) * i / FLANK;
                rising.add(at(radius, -Math.max(0, halfAngle(radius) - play)));
            }
            for (Point p : rising) {
                points.add(centre.plus(p.turned(middle)));
            }
            for (int i = rising.size() - 1; i >= 0; i--) {
                Point p = rising.get(i);
                Point mirrored = new Point(p.x(), -p.y());
                if (i < rising.size() - 1 || p.y() != 0) {
                    points.add(centre.plus(mirrored.turned(middle)));
                }
            }
        }
        return Outline.of(points);
    }

    private static Point at(double radius, double angle) {
        return new Point(radius, 0).turned(angle);
    }
}
