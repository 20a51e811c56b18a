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

    /**
     * A plunger on its ramp and the strip that drags it.
     *
     * @param slope t of the ramp
     * @param steeper T of the strip's
     * @param ramp µ
     * @param drag m
     * @param pressed H as a multiple of the load
     */
    private record Column(double slope, double steeper, double ramp, double drag, double pressed) {

        /** D as a multiple of the load, at a share of all friction. */
        double carried(double share) {
            return share * drag * pressed / (1 + share * drag * steeper);
        }

        /** What the finger must push for it, as a multiple of the load, where the ramp only holds back. */
        double byHand() {
            double normal = (1 - carried(1)) / (1 + ramp * slope);
            assertThat(normal).isNegative();
            return normal * slope - ramp * normal + steeper * carried(1);
        }
    }

    private static ForceSolver solved(Column... columns) {
        Point origin = Point.ORIGIN;
        MechanismBuilder builder = new MechanismBuilder().gravity(origin);
        int block = builder.body("block", 1, origin, 100);
        slide(builder, "rail-1", block, GROUND, new Point(-200, 0), new Point(1, 0), 0);
        slide(builder, "rail-2", block, GROUND, new Point(200, 0), new Point(1, 0), 0);
        for (int i = 0; i < columns.length; i++) {
            Column column = columns[i];
            Point at = new Point(1000 * i, 0);
            Point beside = at.plus(new Point(300, 0));
            int plunger = builder.body("plunger-" + i, 1, at, 100);
            int strip = builder.body("strip-" + i, 1, beside, 100);
            Point up = new Point(0, 1);
            slide(builder, "guide-" + i, plunger, GROUND, at.plus(up.times(20)), up, 0);
            slide(builder, "guide-above-" + i, plunger, GROUND, at.plus(up.times(1020)), up, 0);
            slide(builder, "ramp-" + i, plunger, block, at, new Point(-1, column.slope()), column.ramp());
            slide(builder, "steeper-" + i, strip, block, beside, new Point(-1, column.steeper()), 0);
            slide(builder, "drag-" + i, strip, plunger, beside, up, column.drag());
            slide(builder, "upright-" + i, strip, GROUND, beside.plus(up.times(1000)), up, 0);
            builder.load(plunger, at, new Point(0, -LOAD), 0)
                    .load(strip, beside, new Point(-column.pressed() * LOAD, 0), 0);
        }
        int rod = builder.body("rod", 1, new Point(-250, 0), 100);
        int arm = builder.body("arm", 1, new Point(-500, 500), 100);
        Mechanism mechanism = builder.pin("front", rod, block, origin, 0, 0)
                .pin("rear", rod, arm, new Point(-500, 0), 0, 0)
                .pin("top", arm, GROUND, new Point(-500, 1000), 0, 0)
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
        Column column = new Column(slope, steeper, ramp, drag, pressed);
        ForceSolver forces = solved(column);
        assertThat(forces.lockShare()).isNaN();
        assertThat(forces.fingerForce() / LOAD).isCloseTo(column.byHand(), within(1e-9));
        // Each of the two lines above has its own factor of the determinant.
        double left = (1 + drag * steeper) * (1 + ramp * slope);
        assertThat(forces.determinantShare()).isCloseTo(left, within(1e-9 * left));
    }

    /** Two such side by side: the false answer turns the determinant twice, and the end alone would not show it. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.17", "0.6, 0.2", "0.45, 0.3"})
    void twoTurnsAreNotTakenForNone(double ramp, double other) {
        Column soon = new Column(9, 18, ramp, 0.5, 45);
        Column later = new Column(9, 18, other, 0.5, 45);
        ForceSolver forces = solved(soon, later);
        assertThat(forces.lockShare()).isNaN();
        assertThat(forces.fingerForce() / LOAD).isCloseTo(soon.byHand() + later.byHand(), within(1e-9));
    }

    /** The ramp locks before: what fits again with more friction, once the drag would carry the load, is no answer. */
    @ParameterizedTest
    @CsvSource({"9, 18, 0.5, 0.5, 25", "9, 18, 0.4, 0.5, 22.5", "3, 6, 1.6, 0.5, 14"})
    void aLockStaysALock(double slope, double steeper, double ramp, double drag, double pressed) {
        double lock = 1 / (ramp * slope);
        Column column = new Column(slope, steeper, ramp, drag, pressed);
        assertThat(column.carried(lock)).isLessThan(1);
        assertThat(column.carried(1)).isGreaterThan(1);
        ForceSolver forces = solved(column);
        assertThat(forces.lockShare()).isCloseTo(lock, within(1e-6));
        assertThat(forces.determinantShare()).isZero();
    }

    /** The plain case: without a strip to help, the ramp locks beyond its friction angle and only there. */
    @Test
    void theRampAloneLocksAtItsFrictionAngle() {
        ForceSolver free = solved(new Column(9, 18, 0.99 / 9, 0, 1));
        assertThat(free.lockShare()).isNaN();
        assertThat(free.determinantShare()).isCloseTo(0.01, within(1e-9));
        assertThat(solved(new Column(9, 18, 1.01 / 9, 0, 1)).lockShare()).isCloseTo(1 / 1.01, within(1e-6));
    }
}
