package jackwork.motion;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.time.TimeStepper;
import org.dyn4j.dynamics.Body;
import org.dyn4j.dynamics.joint.RevoluteJoint;
import org.dyn4j.geometry.Mass;
import org.dyn4j.geometry.MassType;
import org.dyn4j.geometry.Vector2;
import org.dyn4j.world.World;

/**
 * A chain of ten links of 20 mm and 2 g, let go 50° below level: one second of its swing by our stepper and by
 * dyn4j, a general physics library for games, at 100 of its units a metre, no damping, no rest.
 */
final class HangingChain {

    private static final int LINKS = 10;
    private static final double LENGTH = 20;
    private static final double MASS = 2;
    private static final double INERTIA = MASS * LENGTH * LENGTH / 12;
    private static final double TILT = Math.toRadians(-50);
    private static final double SECONDS = 1;
    /** mm of one of the peer's units. */
    private static final double UNIT = 10;
    /** Our stepper's step for the reference, s: its own error there is 1e-5 mm, and the peer converges to it. */
    private static final double FINE = 2e-5;

    private static final double FINEST_PEER = 1e-6;

    private HangingChain() {}

    private static Point joint(int k) {
        return new Point(LENGTH * k, 0).turned(TILT);
    }

    /** The free end after a second. */
    static Point ours(double step) {
        return ours(LINKS, SECONDS, step);
    }

    /** The free end of a chain of so many links after so many seconds. */
    static Point ours(int links, double seconds, double step) {
        MechanismBuilder builder = new MechanismBuilder();
        for (int i = 0; i < links; i++) {
            builder.body("link-" + i, MASS, joint(i).plus(joint(i + 1)).times(0.5), INERTIA);
        }
        for (int i = 0; i < links; i++) {
            builder.pin("pin-" + i, i, i == 0 ? Mechanism.GROUND : i - 1, joint(i), 0, 0);
        }
        Mechanism mechanism = builder.lever(0, 1, joint(1), new Point(0, 1)).build();
        TimeStepper stepper = new TimeStepper(mechanism, step);
        if (!stepper.runTo(seconds)) {
            return new Point(Double.NaN, Double.NaN);
        }
        int last = 3 * (links - 1);
        double[] pose = stepper.pose();
        return new Point(pose[last], pose[last + 1]).plus(new Point(LENGTH / 2, 0).turned(TILT + pose[last + 2]));
    }

    static Point peer(double step) {
        World<Body> world = new World<>();
        world.setGravity(new Vector2(0, -Mechanism.GRAVITY / UNIT));
        world.getSettings().setStepFrequency(step);
        world.getSettings().setAtRestDetectionEnabled(false);
        world.getSettings().setMaximumTranslation(1e9);
        world.getSettings().setMaximumRotation(1e9);
        Body before = new Body();
        before.setMass(MassType.INFINITE);
        world.addBody(before);
        for (int i = 0; i < LINKS; i++) {
            Body link = new Body();
            Point centre = joint(i).plus(joint(i + 1)).times(0.5);
            link.setMass(new Mass(new Vector2(0, 0), MASS, INERTIA / UNIT / UNIT));
            link.translate(centre.x() / UNIT, centre.y() / UNIT);
            link.setLinearDamping(0);
            link.setAngularDamping(0);
            world.addBody(link);
            Vector2 at = new Vector2(joint(i).x() / UNIT, joint(i).y() / UNIT);
            world.addJoint(new RevoluteJoint<>(before, link, at));
            before = link;
        }
        world.step((int) Math.round(SECONDS / step), step);
        Point half = new Point(LENGTH / 2 / UNIT, 0).turned(TILT);
        Vector2 end = before.getWorldPoint(new Vector2(half.x(), half.y()));
        return new Point(end.x * UNIT, end.y * UNIT);
    }

    /** Largest step, halved from 8 ms, at which ours ends within {@code error} mm of the reference. */
    static double ourStep(double error) {
        Point reference = ours(FINE);
        double step = 8e-3;
        while (!(ours(step).distance(reference) <= error)) {
            step /= 2;
        }
        return step;
    }

    /** @throws IllegalStateException when the peer does not get there at 1 MHz */
    static double peerStep(double error) {
        Point reference = ours(FINE);
        double step = 1e-3;
        while (!(peer(step).distance(reference) <= error)) {
            step /= 2;
            if (step < FINEST_PEER) {
                throw new IllegalStateException("the peer is not within " + error + " mm at 1 MHz");
            }
        }
        return step;
    }
}
