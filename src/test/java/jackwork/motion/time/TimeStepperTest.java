package jackwork.motion.time;

import static jackwork.motion.model.Mechanism.GRAVITY;
import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the stepper promises of itself: a finger with limits, the same bits, and no answer out of bounds. */
@Tag("quick")
class TimeStepperTest {

    private static final double MASS = 50;

    /** A lever with its weight 40 mm left of its pivot, pressed 80 mm right of it; held up by a stop. */
    private static TimeStepper lever(double friction) {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = builder.body("lever", MASS, new Point(-40, 0), 5000);
        Mechanism mechanism = builder.pin("fulcrum", lever, GROUND, Point.ORIGIN, 1.5, friction)
                .stop("rest", lever, GROUND, -0.4, 0)
                .lever(lever, -0.3, new Point(80, 0), new Point(0, -1))
                .build();
        return new TimeStepper(mechanism, 1e-3);
    }

    @Test
    void aFingerTooWeakDoesNotLiftTheWeight() {
        // The lever's balance: F 80 = m g 40.
        double needed = MASS * GRAVITY * 40 / 80;
        TimeStepper weak = lever(0);
        weak.finger(Finger.push(0.98 * needed, 30));
        assertThat(weak.runTo(0.5)).isTrue();
        assertThat(weak.pose()[2]).isCloseTo(0, within(1e-6));
        assertThat(weak.fingerForce()).isCloseTo(0.98 * needed, within(1e-6 * needed));
        TimeStepper strong = lever(0);
        strong.finger(Finger.push(1.02 * needed, 30));
        assertThat(strong.runTo(0.5)).isTrue();
        assertThat(strong.pose()[2]).isLessThan(-0.1);
    }

    @Test
    void aStrongFingerGoesNoFasterThanItMay() {
        TimeStepper stepper = lever(0);
        stepper.finger(Finger.push(20e6, 30));
        stepper.runTo(0.1);
        double arm = stepper.velocity()[2] * 80;
        assertThat(-arm * Math.cos(stepper.pose()[2])).isCloseTo(30, within(0.05));
        assertThat(stepper.fingerForce()).isBetween(0.0, 20e6);
        // Without friction its work is the energy gained, but for what the first blow and second order leave.
        assertThat(stepper.fingerWork()).isCloseTo(stepper.energyGained(), within(0.01 * stepper.fingerWork()));
    }

    @Test
    void letGoTheLeverFallsBackOnItsStopAndRests() {
        TimeStepper stepper = lever(0.3);
        stepper.finger(Finger.push(20e6, 60));
        stepper.runTo(0.2);
        assertThat(stepper.pose()[2]).isLessThan(-0.05);
        stepper.finger(Finger.OFF);
        stepper.runTo(1);
        assertThat(stepper.pose()[2]).isCloseTo(0, within(1e-6));
        assertThat(stepper.velocity()[2]).isCloseTo(0, within(1e-9));
        assertThat(stepper.fingerForce()).isZero();
    }

    @Test
    void theSameInputGivesTheSameBitsWhateverCameBefore() {
        TimeStepper used = lever(0.3);
        used.finger(Finger.push(3e6, 50));
        used.runTo(0.3);
        double[] first = used.pose().clone();
        used.begin(new double[] {-40, 0, 0}, new double[3]);
        used.runTo(0.3);
        assertThat(used.pose()).isEqualTo(first);
        TimeStepper fresh = lever(0.3);
        fresh.finger(Finger.push(3e6, 50));
        fresh.runTo(0.3);
        assertThat(fresh.pose()).isEqualTo(first);
    }

    @Test
    void aRunOutOfBoundsIsNotComputed() {
        // A spring far too stiff for the step: the midpoint rule runs away.
        MechanismBuilder builder = new MechanismBuilder();
        int arm = builder.body("arm", 10, new Point(50, 0), 1000);
        Mechanism mechanism = builder.pin("hinge", arm, GROUND, Point.ORIGIN, 0, 0)
                .torsionSpring("spring", arm, GROUND, 1e13, 0.01)
                .lever(arm, 0.1, new Point(50, 0), new Point(0, -1))
                .build();
        TimeStepper stepper = new TimeStepper(mechanism, 1e-2);
        assertThat(stepper.runTo(5)).isFalse();
        assertThat(stepper.isComputed()).isFalse();
        assertThat(stepper.time()).isLessThan(5);
    }

    /** A spring far too stiff for the step: its energy grows from step to step, and the run does not count. */
    @Test
    void energyFromNowhereIsNotComputed() {
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        int lever = builder.body("lever", 10, new Point(50, 0), 5000);
        Mechanism mechanism = builder.pin("pivot", lever, GROUND, Point.ORIGIN, 0, 0)
                .spring("spring", lever, new Point(50, 0), GROUND, new Point(50, 50), 1e9, 49, false)
                .lever(lever, 1, new Point(50, 0), new Point(0, 1))
                .build();
        TimeStepper coarse = new TimeStepper(mechanism, 1e-3);
        assertThat(coarse.runTo(0.5)).isFalse();
        TimeStepper fine = new TimeStepper(mechanism, 1e-5);
        assertThat(fine.runTo(0.5)).isTrue();
    }
}
