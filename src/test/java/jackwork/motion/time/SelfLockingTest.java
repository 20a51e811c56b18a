package jackwork.motion.time;

import static jackwork.motion.model.Mechanism.GRAVITY;
import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;

import jackwork.geometry.Point;
import jackwork.motion.model.MechanismBuilder;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * In time, each just on either side of holding by its own friction, exact limits by hand: a block on a slope
 * (tan), a string half round a post (e^{µπ}), a wheel on its axle (friction circle), a drawer pushed at its
 * edge (L = 2 µ e), a wedge under a load, a pawl on a tooth. Reach: what sticks must not creep by a micrometre in a second, what slides must.
 */
@Tag("quick")
class SelfLockingTest {

    private static final double NEAR = 0.01;
    /** mm that count as held, well above what a sticking row gives way. */
    private static final double HELD = 1e-3;

    private static TimeStepper stepper(MechanismBuilder builder) {
        Point aside = new Point(-5000, 0);
        int lever = builder.body("lever", 1, aside, 100);
        builder.pin("lever-pivot", lever, GROUND, aside, 0, 0).lever(lever, 1, aside, new Point(0, 1));
        return new TimeStepper(builder.build(), 1e-3);
    }

    private static double moved(TimeStepper stepper, int coordinate) {
        double from = stepper.pose()[coordinate];
        assertThat(stepper.runTo(1)).isTrue();
        return Math.abs(stepper.pose()[coordinate] - from);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.35, 0.5})
    void slope(double mu) {
        for (double share : new double[] {1 - NEAR, 1 + NEAR}) {
            double angle = Math.atan(mu * share);
            MechanismBuilder builder =
                    new MechanismBuilder().gravity(new Point(GRAVITY * Math.sin(angle), -GRAVITY * Math.cos(angle)));
            int block = builder.body("block", 20, new Point(0, 5), 2000);
            builder.touch(
                    "slope",
                    block,
                    List.of(new Point(-15, 0), new Point(15, 0), new Point(15, 10), new Point(-15, 10)),
                    GROUND,
                    List.of(new Point(-900, -9), new Point(900, -9), new Point(900, 0), new Point(-900, 0)),
                    mu,
                    0);
            double way = moved(stepper(builder), 0);
            assertThat(way < HELD)
                    .as("at %s of the friction angle: %s mm", share, way)
                    .isEqualTo(share < 1);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.25, 0.4})
    void stringOverAPost(double mu) {
        for (double share : new double[] {1 - NEAR, 1 + NEAR}) {
            double ratio = Math.exp(mu * Math.PI * share);
            MechanismBuilder builder = new MechanismBuilder();
            int heavy = builder.body("heavy", 10 * ratio, new Point(-10, -300), 1000);
            int light = builder.body("light", 10, new Point(10, -300), 1000);
            builder.cord(
                    "string",
                    heavy,
                    new Point(-10, -300),
                    List.of(new MechanismBuilder.CordGuide(GROUND, Point.ORIGIN, 10, -1, mu)),
                    light,
                    new Point(10, -300),
                    0);
            double way = moved(stepper(builder), 1);
            assertThat(way < HELD).as("at %s of the wrap: %s mm", share, way).isEqualTo(share < 1);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.4})
    void weightInsideTheFrictionCircle(double mu) {
        for (double share : new double[] {1 - NEAR, 1 + NEAR}) {
            MechanismBuilder builder = new MechanismBuilder();
            int wheel = builder.body("wheel", 50, new Point(mu * 10 * share, 0), 20000);
            builder.pin("axle", wheel, GROUND, Point.ORIGIN, 10, mu);
            double way = 10 * moved(stepper(builder), 2);
            assertThat(way < HELD).as("at %s of the circle: %s mm", share, way).isEqualTo(share < 1);
        }
    }

    /** A bracket on a rod, loaded beside it: it holds itself while its guide is shorter than 2 µ e. */
    @Test
    void bracketOnARod() {
        double mu = 0.25;
        for (double share : new double[] {1 - NEAR, 1 + NEAR}) {
            double length = 60;
            double beside = length / (2 * mu) / share;
            MechanismBuilder builder = new MechanismBuilder();
            int bracket = builder.body("bracket", 50, new Point(beside, 0), 50000);
            builder.slide("low", bracket, GROUND, new Point(0, -length / 2), new Point(0, -900), new Point(0, 900), mu)
                    .slide(
                            "high",
                            bracket,
                            GROUND,
                            new Point(0, length / 2),
                            new Point(0, -900),
                            new Point(0, 900),
                            mu);
            double way = moved(stepper(builder), 1);
            assertThat(way < HELD).as("at %s of the length: %s mm", share, way).isEqualTo(share < 1);
        }
    }

    /** A wedge under a load, on the bare ground: it holds while {@code tan(α − φ) ≤ µ (1 + w/W)}, near α = 2 φ. */
    @ParameterizedTest
    @ValueSource(doubles = {0.15, 0.3})
    void wedgeUnderALoad(double mu) {
        double ownShare = 0.02;
        double limit = Math.atan(mu) + Math.atan(mu * (1 + ownShare));
        for (double share : new double[] {1 - NEAR, 1 + NEAR}) {
            double slope = Math.tan(limit * share);
            MechanismBuilder builder = new MechanismBuilder();
            int load = builder.body("load", 100, new Point(50, 110), 50000);
            int wedge = builder.body("wedge", 100 * ownShare, new Point(50, 12), 2000);
            List<Point> outline =
                    List.of(new Point(0, 0), new Point(100, 0), new Point(100, 5 + 100 * slope), new Point(0, 5));
            builder.slide("low", load, GROUND, new Point(50, 100), new Point(50, -900), new Point(50, 900), 0)
                    .slide("high", load, GROUND, new Point(50, 120), new Point(50, -900), new Point(50, 900), 0)
                    .touch("ground", wedge, outline, GROUND, GROUND_OUTLINE, mu, 0)
                    .touch(
                            "slope",
                            load,
                            List.of(
                                    new Point(30, 5 + 30 * slope),
                                    new Point(70, 5 + 70 * slope),
                                    new Point(70, 130),
                                    new Point(30, 130)),
                            wedge,
                            outline,
                            mu,
                            0);
            TimeStepper stepper = stepper(builder);
            double from = stepper.pose()[3];
            assertThat(stepper.runTo(0.05)).isTrue();
            double way = Math.abs(stepper.pose()[3] - from);
            assertThat(way < HELD)
                    .as("at %s of the wedge's limit: %s mm", share, way)
                    .isEqualTo(share < 1);
        }
    }

    private static final List<Point> GROUND_OUTLINE =
            List.of(new Point(-900, -9), new Point(900, -9), new Point(900, 0), new Point(-900, 0));

    /**
     * A pawl's round tip on a ratchet's tooth that leans back by ψ: the tooth's push N turns it out with N L sin ψ,
     * friction holds it with µ N (L cos ψ + r).
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.35})
    void pawlOnALeaningTooth(double mu) {
        double length = 40;
        double radius = 1;
        // L sin ψ = µ (L cos ψ + r), by halving.
        double low = 0;
        double high = Math.PI / 4;
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            boolean holds = length * Math.sin(middle) <= mu * (length * Math.cos(middle) + radius);
            low = holds ? middle : low;
            high = holds ? high : middle;
        }
        for (double share : new double[] {1 - NEAR, 1 + NEAR}) {
            double psi = low * share;
            // The tip stands at (0, 50) above the wheel's axle, the pawl lies level to its right. The wheel turns
            // clockwise: its face, with its normal to the right and up by ψ, pushes the tip right and out.
            MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
            int pawl = builder.body("pawl", 1, new Point(20, 50), 500);
            int wheel = builder.body("wheel", 50, Point.ORIGIN, 50000);
            Point normal = new Point(Math.cos(psi), Math.sin(psi));
            Point along = new Point(-normal.y(), normal.x());
            Point at = new Point(0, 50).minus(normal.times(radius));
            builder.pin("pivot", pawl, GROUND, new Point(length, 50), 0, 0)
                    .pin("axle", wheel, GROUND, Point.ORIGIN, 0, 0)
                    .torque(wheel, -1e6)
                    .touchDisc(
                            "tooth",
                            pawl,
                            new Point(0, 50),
                            radius,
                            wheel,
                            List.of(
                                    at.plus(along.times(5)),
                                    at.plus(along.times(5)).minus(normal.times(10)),
                                    at.minus(along.times(5)).minus(normal.times(10)),
                                    at.minus(along.times(5))),
                            mu,
                            0);
            TimeStepper stepper = stepper(builder);
            assertThat(stepper.runTo(0.02)).isTrue();
            double way = 50 * Math.abs(stepper.pose()[5]);
            assertThat(way < HELD)
                    .as("at %s of the tooth's limit: %s mm", share, way)
                    .isEqualTo(share < 1);
        }
    }
}
