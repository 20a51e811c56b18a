package jackwork.motion.rest;

import static jackwork.motion.model.Mechanism.GRAVITY;
import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.Direction;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismException;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Parts that the lever does not decide: they come to rest where closed forms put them. */
@Tag("quick")
class FreePartsTest {

    /** A lever from the origin to (100, 0), pressed down at its end, without weight of its own. */
    private static int lever(MechanismBuilder builder, double turn) {
        int lever = builder.body("lever", 1e-9, new Point(50, 0), 1);
        builder.pin("fulcrum", lever, GROUND, Point.ORIGIN, 0, 0)
                .lever(lever, Math.toRadians(turn), new Point(100, 0), new Point(0, -1));
        return lever;
    }

    private static double angle(PoseSolver poses, int body) {
        return Math.toDegrees(poses.pose()[3 * body + 2]);
    }

    @Test
    void aPartThatNothingHoldsIsNamed() {
        MechanismBuilder builder = new MechanismBuilder();
        lever(builder, 10);
        builder.body("tail", 1, new Point(-20, 0), 10);
        assertThatThrownBy(builder::build)
                .isInstanceOf(MechanismException.class)
                .hasMessageContaining("tail");
    }

    @Test
    void aHangingPartHangsStraightDown() {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = lever(builder, -30);
        int lamp = builder.body("lamp", 20, new Point(80, -40), 500);
        builder.pin("hook", lamp, lever, new Point(80, 0), 1, 0);
        PoseSolver poses = new PoseSolver(builder.build());
        for (int i = 0; i <= 10; i++) {
            assertThat(poses.moveTo(i / 10.0)).isTrue();
            assertThat(angle(poses, lamp)).isCloseTo(0, within(1e-7));
        }
    }

    @Test
    void frictionHoldsAHangingPartBackByTheFrictionCircle() {
        // Turned with the lever until its weight's arm is the friction circle: L sin(angle) = µ r.
        MechanismBuilder builder = new MechanismBuilder();
        int lever = lever(builder, -30);
        int lamp = builder.body("lamp", 20, new Point(80, -40), 500);
        builder.pin("hook", lamp, lever, new Point(80, 0), 10, 0.4);
        double most = Math.toDegrees(Math.asin(0.4 * 10 / 40));
        StrokeResult result = StrokeSolver.solve(builder.build(), 61);
        for (int i = 0; i <= 60; i++) {
            double expected = Math.max(-30 * i / 60.0, -most);
            assertThat(Math.toDegrees(result.pose()[i][3 * lamp + 2])).isCloseTo(expected, within(1e-6));
            double back = Math.min(most, -most + 30 * (60 - i) / 60.0);
            assertThat(Math.toDegrees(result.returnPose()[i][3 * lamp + 2])).isCloseTo(back, within(1e-6));
        }
    }

    @Test
    void aStringLiftsAWeightByTheCapstanLaw() {
        // The string goes from the lever's middle straight up to a post of 5 mm, half round it, and down to a
        // weight in an upright guide.
        double mu = 0.25;
        Mechanism mechanism = hoist(mu, 0);
        StrokeResult result = StrokeSolver.solve(mechanism, 21);
        assertThat(result.reach()).isEqualTo(1);
        double weight = 30 * GRAVITY;
        for (int i = 1; i < 20; i++) {
            double[] pose = result.pose()[i];
            Point end = new Point(50, 0).turned(pose[2]);
            Point post = new Point(55, 200);
            double wrap = wrap(end, post);
            double arm = arm(end, post);
            double path = path(end, post);
            assertThat(pose[4]).as("height").isCloseTo(100 + (path - path(new Point(50, 0), post)), within(1e-8));
            double tension = weight * Math.exp(mu * wrap);
            double finger = tension * arm / (100 * Math.cos(pose[2]));
            assertThat(result.pressForce()[i]).isCloseTo(finger, within(1e-6 * finger));
            double less = weight * Math.exp(-mu * wrap) * arm / (100 * Math.cos(pose[2]));
            assertThat(result.returnForce()[i]).isCloseTo(less, within(1e-6 * less));
        }
    }

    private static Mechanism hoist(double friction, double slack) {
        return hoist(friction, slack, 1e9);
    }

    /** @param most that the weight may stand above the floor, mm */
    private static Mechanism hoist(double friction, double slack, double most) {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = lever(builder, -20);
        int weight = builder.body("weight", 30, new Point(60, 100), 500);
        return builder.slide("guide-1", weight, GROUND, new Point(60, 95), new Point(60, -900), new Point(60, 900), 0)
                .slide("guide-2", weight, GROUND, new Point(60, 105), new Point(60, -900), new Point(60, 900), 0)
                .stop("none", lever, GROUND, -3, 3)
                .distanceStop("floor", weight, new Point(60, 100), GROUND, new Point(60, 0), 100, most)
                .cord(
                        "cord",
                        lever,
                        new Point(50, 0),
                        List.of(new MechanismBuilder.CordGuide(GROUND, new Point(55, 200), 5, -1, friction)),
                        weight,
                        new Point(60, 100),
                        slack)
                .build();
    }

