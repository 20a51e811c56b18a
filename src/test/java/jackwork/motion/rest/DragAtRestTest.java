package jackwork.motion.rest;

import static jackwork.motion.model.Mechanism.GRAVITY;
import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.Direction;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A bearing that drags whatever it bears, at rest, against levers worked out by hand. */
@Tag("quick")
class DragAtRestTest {

    /** µN·mm. */
    private static final double DRAG = 2e6;

    private static double finger(Direction direction, double share) {
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        int lever = builder.body("lever", 1, Point.ORIGIN, 1);
        Mechanism mechanism = builder.pin("fulcrum", lever, GROUND, Point.ORIGIN, 1, 1e-12, DRAG)
                .load(lever, new Point(-50, 0), new Point(0, -1e5), 0)
                .lever(lever, -0.1, new Point(100, 0), new Point(0, -1))
                .build();
        ForceSolver forces = new ForceSolver(mechanism);
        assertThat(forces.solve(new PoseSolver(mechanism), direction, share)).isTrue();
        return forces.fingerForce();
    }

    @Test
    void aLeverNeedsSoMuchMoreToGoDownAndSoMuchLessComesBack() {
        double alone = 1e5 * 50 / 100;
        assertThat(finger(Direction.PRESSING, 1)).isCloseTo(alone + DRAG / 100, within(1e-3));
        assertThat(finger(Direction.RETURNING, 1)).isCloseTo(alone - DRAG / 100, within(1e-3));
        assertThat(finger(Direction.RETURNING, 0)).isCloseTo(alone, within(1e-3));
    }

    /** A lamp on a hook that turns away under it follows until its weight overcomes what holds the bearing. */
    private static void hangs(double friction, double drag) {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = builder.body("lever", 1e-9, new Point(50, 0), 1);
        builder.pin("fulcrum", lever, GROUND, Point.ORIGIN, 0, 0)
                .lever(lever, Math.toRadians(-30), new Point(100, 0), new Point(0, -1));
        int lamp = builder.body("lamp", 20, new Point(80, -40), 500);
        builder.pin("hook", lamp, lever, new Point(80, 0), 2, friction, drag);
        double most = Math.toDegrees(Math.asin((friction * 2 * 20 * GRAVITY + drag) / (20 * GRAVITY * 40)));
        StrokeResult result = StrokeSolver.solve(builder.build(), 61);
        for (int i = 0; i <= 60; i++) {
            double there = Math.max(-30 * i / 60.0, -most);
            assertThat(Math.toDegrees(result.pose()[i][3 * lamp + 2])).isCloseTo(there, within(1e-6));
            double back = Math.min(most, -most + 30 * (60 - i) / 60.0);
            assertThat(Math.toDegrees(result.returnPose()[i][3 * lamp + 2])).isCloseTo(back, within(1e-6));
        }
        // The finger turns the lever against what the hook holds.
        assertThat(result.pressForce()[59] * 100 * Math.cos(Math.toRadians(29.5)))
                .isCloseTo(
                        -20 * GRAVITY * 80 * Math.cos(Math.toRadians(29.5)) + friction * 2 * 20 * GRAVITY + drag,
                        within(2e4));
    }

    @Test
    void dragAloneHoldsAHangingPart() {
        hangs(1e-9, 1.2e6);
    }

    @Test
    void dragAndFrictionCircleAddUp() {
        hangs(0.4, 0.7e6);
    }
}
