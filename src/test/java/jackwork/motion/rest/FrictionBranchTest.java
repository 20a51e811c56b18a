package jackwork.motion.rest;

import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.Direction;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where two sets of forces fit, the one that hangs together with no friction is the answer; and where none does, the
 * mechanism locks, though others fit beyond.
 *
 * <p>A block pushed along x lifts a plunger by a ramp of slope t, and a strip beside it by a steeper one, slope T. The
 * strip is pressed against the plunger with H and drags it up. By hand, at the share s of all friction (µ on the ramp,
 * m between strip and plunger; all else runs freely), with W the plunger's load and N the ramp's force:
 * <pre>
 *   strip     n = H / (1 + s m T), the drag D = s m n
 *   plunger   N cos − s µ |N| sin = W − D        so N (1 − s µ t) cos = W − D where N pushes,
 *                                                   N (1 + s µ t) cos = W − D where it holds back
 *   finger    N sin + s µ |N| cos + T D
 * </pre>
 * While the ramp pushes it locks at s = 1 / (µ t). Once the drag carries the load it holds back, and cannot lock. The
 * first line has a root with N > 0 beyond both, which no growing friction leads to.
 */
@Tag("quick")
class FrictionBranchTest {

    private static final double LOAD = 1000;

    /** @param pressed H as a multiple of the load */
    private static ForceSolver solved(double slope, double steeper, double ramp, double drag, double pressed) {
        Point origin = Point.ORIGIN;
        Point beside = new Point(300, 0);
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        int block = builder.body("block", 1, origin, 100);
        int plunger = builder.body("plunger", 1, origin, 100);
        int strip = builder.body("strip", 1, beside, 100);
        int rod = builder.body("rod", 1, new Point(-250, 0), 100);
        int arm = builder.body("arm", 1, new Point(-500, 500), 100);
        slide(builder, "rail-1", block, GROUND, new Point(-200, 0), new Point(1, 0), 0);
        slide(builder, "rail-2", block, GROUND, new Point(200, 0), new Point(1, 0), 0);
        slide(builder, "guide-1", plunger, GROUND, new Point(0, 20), new Point(0, 1), 0);
        slide(builder, "guide-2", plunger, GROUND, new Point(0, 1020), new Point(0, 1), 0);
        slide(builder, "ramp", plunger, block, origin, new Point(-1, slope), ramp);
        slide(builder, "steeper", strip, block, beside, new Point(-1, steeper), 0);
        slide(builder, "drag", strip, plunger, beside, new Point(0, 1), drag);
        slide(builder, "upright", strip, GROUND, beside.plus(new Point(0, 1000)), new Point(0, 1), 0);
        Mechanism mechanism = builder.pin("front", rod, block, origin, 0, 0)
                .pin("rear", rod, arm, new Point(-500, 0), 0, 0)
                .pin("top", arm, GROUND, new Point(-500, 1000), 0, 0)
                .load(plunger, origin, new Point(0, -LOAD), 0)
                .load(strip, beside, new Point(-pressed * LOAD, 0), 0)
                .lever(arm, 0.001, new Point(-500, 0), new Point(1, 0))
                .build();
        ForceSolver forces = new ForceSolver(mechanism);
        boolean free = forces.solve(new PoseSolver(mechanism), Direction.PRESSING, 1);
        assertThat(free).isEqualTo(Double.isNaN(forces.lockShare()));
        return forces;
    }

    private static void slide(MechanismBuilder builder, String name, int a, int b, Point at, Point way, double mu) {
        Point far = way.times(500 / way.length());
        builder.slide(name, a, b, at, at.minus(far), at.plus(far), mu);
    }

    /** The drag carries the load before the ramp locks: pressed on, the ramp only holds back. */
    @ParameterizedTest
    @CsvSource({"9, 18, 0.5, 0.5, 38", "9, 18, 0.6, 0.5, 45", "12, 20, 0.4, 0.3, 60", "3, 6, 1.6, 0.5, 20"})
    void whatDragCarriesDoesNotLock(double slope, double steeper, double ramp, double drag, double pressed) {
        double carried = drag * pressed / (1 + drag * steeper);
        double normal = (1 - carried) / (1 + ramp * slope);
        assertThat(normal).isNegative();
        double byHand = normal * slope - ramp * normal + steeper * carried;
        ForceSolver forces = solved(slope, steeper, ramp, drag, pressed);
        assertThat(forces.lockShare()).isNaN();
        assertThat(forces.fingerForce() / LOAD).isCloseTo(byHand, within(1e-9));
    }

    /** The ramp locks before: what fits again with more friction, once the drag would carry the load, is no answer. */
    @ParameterizedTest
    @CsvSource({"9, 18, 0.5, 0.5, 25", "9, 18, 0.4, 0.5, 22.5", "3, 6, 1.6, 0.5, 14"})
    void aLockStaysALock(double slope, double steeper, double ramp, double drag, double pressed) {
        double lock = 1 / (ramp * slope);
        double carriedThere = lock * drag * pressed / (1 + lock * drag * steeper);
        double carriedInFull = drag * pressed / (1 + drag * steeper);
        assertThat(carriedThere).isLessThan(1);
        assertThat(carriedInFull).isGreaterThan(1);
        assertThat(solved(slope, steeper, ramp, drag, pressed).lockShare()).isCloseTo(lock, within(1e-6));
    }

    /** The plain case: without a strip to help, the ramp locks beyond its friction angle and only there. */
    @Test
    void theRampAloneLocksAtItsFrictionAngle() {
        assertThat(solved(9, 18, 0.99 / 9, 0, 1).lockShare()).isNaN();
        assertThat(solved(9, 18, 1.01 / 9, 0, 1).lockShare()).isCloseTo(1 / 1.01, within(1e-6));
    }
}
