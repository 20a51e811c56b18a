package jackwork.motion.rest;

import static jackwork.motion.model.Mechanism.GRAVITY;
import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.MechanismBuilder;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A string wound round a post, at rest, against the belt (capstan) equation {@code T₂ = T₁ e^{µβ}} (Euler and Eytelwein;
 * e.g. Beer and Johnston, Vector Mechanics for Engineers: Statics, ch. 8), β as wound, whole turns and all.
 *
 * <p>Reach: one post, from no wrap to more than four turns, pulled and let back; and a wrap that grows by two turns in one
 * stroke.
 */
@Tag("outside")
@Tag("quick")
class CapstanOutsideTest {

    private static final double MASS = 30;

    /** Whole turns to be written beside a drawing of a wrap, which shows −90° to 270°. */
    private static int wholeTurns(double wrap) {
        return (int) Math.ceil((wrap - 1.5 * Math.PI) / (2 * Math.PI) - 1e-12);
    }

    private static Point ray(double angle) {
        return new Point(Math.cos(angle), Math.sin(angle));
    }

    /**
     * A weight hangs on the right of a post; the string goes up to it, round it by a wrap and straight off to a lever, which
     * pulls along it as it begins to turn.
     *
     * @param side +1 as told, −1 as in a mirror
     */
    private static StrokeResult pulled(double radius, double wrap, double friction, int side, double turn) {
        Point off = ray(wrap).times(radius);
        Point way = ray(wrap + Math.PI / 2);
        Point tied = off.plus(way.times(60));
        Point pivot = tied.minus(ray(wrap).times(50));
        MechanismBuilder builder = new MechanismBuilder();
        int lever = builder.body("lever", 1e-9, seen(tied, side), 1);
        int weight = builder.body("weight", MASS, seen(new Point(radius, -100), side), 500);
        // At the pivot's right the string's end goes along the string when the lever turns counter-clockwise.
        builder.pin("fulcrum", lever, GROUND, seen(pivot, side), 0, 0)
                .lever(lever, side * turn, seen(tied, side), seen(way, side));
        for (double y : new double[] {-110, -90}) {
            Point peg = seen(new Point(radius, y), side);
            builder.slide(
                    "guide " + y,
                    weight,
                    GROUND,
                    peg,
                    seen(new Point(radius, -900), side),
                    seen(new Point(radius, 900), side),
                    0);
        }
        builder.cord(
                "cord",
                weight,
                seen(new Point(radius, -100), side),
                List.of(new MechanismBuilder.CordGuide(GROUND, Point.ORIGIN, radius, side, wholeTurns(wrap), friction)),
                lever,
                seen(tied, side),
                0);
        return StrokeSolver.solve(builder.build(), 5);
    }

    private static Point seen(Point point, int side) {
        return new Point(side * point.x(), point.y());
    }

    private static void agree(double radius, double wrap, double friction, int side) {
        StrokeResult result = pulled(radius, wrap, friction, side, Math.toRadians(3));
        double weight = MASS * GRAVITY;
        double more = Math.exp(friction * wrap);
        String what = String.format("%.1f° on %.2f mm, µ %.3f, side %d", Math.toDegrees(wrap), radius, friction, side);
        assertThat(result.pressForce()[0] / weight).as(what).isCloseTo(more, within(1e-6 * more));
        assertThat(result.returnForce()[0] / weight).as(what).isCloseTo(1 / more, within(1e-6 / more));
        // On the way the lever's end leaves the string's line by a little, and the wrap shrinks with that; one of
        // nothing
        // would leave the post.
        for (int i = 1; i < 5 && wrap > 0; i++) {
            double turned = result.stroke()[i] * Math.toRadians(3);
            Point off = ray(wrap).times(radius);
            Point pivot =
                    off.plus(ray(wrap + Math.PI / 2).times(60)).minus(ray(wrap).times(50));
            Point tied = pivot.plus(ray(wrap + turned).times(50));
            double away = Math.acos(radius / tied.length());
            double bearing = Math.atan2(tied.y(), tied.x());
            double grown = wrap + Math.IEEEremainder(bearing - away - wrap, 2 * Math.PI);
            double arm = 50 * Math.cos(wrap + turned - grown);
            double finger = weight * Math.exp(friction * grown) * arm / (50 * Math.cos(turned));
            assertThat(result.pressForce()[i])
                    .as("%s, %s", what, result.stroke()[i])
                    .isCloseTo(finger, within(1e-6 * finger));
        }
    }