    /** Angle between the span from {@code end} and straight down on the far side, clockwise over the post. */
    private static double wrap(Point end, Point post) {
        double distance = end.distance(post);
        Point toward = post.minus(end);
        double direction = Math.atan2(toward.y(), toward.x()) + Math.asin(5 / distance);
        return direction + Math.PI / 2;
    }

    private static double path(Point end, Point post) {
        double distance = end.distance(post);
        return Math.sqrt(distance * distance - 25) + 5 * wrap(end, post);
    }

    private static double arm(Point end, Point post) {
        double direction = wrap(end, post) - Math.PI / 2;
        return end.x() * Math.sin(direction) - end.y() * Math.cos(direction);
    }

    @Test
    void aSlackStringGoesTautWhereItsSlackIsUsedUp() {
        StrokeResult result = StrokeSolver.solve(hoist(0, 4), 41);
        MotionEvent taut = result.events(MotionEvent.Kind.TAKES_HOLD).stream()
                .filter(e -> e.what().contains("cord"))
                .findFirst()
                .orElseThrow();
        assertThat(taut.direction()).isEqualTo(Direction.PRESSING);
        Point end = new Point(50, 0).turned(Math.toRadians(-20 * taut.stroke()));
        Point post = new Point(55, 200);
        assertThat(path(end, post) - path(new Point(50, 0), post)).isCloseTo(4, within(1e-4));
        assertThat(result.events(MotionEvent.Kind.LETS_GO)).anySatisfy(event -> {
            assertThat(event.direction()).isEqualTo(Direction.RETURNING);
            assertThat(event.what()).contains("cord");
            assertThat(event.stroke()).isCloseTo(taut.stroke(), within(1e-4));
        });
    }

    /** Of two things that stand against each other both are named, where the string has taken what room there was. */
    @Test
    void aStringThatPullsAgainstAnEndIsNamedWithIt() {
        double room = 8;
        StrokeResult result = StrokeSolver.solve(hoist(0, 0, 100 + room), 41);
        MotionEvent end = result.events(MotionEvent.Kind.STOP_REACHED).get(0);
        assertThat(end.what()).contains("cord").contains("floor").contains(" against ");
        Point lifted = new Point(50, 0).turned(Math.toRadians(-20 * end.stroke()));
        Point post = new Point(55, 200);
        assertThat(path(lifted, post) - path(new Point(50, 0), post)).isCloseTo(room, within(1e-3));
    }

    @Test
    void parallelCranksMoveExactly() {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = builder.body("crank", 1, new Point(0, 15), 100);
        int rod = builder.body("rod", 5, new Point(50, 30), 5000);
        int second = builder.body("second", 1, new Point(60, 15), 100);
        int third = builder.body("third", 1, new Point(100, 15), 100);
        Mechanism mechanism = builder.pin("o1", lever, GROUND, Point.ORIGIN, 0, 0)
                .pin("o2", second, GROUND, new Point(60, 0), 0, 0)
                .pin("o3", third, GROUND, new Point(100, 0), 0, 0)
                .pin("e1", rod, lever, new Point(0, 30), 0, 0)
                .pin("e2", rod, second, new Point(60, 30), 0, 0)
                .pin("e3", rod, third, new Point(100, 30), 0, 0)
                .lever(lever, Math.toRadians(-60), new Point(0, 30), new Point(1, 0))
                .build();
        assertThat(mechanism.structure.redundant()).hasSize(1);
        StrokeResult result = StrokeSolver.solve(mechanism, 31);
        assertThat(result.reach()).isEqualTo(1);
        assertThat(result.closureError()).isLessThan(1e-9);
        assertThat(result.pose()[30][3 * rod + 2]).isCloseTo(0, within(1e-12));
    }

    @Test
    void aThirdCrankOutOfTrueHoldsTheLeverFast() {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = builder.body("crank", 1, new Point(0, 15), 100);
        int rod = builder.body("rod", 5, new Point(50, 30), 5000);
        int second = builder.body("second", 1, new Point(60, 15), 100);
        int third = builder.body("third", 1, new Point(100, 20), 100);
        builder.pin("o1", lever, GROUND, Point.ORIGIN, 0, 0)
                .pin("o2", second, GROUND, new Point(60, 0), 0, 0)
                .pin("o3", third, GROUND, new Point(110, 10), 0, 0)
                .pin("e1", rod, lever, new Point(0, 30), 0, 0)
                .pin("e2", rod, second, new Point(60, 30), 0, 0)
                .pin("e3", rod, third, new Point(100, 30), 0, 0)
                .lever(lever, Math.toRadians(-60), new Point(0, 30), new Point(1, 0));
        assertThatThrownBy(builder::build)
                .isInstanceOf(MechanismException.class)
                .hasMessageContaining("one too many");
    }

