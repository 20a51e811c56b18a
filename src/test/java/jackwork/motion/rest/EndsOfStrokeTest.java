package jackwork.motion.rest;

import static jackwork.motion.model.Mechanism.GRAVITY;
import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Where a way begins nothing has moved yet, and joints may only just begin to turn: forces there are the limits from
 * within the way, by closed forms of this class alone.
 */
@Tag("quick")
class EndsOfStrokeTest {

    /** A lever on a level arm lifts a block in an upright guide by an upright link. Lengths mm, friction as numbers. */
    private record Lift(double arm, double reach, double link, double circle, double rubbing, double apart) {

        private static final double MASS = 40;

        static Lift any(Random random) {
            return new Lift(
                    20 + 30 * random.nextDouble(),
                    60 + 60 * random.nextDouble(),
                    30 + 50 * random.nextDouble(),
                    0.2 + random.nextDouble(),
                    0.1 + 0.4 * random.nextDouble(),
                    4 + 10 * random.nextDouble());
        }

        /** @param hangs whether something hangs there as well that the lever does not decide */
        Mechanism mechanism(boolean hangs) {
            MechanismBuilder builder = new MechanismBuilder();
            int lever = builder.body("lever", 1e-9, Point.ORIGIN, 1);
            int rod = builder.body("link", 1e-9, new Point(-arm, link / 2), 1);
            Point foot = new Point(-arm, link);
            int block = builder.body("block", MASS, foot, 1000);
            if (hangs) {
                int bob = builder.body("bob", 5, new Point(300, -40), 100);
                builder.pin("hook", bob, GROUND, new Point(300, 0), 1, 0.3);
            }
            Point high = foot.plus(new Point(0, apart));
            Point low = foot.minus(new Point(0, apart));
            return builder.pin("fulcrum", lever, GROUND, Point.ORIGIN, 0, 0)
                    .pin("drive", lever, rod, new Point(-arm, 0), 1, circle)
                    .pin("foot", rod, block, foot, 1, circle)
                    .slide("high", GROUND, block, high, at(-900), at(900), rubbing)
                    .slide("low", GROUND, block, low, at(-900), at(900), rubbing)
                    .lever(lever, Math.toRadians(-12), new Point(reach, 0), new Point(0, -1))
                    .build();
        }

        private Point at(double y) {
            return new Point(-arm, y);
        }

        /**
         * The finger's force as the stroke goes to 0, µN. The link leans a hair as soon as the lever turns, so that both its
         * pins rub one way: its force touches both friction circles. Its sideways part and the moment of the foot's pin
         * bear on the guide.
         *
         * @param sense 1 pressing, −1 returning
         */
        double finger(int sense) {
            double lean = 2 * circle / link;
            double c = 1 / Math.sqrt(1 - lean * lean);
            double sideways = lean;
            double moment = circle / apart;
            double guide = rubbing * (Math.abs(moment - sideways) + Math.abs(moment + sideways)) / 2;
            double lifted = MASS * GRAVITY / (1 - sense * guide * c);
            return lifted * (arm + sense * circle * c) / reach;
        }
    }

    @Test
    void aLinkThatBeginsToLeanRubsAtBothItsEnds() {
        Random random = new Random(7);
        for (int k = 0; k < 20; k++) {
            Lift lift = Lift.any(random);
            for (boolean hangs : new boolean[] {false, true}) {
                StrokeResult result = StrokeSolver.solve(lift.mechanism(hangs), 41);
                assertThat(result.pressForce()[0])
                        .as("%s pressing, hangs %s", lift, hangs)
                        .isCloseTo(lift.finger(1), within(1e-7 * lift.finger(1)));
                assertThat(result.returnForce()[0])
                        .as("%s returning, hangs %s", lift, hangs)
                        .isCloseTo(lift.finger(-1), within(1e-7 * lift.finger(-1)));
            }
        }
    }

    /** However many samples: the ends are limits, not the neighbours' values. */
    @Test
    void theEndsDoNotHangOnTheSamples() {
        Mechanism mechanism = Lift.any(new Random(8)).mechanism(true);
        StrokeResult few = StrokeSolver.solve(mechanism, 5);
        StrokeResult many = StrokeSolver.solve(mechanism, 301);
        for (double[][] pair : List.of(
                new double[][] {few.pressForce(), many.pressForce()},
                new double[][] {few.returnForce(), many.returnForce()})) {
            assertThat(pair[0][0]).isCloseTo(pair[1][0], within(1e-7 * pair[1][0]));
            assertThat(pair[0][4]).isCloseTo(pair[1][300], within(1e-7 * pair[1][300]));
        }
    }

    /** A hanging part on a rough hook turns with the lever until its weight breaks it loose: let back, it turns at once. */
    @Test
    void whatSticksAtTheTurnStaysStuck() {
        MechanismBuilder builder = new MechanismBuilder();
        int lever = builder.body("lever", 1e-9, new Point(50, 0), 1);
        int lamp = builder.body("lamp", 20, new Point(80, -40), 500);
        builder.pin("fulcrum", lever, GROUND, Point.ORIGIN, 0, 0)
                .pin("hook", lamp, lever, new Point(80, 0), 10, 0.4)
                .lever(lever, Math.toRadians(-30), new Point(100, 0), new Point(0, -1));
        StrokeResult result = StrokeSolver.solve(builder.build(), 31);
        // Its weight hangs 4 mm beside the hook, on the friction circle's edge, on the way there and when it turns.
        double weight = 20 * GRAVITY;
        double turn = Math.toRadians(30);
        double force = -weight * (80 * Math.cos(turn) - 4) / (100 * Math.cos(turn));
        assertThat(result.pressForce()[30]).isCloseTo(force, within(1e-6 * weight));
        assertThat(result.returnForce()[30]).isCloseTo(force, within(1e-6 * weight));
        assertThat(result.pressForce()[0]).isCloseTo(-weight * 0.8, within(1e-6 * weight));
    }
}
