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

/** What happens on a stroke is found where closed forms put it. */
@Tag("quick")
class StrokeEventsTest {

    private static final double MASS = 100;

    /** A lever with its weight at an angle (degrees) from its pivot, 50 mm out, turned by {@code turn} degrees. */
    private static MechanismBuilder lever(double weightAt, double turn, double radius, double friction) {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = builder.body("lever", MASS, new Point(50, 0).turned(Math.toRadians(weightAt)), 1000);
        return builder.pin("fulcrum", lever, GROUND, Point.ORIGIN, radius, friction)
                .lever(lever, Math.toRadians(turn), new Point(80, 0), new Point(0, -1));
    }

    @Test
    void returnForceTurnsNegativeWhereTheWeightPassesTheTop() {
        // Weight 20° left of upright, turned clockwise by 40°: it stands over the pivot at half stroke,
        // and pulls the lever back before, ahead after.
        StrokeResult result = StrokeSolver.solve(lever(110, -40, 0, 0).build(), 41);
        MotionEvent hangs = result.events(MotionEvent.Kind.HANGS_UP).get(0);
        assertThat(hangs.stroke()).isCloseTo(0.5, within(1e-8));
        assertThat(hangs.until()).isEqualTo(1);
        assertThat(result.events(MotionEvent.Kind.RUNS_AHEAD).get(0).stroke()).isCloseTo(0.5, within(1e-8));
    }

    @Test
    void frictionMovesThatPlaceByTheFrictionCircle() {
        // The finger bears nothing there, so the pin bears the weight alone: it hangs once the weight's
        // lever arm is inside the friction circle, 50 sin(angle) = µ r.
        double radius = 10;
        double friction = 0.4;
        StrokeResult result =
                StrokeSolver.solve(lever(110, -40, radius, friction).build(), 41);
        double angle = Math.toDegrees(Math.asin(friction * radius / 50));
        assertThat(result.events(MotionEvent.Kind.HANGS_UP).get(0).stroke()).isCloseTo((20 - angle) / 40, within(1e-8));
        assertThat(result.events(MotionEvent.Kind.RUNS_AHEAD).get(0).stroke())
                .isCloseTo((20 + angle) / 40, within(1e-8));
    }

    @Test
    void aStopEndsTheStrokeWhereItStands() {
        StrokeResult result = StrokeSolver.solve(
                lever(150, -40, 0, 0)
                        .stop("buffer", 0, GROUND, Math.toRadians(-30), 0.1)
                        .build(),
                41);
        MotionEvent stop = result.events(MotionEvent.Kind.STOP_REACHED).get(0);
        assertThat(stop.stroke()).isCloseTo(0.75, within(1e-8));
        assertThat(stop.what()).contains("buffer");
        assertThat(result.reach()).isCloseTo(0.75, within(1e-8));
        assertThat(result.pressForce()[40]).isNaN();
    }

    @Test
    void theEndOfASlotEndsTheStrokeToo() {
        // Scotch yoke: a crank of 30 mm drives a slider up by 30 sin(angle); its guide ends at 15 mm, at 30°.
        MechanismBuilder builder = new MechanismBuilder();
        int crank = builder.body("crank", 1, new Point(15, 0), 100);
        int yoke = builder.body("yoke", 1, new Point(0, 0), 100);
        Mechanism mechanism = builder.pin("o", crank, GROUND, Point.ORIGIN, 0, 0)
                .slide("yoke", crank, yoke, new Point(30, 0), new Point(-50, 0), new Point(50, 0), 0)
                .slide("guide", yoke, GROUND, new Point(0, 0), new Point(0, -5), new Point(0, 15), 0)
                .slide("guide-2", yoke, GROUND, new Point(0, 40), new Point(0, 0), new Point(0, 100), 0)
                .lever(crank, Math.toRadians(60), new Point(30, 0), new Point(0, 1))
                .build();
        StrokeResult result = StrokeSolver.solve(mechanism, 61);
        MotionEvent end = result.events(MotionEvent.Kind.STOP_REACHED).get(0);
        assertThat(end.stroke()).isCloseTo(0.5, within(1e-8));
        assertThat(end.what()).contains("guide");
    }

    @Test
    void aPlungerOnAWedgeLocksAtItsFrictionAngle() {
        // A sliding block with a slot at 45° lifts a plunger in a guide with pegs 1000 mm apart, so that
        // the guide's own friction hardly counts; slot and rail with friction µ. Pushed along x it moves
        // while tan(45° + φ) is finite, that is below µ = 1.
        assertThat(wedge(0.4)).isEmpty();
        assertThat(wedge(0.99)).isEmpty();
        assertThat(wedge(1.01)).isNotEmpty();
        // Far beyond, forces that fit are found at every share but the smallest, and are no answer either.
        assertThat(wedge(6)).isNotEmpty();
    }

    private static java.util.List<MotionEvent> wedge(double friction) {
        MechanismBuilder builder = new MechanismBuilder();
        int block = builder.body("block", 1, new Point(0, 0), 100);
        int plunger = builder.body("plunger", 500, new Point(0, 60), 100);
        int rod = builder.body("rod", 1, new Point(-250, 0), 100);
        int arm = builder.body("arm", 1, new Point(-500, 500), 100);
        Mechanism mechanism = builder.slide(
                        "rail-1", block, GROUND, new Point(-200, 0), new Point(-900, 0), new Point(900, 0), friction)
                .slide("rail-2", block, GROUND, new Point(200, 0), new Point(-900, 0), new Point(900, 0), friction)
                .slide("ramp", plunger, block, new Point(0, 0), new Point(-90, 90), new Point(90, -90), friction)
                .slide("guide-1", plunger, GROUND, new Point(0, 20), new Point(0, -900), new Point(0, 900), 0)
                .slide("guide-2", plunger, GROUND, new Point(0, 1020), new Point(0, -900), new Point(0, 2900), 0)
                .pin("front", rod, block, new Point(0, 0), 0, 0)
                .pin("rear", rod, arm, new Point(-500, 0), 0, 0)
                .pin("top", arm, GROUND, new Point(-500, 1000), 0, 0)
                .lever(arm, 0.02, new Point(-500, 0), new Point(1, 0))
                .build();
        return StrokeSolver.solve(mechanism, 11).events(MotionEvent.Kind.LOCK_UP).stream()
                .filter(event -> event.direction() == Direction.PRESSING)
                .toList();
    }
}
