package jackwork.motion.time;

import static jackwork.motion.model.Mechanism.GRAVITY;
import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.MechanismBuilder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A bearing that drags whatever it bears, and friction that holds firmer at rest, in time, against Newton's law of a wheel. */
@Tag("quick")
class DragInTimeTest {

    private static final double INERTIA = 800;
    private static final double MASS = 30;

    /** A wheel on its axle, and a lever that has no part in it. */
    private static int wheel(MechanismBuilder builder, double friction, double drag) {
        int lever = builder.body("lever", 1, new Point(900, 0), 100);
        builder.pin("fulcrum", lever, GROUND, new Point(900, 0), 1, 0)
                .lever(lever, 1, new Point(950, 0), new Point(0, -1));
        int wheel = builder.body("wheel", MASS, Point.ORIGIN, INERTIA);
        builder.pin("axle", wheel, GROUND, Point.ORIGIN, 1.5, friction, drag);
        return wheel;
    }

    @Test
    void aWheelRunsOut() {
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        double drag = 0.5e6;
        double speed = 60;
        int wheel = wheel(builder, 1e-9, drag);
        TimeStepper stepper = new TimeStepper(builder.build(), 1e-3);
        double[] velocity = new double[6];
        velocity[3 * wheel + 2] = speed;
        stepper.begin(stepper.pose().clone(), velocity);
        double stops = INERTIA * speed / drag;
        stepper.runTo(stops / 2);
        assertThat(stepper.velocity()[3 * wheel + 2]).isCloseTo(speed / 2, within(1e-6 * speed));
        stepper.runTo(3 * stops);
        assertThat(stepper.velocity()[3 * wheel + 2]).isCloseTo(0, within(TimeLimits.STILL));
        assertThat(stepper.pose()[3 * wheel + 2]).isCloseTo(INERTIA * speed * speed / (2 * drag), within(0.02));
        assertThat(stepper.isComputed()).isTrue();
    }

    /** How far the wheel has turned after 0.1 s under so many times its friction in motion, rad. */
    private static double turned(double times, double stiction) {
        MechanismBuilder builder = new MechanismBuilder().stiction(stiction);
        int wheel = wheel(builder, 0.3, 0.1e6);
        builder.torque(wheel, times * friction());
        TimeStepper stepper = new TimeStepper(builder.build(), 1e-3);
        stepper.runTo(0.1);
        assertThat(stepper.isComputed()).isTrue();
        return stepper.pose()[3 * wheel + 2];
    }

    /** µN·mm. */
    private static double friction() {
        return 0.3 * 1.5 * MASS * GRAVITY + 0.1e6;
    }

    @Test
    void whatRestsHoldsFirmer() {
        assertThat(turned(1.2, 1.25)).isCloseTo(0, within(1e-9));
        assertThat(turned(0.99, 1)).isCloseTo(0, within(1e-9));
    }

    @Test
    void whatSlidesIsRubbedNoMore() {
        double third = 0.3 * friction() / INERTIA * 0.1 * 0.1 / 2;
        // The first step still has the friction of what rests.
        assertThat(turned(1.3, 1.25)).isCloseTo(third, within(0.03 * third));
        double fifth = 0.2 * friction() / INERTIA * 0.1 * 0.1 / 2;
        assertThat(turned(1.2, 1)).isCloseTo(fifth, within(1e-3 * fifth));
    }
}