    @Test
    void fromNoWrapToTwoTurnsInSteps() {
        DoubleStream.iterate(0, wrap -> wrap <= 720, wrap -> wrap + 15)
                .forEach(wrap -> agree(5, Math.toRadians(wrap), 0.25, 1));
    }

    /** What was found from outside: 300° and −60° are one picture. */
    @Test
    void threeHundredDegrees() {
        agree(5, Math.toRadians(300), 0.25, 1);
        assertThat(Math.exp(0.25 * Math.toRadians(300))).isCloseTo(3.702, within(5e-4));
    }

    @Test
    void anyWrapOnAnyPost() {
        Random random = new Random(2);
        for (int k = 0; k < 60; k++) {
            agree(
                    1 + 15 * random.nextDouble(),
                    Math.toRadians(1500) * random.nextDouble(),
                    0.05 + 0.3 * random.nextDouble(),
                    random.nextBoolean() ? 1 : -1);
        }
    }

    /** A picture that says nothing of turns is taken for less than three quarters of one: the string passes the post by. */
    @Test
    void withoutWholeTurnsThePictureIsTakenAsItIs() {
        assertThat(wholeTurns(Math.toRadians(300))).isEqualTo(1);
        assertThat(wholeTurns(Math.toRadians(269))).isZero();
        assertThat(wholeTurns(Math.toRadians(629))).isEqualTo(1);
        assertThat(wholeTurns(Math.toRadians(631))).isEqualTo(2);
    }

    /**
     * A lever that carries the string's end round the post winds it up. Nothing lets go on the way, at three quarters of a
     * turn or at whole ones, and on the way back it is unwound as far.
     */
    @Test
    void woundUpByTwoTurnsInOneStroke() {
        double radius = 5;
        double friction = 0.12;
        double turn = Math.toRadians(700);
        MechanismBuilder builder = new MechanismBuilder();
        Point tied = new Point(radius, 120);
        int lever = builder.body("lever", 1e-9, tied, 1);
        int weight = builder.body("weight", MASS, new Point(radius, -200), 500);
        builder.pin("fulcrum", lever, GROUND, Point.ORIGIN, 0, 0).lever(lever, turn, tied, new Point(-1, 0.37));
        for (double y : new double[] {-210, -190}) {
            builder.slide(
                    "guide " + y,
                    weight,
                    GROUND,
                    new Point(radius, y),
                    new Point(radius, -900),
                    new Point(radius, 900),
                    0);
        }
        builder.cord(
                "cord",
                lever,
                tied,
                List.of(new MechanismBuilder.CordGuide(GROUND, Point.ORIGIN, radius, -1, 0, friction)),
                weight,
                new Point(radius, -200),
                0);
        StrokeResult result = StrokeSolver.solve(builder.build(), 71);
        assertThat(result.reach()).isEqualTo(1);
        assertThat(result.events(MotionEvent.Kind.LETS_GO)).isEmpty();
        double[] load = result.loadOf("cord");
        for (int i = 0; i < load.length; i++) {
            double wrap = result.stroke()[i] * turn;
            assertThat(result.pose()[i][3 * weight + 1]).as("height").isCloseTo(-200 + radius * wrap, within(1e-7));
            assertThat(result.returnPose()[i][3 * weight + 1])
                    .as("height back")
                    .isCloseTo(-200 + radius * wrap, within(1e-7));
            double expected = MASS * GRAVITY * Math.exp(friction * wrap);
            assertThat(load[i]).as("%.0f°", Math.toDegrees(wrap)).isCloseTo(expected, within(1e-6 * expected));
        }
    }
}
