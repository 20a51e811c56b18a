package jackwork.motion.time;

import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import org.junit.jupiter.api.Test;

/** A shaken box against the closed form of a sledge without friction, which stays where it is while the box moves. */
class ShakeTest {

    @Test
    void aSledgeStaysBehind() {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = builder.body("lever", 1, new Point(50, 500), 100);
        builder.pin("fulcrum", lever, GROUND, new Point(0, 500), 1, 0.3)
                .lever(lever, -0.5, new Point(100, 500), new Point(0, -1));
        int sledge = builder.body("sledge", 20, Point.ORIGIN, 500);
        builder.slide("front", sledge, GROUND, new Point(10, 0), new Point(-2000, 0), new Point(2000, 0), 0);
        builder.slide("rear", sledge, GROUND, new Point(-10, 0), new Point(-2000, 0), new Point(2000, 0), 0);
        Mechanism mechanism = builder.build();
        TimeStepper stepper = new TimeStepper(mechanism, 5e-4);
        stepper.begin(mechanism.drawnPose(), new double[mechanism.coordinates()]);
        Shake shake = new Shake(3000, 2, 0);
        stepper.shake(shake);
        double turns = 2 * Math.PI * shake.frequency();
        for (int i = 1; i <= 20; i++) {
            double t = 0.05 * i;
            assertThat(stepper.runTo(t)).isTrue();
            double behind = shake.acceleration() * (Math.sin(turns * t) / turns - t) / turns;
            assertThat(stepper.pose()[3 * sledge]).isCloseTo(behind, within(1e-3));
        }
        assertThat(stepper.energyFromNowhere()).isLessThan(1e-4);
    }
}
