package jackwork.motion.time;

import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A bucket seen out of its plane, along what it is wide: its bearing is a tube about a rod, its far end reaches up. With
 * its weight beyond the tube's end it tips in time until the tube's edges take hold of the rod, and the far end has shifted by what
 * the static rule c/L · reach says. The rule is of first order; the tube's own d (1 − cos) and friction account for the
 * rest.
 */
@Tag("quick")
class TwistInTimeTest {

    private static final double ROD = 4;

    @ParameterizedTest
    @CsvSource({
        "0.1, 5.8, 60",
        "0.2, 5.8, 60",
        "0.1, 9.8, 60",
        "0.2, 9.8, 45",
        "0.2, 9.8, 75",
        "0.3, 9.8, 60",
        "0.2, 14, 60",
        "0.3, 14, 90"
    })
    void tipsAsFarAsTheRuleSays(double clearance, double bearing, double reach) {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = builder.body("lever", 1, new Point(500, 0), 100);
        builder.pin("fulcrum", lever, GROUND, new Point(500, 0), 1, 0)
                .lever(lever, 0.1, new Point(600, 0), new Point(0, -1));
        // The tube lies on the rod: its upper half by half the clearance lower than concentric.
        Point centre = new Point(bearing / 2 + 1, 10);
        int bucket = builder.body("bucket", 10, centre, 10 * 20 * 20);
        double low = ROD / 2;
        builder.touch("upper edge", bucket, box(-bearing / 2, bearing / 2, low, low + 3), GROUND, rod(), 0.2, 0);
        double under = ROD / 2 - (ROD + clearance);
        builder.touch("lower edge", bucket, box(-bearing / 2, bearing / 2, under - 3, under), GROUND, rod(), 0.2, 0);
        Mechanism mechanism = builder.build();
        TimeStepper stepper = new TimeStepper(mechanism, 1e-3);
        double[] pose = mechanism.drawnPose();
        stepper.begin(pose, new double[pose.length]);
        assertThat(stepper.runTo(1.5)).isTrue();
        double tilt = stepper.pose()[3 * bucket + 2];
        assertThat(Math.abs(stepper.velocity()[3 * bucket + 2])).isLessThan(1e-4);
        double shift = reach * Math.sin(Math.abs(tilt));
        double rule = clearance / bearing * reach;
        assertThat(shift).isCloseTo(rule, within(0.02 * rule));
    }

    private static List<Point> rod() {
        return box(-40, 40, -ROD / 2, ROD / 2);
    }

    private static List<Point> box(double left, double right, double bottom, double top) {
        return List.of(new Point(left, bottom), new Point(right, bottom), new Point(right, top), new Point(left, top));
    }
}
