package jackwork.motion.rest;

import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Pin;
import java.util.List;

/**
 * A whole stroke, pressed and let back.
 *
 * @param mechanism that was solved
 * @param stroke samples, evenly from 0 to 1, [samples]
 * @param pose centre x, y (mm) and angle (rad) of each body, [samples][3 × bodies]; NaN beyond {@code reach}
 * @param returnPose the same on the way back; it differs where friction or a pawl holds what the press moved
 * @param pressForce finger force while pressing, µN, [samples]; NaN where it locks or is out of reach
 * @param returnForce force with which the lever pushes back while returning, µN, likewise
 * @param freeForce finger force without friction, µN; NaN where parts are free of the lever
 * @param determinantShare least of both directions, [samples]: 1 without friction, 0 where it locks;
 *     NaN where parts are free of the lever, and out of reach
 * @param pinLoad greatest of both directions, µN, [samples][pins]
 * @param rowLoad force of each row, greatest in size of both directions, µN, [samples][rows]
 * @param events in the order of the stroke
 * @param reach the stroke that it can be pressed to, 0 to 1
 * @param closureError greatest distance by which a joint missed, mm
 */
public record StrokeResult(
        Mechanism mechanism,
        double[] stroke,
        double[][] pose,
        double[][] returnPose,
        double[] pressForce,
        double[] returnForce,
        double[] freeForce,
        double[] determinantShare,
        double[][] pinLoad,
        double[][] rowLoad,
        List<MotionEvent> events,
        double reach,
        double closureError) {

    /** Greatest force in any row of a joint, in size, over each sample of both directions, µN, [samples]. */
    public double[] loadOf(String joint) {
        double[] load = new double[stroke.length];
        for (int j = 0; j < mechanism.joints.length; j++) {
            if (!mechanism.joints[j].name().equals(joint)) {
                continue;
            }
            for (int i = 0; i < load.length; i++) {
                for (int r = 0; r < mechanism.joints[j].rows(); r++) {
                    load[i] = Math.max(load[i], Math.abs(rowLoad[i][mechanism.firstRow[j] + r]));
                }
            }
        }
        return load;
    }

    /** Names of the pins, in the order of {@code pinLoad}. */
    public List<String> pinNames() {
        return java.util.Arrays.stream(mechanism.pins).map(Pin::name).toList();
    }

    /** Whether joints repeat each other, so that their loads are shared as clearances decide. */
    public boolean sharesLoads() {
        return mechanism.structure.redundant().length > 0;
    }

    public List<MotionEvent> events(MotionEvent.Kind kind) {
        return events.stream().filter(event -> event.kind() == kind).toList();
    }
}
