package jackwork.motion.rest;

import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Point;
import jackwork.motion.model.Direction;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Beer and Johnston, Vector Mechanics for Engineers: Statics, ch. 8, Sample Problem 8.6: a 4 in
 * pulley on a 2 in shaft, µ = 0.20, 500 lb (book figures quoted from memory, rows recomputed).
 *
 * <p>Reach: the friction circle of one pin with the whole reaction in it, in both directions. The
 * rows "approx r mu" take the circle's radius as µ r, as the solver does.
 */
@Tag("outside")
@Tag("quick")
class JournalOutsideTest {

    private static final String TABLE = "/jackwork/motion/jamming.csv";

    /** Inches and pounds: the equations do not care. */
    private static double force(Point finger, Point press, Direction direction) {
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        int pulley = builder.body("pulley", 1, Point.ORIGIN, 1);
        // Pushing the finger down at the right raises the load at the left: the pulley turns clockwise.
        Mechanism mechanism = builder.pin("shaft", pulley, GROUND, Point.ORIGIN, 1, 0.20)
                .load(pulley, new Point(-2, 0), new Point(0, -500), 0)
                .lever(pulley, -0.1, press, finger)
                .build();
        PoseSolver poses = new PoseSolver(mechanism);
        ForceSolver forces = new ForceSolver(mechanism);
        assertThat(forces.solve(poses, direction, 1)).isTrue();
        return forces.fingerForce();
    }

    private static double published(String quantity) {
        return Published.value(TABLE, 3, "journal", "same, approx r mu", quantity);
    }

    @Test
    void verticalPullToStartRaising() {
        assertThat(force(new Point(0, -1), new Point(2, 0), Direction.PRESSING))
                .isCloseTo(published("P vertical to start raising"), within(1e-6));
    }

    @Test
    void verticalPullToHold() {
        assertThat(force(new Point(0, -1), new Point(2, 0), Direction.RETURNING))
                .isCloseTo(published("P vertical to hold"), within(1e-6));
    }

    @Test
    void horizontalPullToStartRaising() {
        assertThat(force(new Point(1, 0), new Point(0, 2), Direction.PRESSING))
                .isCloseTo(published("P horizontal to start raising"), within(1e-6));
    }
}