    @Test
    void gearsTurnByTheirTeethAndPushApart() {
        // A pinion of 12 on the lever's axle drives a wheel of 36 that winds up a weight.
        MechanismBuilder builder = new MechanismBuilder();
        int pinion = builder.body("pinion", 1, Point.ORIGIN, 100);
        int wheel = builder.body("wheel", 1e-6, new Point(24, 0), 100);
        Mechanism mechanism = builder.gravity(new Point(0, 0))
                .pin("o1", pinion, GROUND, Point.ORIGIN, 0, 0)
                .pin("o2", wheel, GROUND, new Point(24, 0), 0, 0)
                .mesh("mesh", pinion, Point.ORIGIN, 12, wheel, new Point(24, 0), 36, Math.toRadians(20), 0)
                .load(wheel, new Point(24, 0), Point.ORIGIN, 9e6)
                .lever(pinion, Math.toRadians(-400), new Point(10, 0), new Point(0, -1))
                .build();
        PoseSolver poses = new PoseSolver(mechanism);
        ForceSolver forces = new ForceSolver(mechanism);
        assertThat(poses.moveTo(0.9)).isTrue();
        assertThat(poses.pose()[3 * wheel + 2]).isCloseTo(Math.toRadians(120), within(1e-12));
        assertThat(poses.moveTo(0)).isTrue();
        assertThat(forces.solve(poses, Direction.PRESSING, 1)).isTrue();
        // 9 N·mm on the wheel of radius 18 is 0.5 N at the teeth, 3 N·mm on the pinion of 6.
        assertThat(Math.abs(forces.fingerForce())).isCloseTo(3e6 / 10, within(1.0));
        assertThat(Math.abs(forces.pinForceX(1))).isCloseTo(0.5e6 * Math.tan(Math.toRadians(20)), within(1e-3));
        assertThat(Math.abs(forces.pinForceY(1))).isCloseTo(0.5e6, within(1e-3));
    }

    @Test
    void aRiderLiesStillUntilItsSlopeIsTheFrictionAngle() {
        double mu = 0.35;
        StrokeResult result = StrokeSolver.solve(rider(30, 10, mu), 81);
        MotionEvent end = result.events().stream()
                .filter(e -> e.kind() == MotionEvent.Kind.STOP_REACHED || e.kind() == MotionEvent.Kind.FALLS_OVER)
                .findFirst()
                .orElseThrow();
        assertThat(end.what()).isEqualTo("block slides away");
        assertThat(40 * end.stroke()).isCloseTo(Math.toDegrees(Math.atan(mu)), within(1e-3));
    }

    @Test
    void aTallRiderTipsBeforeItSlides() {
        // 10 wide, its centre 15 up: it tips when tan(slope) = 5/15.
        StrokeResult result = StrokeSolver.solve(rider(10, 30, 0.6), 81);
        MotionEvent gone = result.events(MotionEvent.Kind.FALLS_OVER).get(0);
        assertThat(gone.what()).isEqualTo("block");
        assertThat(40 * gone.stroke()).isCloseTo(Math.toDegrees(Math.atan(5 / 15.0)), within(1e-3));
    }

    /** A block, wide × high mm, on the lever's flat top, the lever turned down by 40°. */
    private static Mechanism rider(double wide, double high, double friction) {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = lever(builder, -40);
        int block = builder.body("block", 10, new Point(50, high / 2), 10 * (wide * wide + high * high) / 12);
        return builder.touch(
                        "seat",
                        block,
                        List.of(
                                new Point(50 - wide / 2, 0),
                                new Point(50 + wide / 2, 0),
                                new Point(50 + wide / 2, high),
                                new Point(50 - wide / 2, high)),
                        lever,
                        List.of(new Point(0, -10), new Point(120, -10), new Point(120, 0), new Point(0, 0)),
                        friction,
                        0)
                .build();
    }

