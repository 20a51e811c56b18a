package jackwork.check;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Pin;
import jackwork.motion.rest.StrokeResult;
import jackwork.parts.Assembly;
import jackwork.parts.PinJoint;
import jackwork.stock.Uncertain;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the drag that bearings have whatever they bear takes of what brings the lever back: virtual work, over each step
 * of the stroke by itself.
 * <pre>
 *   F_drag dp = Σ M |dθ|    dp the way of the finger, dθ how far each bearing turns meanwhile, M its drag
 * </pre>
 * What that adds to the friction of bearings that bear more by it is left out: where drag takes all of the force, up to a
 * sixth of it in the demos. So it explains, and the cycle in time decides. Of parts
 * that the lever does not decide nothing is told so: they fall by themselves.
 */
public final class PivotDrag {

    /** Steps of which the finger hardly moves tell nothing, mm. */
    private static final double STILL = 1e-6;

    /**
     * Where the way back bears least.
     *
     * @param times what all bearings may drag, in expected drags; 0 where it does not come back, infinite where nothing
     *     turns, NaN where parts are free of the lever
     * @param stroke where that is, 0 to 1
     * @param force that pushes back there, N
     * @param drag of all bearings as expected, as felt at the finger there, N
     * @param alone what each may drag if all others do not, N·mm, wherever it bears least
     */
    public record Back(double times, double stroke, double force, double drag, Map<String, Double> alone) {}

    private PivotDrag() {}

    /** What each bearing is expected to drag, N·mm. */
    public static Uncertain expected(Assembly assembly) {
        return assembly.workshop().handlingOrGuess().drag();
    }

    /** The same design with that in every bearing. */
    static Assembly in(Assembly assembly) {
        double each = expected(assembly).value();
        return assembly.withDrags(pin -> each);
    }

    /** What a reserve for it says, of a margin that is left then. */
    static String reserve(Assembly assembly, double left, String unit) {
        return "bearings that drag " + Words.number(expected(assembly).value()) + " N·mm each leave "
                + Words.number(left) + " " + unit;
    }

    /** Of the lever let go anywhere, with as much drag in every bearing as is expected. */
    public static Back back(Assembly assembly, StrokeResult stroke) {
        return back(assembly, stroke, expected(assembly).value());
    }

    /** @param each what every bearing drags, N·mm */
    static Back back(Assembly assembly, StrokeResult stroke, double each) {
        Mechanism mechanism = stroke.mechanism();
        Mechanism.DriveData drive = mechanism.drive;
        double[] drawn = mechanism.drawnPose();
        Point arm = new Point(
                assembly.lever().pressDrawn().x() - drawn[3 * drive.body()],
                assembly.lever().pressDrawn().y() - drawn[3 * drive.body() + 1]);
        Map<String, PinJoint> joints = new HashMap<>();
        assembly.pins().forEach(pin -> joints.put(pin.name(), pin));
        Map<String, Double> alone = new LinkedHashMap<>();
        if (!mechanism.structure.freeBodies().isEmpty()) {
            return new Back(Double.NaN, 0, Double.NaN, Double.NaN, alone);
        }
        Back worst = new Back(Double.POSITIVE_INFINITY, 0, 0, 0, alone);
        for (int i = 0; i + 1 < stroke.stroke().length; i++) {
            double[] from = stroke.returnPose()[i];
            double[] to = stroke.returnPose()[i + 1];
            double force = Math.min(stroke.returnForce()[i], stroke.returnForce()[i + 1]) / 1e6;
            if (from == null || to == null || Double.isNaN(to[0]) || Double.isNaN(force)) {
                continue;
            }
            Point way = at(to, drive.body(), arm).minus(at(from, drive.body(), arm));
            double along = Math.abs(way.x() * drive.fingerX() + way.y() * drive.fingerY());
            if (along < STILL) {
                continue;
            }
            double turned = 0;
            for (Pin pin : mechanism.pins) {
                double turn = Math.abs(turn(from, to, pin.bodyA()) - turn(from, to, pin.bodyB()));
                if (joints.containsKey(pin.name()) && turn > 0) {
                    turned += turn;
                    alone.merge(pin.name(), Math.max(0, force) * along / turn, Math::min);
                }
            }
            double drag = each * turned / along;
            double times = drag > 0 ? Math.max(0, force) / drag : Double.POSITIVE_INFINITY;
            if (times < worst.times || worst.drag == 0) {
                worst = new Back(times, stroke.stroke()[i], force, drag, alone);
            }
        }
        return worst;
    }

    private static double turn(double[] from, double[] to, int body) {
        return body < 0 ? 0 : to[3 * body + 2] - from[3 * body + 2];
    }

    private static Point at(double[] pose, int body, Point arm) {
        return new Point(pose[3 * body], pose[3 * body + 1]).plus(arm.turned(pose[3 * body + 2]));
    }
}