    @Test
    void anOverCentreWeightFallsToItsOtherRest() {
        // A weight upright on a hinge of the lever, between two stops 20° either side: as the lever turns
        // it stands over its hinge and goes over.
        MechanismBuilder builder = new MechanismBuilder();
        int lever = lever(builder, -30);
        int flag = builder.body("flag", 5, new Point(80, 0).plus(new Point(0, 40).turned(Math.toRadians(10))), 100);
        builder.pin("hinge", flag, lever, new Point(80, 0), 1, 0)
                .stop("either", flag, lever, Math.toRadians(-40), Math.toRadians(5));
        StrokeResult result = StrokeSolver.solve(builder.build(), 61);
        MotionEvent fall = result.events(MotionEvent.Kind.FALLS_OVER).get(0);
        // At rest it leans on the stop at +5°, that is 15° left of upright; the lever takes it past upright at 15°.
        assertThat(30 * fall.stroke()).isCloseTo(15, within(1e-3));
        assertThat(fall.what()).isEqualTo("flag");
        assertThat(result.pose()[60][3 * flag + 2]).isCloseTo(Math.toRadians(-30 - 40), within(1e-9));
        // It leans the other way from the lever now, and stays so on the way back.
        assertThat(result.returnPose()[0][3 * flag + 2]).isCloseTo(Math.toRadians(-40), within(1e-9));
    }

    /**
     * A flag upright on its hinge, held so by a spring from its tip up to a hook that the lever lets down. Upright is a
     * rest all the way, but from k (d − s) D L/d = m g L_c on it stands on its edge, and either side is as good.
     */
    @Test
    void whatStandsOnItsEdgeTipsOver() {
        double mass = 40;
        double stiffness = 2e5;
        double free = 20;
        double tall = 40;
        double centre = 25;
        MechanismBuilder builder = new MechanismBuilder();
        int lever = lever(builder, -20);
        int ram = builder.body("ram", 1e-6, new Point(60, 120), 1);
        int flag = builder.body("flag", mass, new Point(60, 30 + centre), 2000);
        Mechanism mechanism = builder.slide(
                        "yoke", ram, lever, new Point(60, 0), new Point(-900, 0), new Point(900, 0), 0)
                .slide("guide-1", ram, GROUND, new Point(60, 110), new Point(60, -900), new Point(60, 900), 0)
                .slide("guide-2", ram, GROUND, new Point(60, 130), new Point(60, -900), new Point(60, 900), 0)
                .pin("hinge", flag, GROUND, new Point(60, 30), 0, 0)
                .stop("either", flag, GROUND, -0.5, 0.5)
                .spring("spring", ram, new Point(60, 110), flag, new Point(60, 30 + tall), stiffness, free, false)
                .build();
        StrokeResult result = StrokeSolver.solve(mechanism, 41);
        MotionEvent fall = result.events(MotionEvent.Kind.FALLS_OVER).get(0);
        assertThat(fall.what()).isEqualTo("flag");
        assertThat(fall.direction()).isEqualTo(Direction.PRESSING);
        double down = 60 * Math.tan(Math.toRadians(20 * fall.stroke()));
        double length = 40 - down;
        double upright = stiffness * (length - free) * (length + tall) * tall / length;
        assertThat(upright / (mass * GRAVITY * centre)).isCloseTo(1, within(1e-4));
        // Leaning, it rests where the spring's own length says the same.
        double high = 80 - 60 * Math.tan(Math.toRadians(20));
        double leaning = result.pose()[40][3 * flag + 2];
        double span = Math.hypot(tall * Math.sin(leaning), high - tall * Math.cos(leaning));
        assertThat(Math.abs(leaning)).isGreaterThan(0.1);
        assertThat(stiffness * (span - free) * high * tall / span).isCloseTo(mass * GRAVITY * centre, within(1.0));
    }

    @Test
    void whatIsDrawnStandingOnItsEdgeIsNamedAtOnce() {
        MechanismBuilder builder = new MechanismBuilder();
        lever(builder, -10);
        int flag = builder.body("flag", 5, new Point(200, 40), 100);
        builder.pin("hinge", flag, GROUND, new Point(200, 0), 0, 0).stop("either", flag, GROUND, -0.5, 0.5);
        StrokeResult result = StrokeSolver.solve(builder.build(), 11);
        MotionEvent fall = result.events(MotionEvent.Kind.FALLS_OVER).get(0);
        assertThat(fall.stroke()).isZero();
        assertThat(fall.what()).isEqualTo("flag");
        assertThat(Math.abs(result.pose()[5][3 * flag + 2])).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void frictionKeepsWhatStandsOnItsEdge() {
        MechanismBuilder builder = new MechanismBuilder();
        lever(builder, -10);
        int flag = builder.body("flag", 5, new Point(200, 40), 100);
        builder.pin("hinge", flag, GROUND, new Point(200, 0), 1.5, 0.3).stop("either", flag, GROUND, -0.5, 0.5);
        StrokeResult result = StrokeSolver.solve(builder.build(), 11);
        assertThat(result.events(MotionEvent.Kind.FALLS_OVER)).isEmpty();
        assertThat(result.pose()[5][3 * flag + 2]).isZero();
    }
}
