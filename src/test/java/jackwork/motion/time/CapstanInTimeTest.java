package jackwork.motion.time;

import static jackwork.motion.model.Mechanism.GRAVITY;
import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A string wound round a post, in time, against Newton's law with the belt (capstan) equation {@code T₂ = T₁ e^{µβ}}:
 * two blocks on smooth straight guides along the string's ends, each pulled by a steady force, go with
 * {@code (F₁ − F₂ e^{µβ}) / (m₁ + m₂ e^{µβ})}, or stand where neither force overcomes the other.
 *
 * <p>Reach: one post, from no wrap to more than four turns; and a string that is wound up by two turns in the run.
 */
@Tag("outside")
@Tag("quick")
class CapstanInTimeTest {

    private static final double RADIUS = 6;
    /** What sticks may creep by the stepper's slowest speed that counts, mm. */
    private static final double CREEP = 0.1 * TimeLimits.STILL;

    private static Point ray(double angle) {
        return new Point(Math.cos(angle), Math.sin(angle));
    }

    private static int wholeTurns(double wrap) {
        return (int) Math.ceil((wrap - 1.5 * Math.PI) / (2 * Math.PI) - 1e-12);
    }

    private static int block(MechanismBuilder builder, double mass, Point at, Point way, Point force) {
        int block = builder.body("block", mass, at, 1000);
        for (double off : new double[] {-10, 10}) {
            Point peg = at.plus(way.times(off));
            builder.slide("guide", block, GROUND, peg, at.minus(way.times(5000)), at.plus(way.times(5000)), 0);
        }
        // Its weight is taken off it: what pulls it is the force alone.
        builder.load(block, at, force.plus(new Point(0, mass * GRAVITY)), 0);
        return block;
    }

    /** How far the first block has gone outward, mm. */
    private static double gone(
            double first, double forceFirst, double second, double forceSecond, double wrap, double mu) {
        MechanismBuilder builder = new MechanismBuilder();
        // The lever has no part in it.
        int lever = builder.body("lever", 1, new Point(900, 0), 100);
        builder.pin("fulcrum", lever, GROUND, new Point(900, 0), 1, 0)
                .lever(lever, 1, new Point(950, 0), new Point(0, -1));
        Point down = new Point(0, -1);
        Point a = new Point(RADIUS, -300);
        int one = block(builder, first, a, down, down.times(forceFirst));
        Point way = ray(wrap + Math.PI / 2);
        Point b = ray(wrap).times(RADIUS).plus(way.times(300));
        int two = block(builder, second, b, way, way.times(forceSecond));
        builder.cord(
                "string",
                one,
                a,
                List.of(new MechanismBuilder.CordGuide(GROUND, Point.ORIGIN, RADIUS, 1, wholeTurns(wrap), mu)),
                two,
                b,
                0);
        TimeStepper stepper = new TimeStepper(builder.build(), 1e-3);
        stepper.runTo(0.1);
        assertThat(stepper.isComputed())
                .as(
                        "%.1f°, µ %.3f, %.1f g %.0f µN against %.1f g %.0f µN: settled %s, residual %s, from nowhere %s",
                        Math.toDegrees(wrap),
                        mu,
                        first,
                        forceFirst,
                        second,
                        forceSecond,
                        stepper.isSettled(),
                        stepper.residual(),
                        stepper.energyFromNowhere())
                .isTrue();
        return -300 - stepper.pose()[3 * one + 1];
    }

    private static void agree(double first, double force, double second, double other, double wrap, double mu) {
        double more = Math.exp(mu * wrap);
        double way = force - other * more;
        double back = other - force * more;
        double acceleration = way > 0 ? way / (first + second * more) : back > 0 ? -back / (second + first * more) : 0;
        assertThat(gone(first, force, second, other, wrap, mu))
                .as("%.1f°, µ %.3f, %.0f against %.0f µN", Math.toDegrees(wrap), mu, force, other)
                .isCloseTo(acceleration * 0.01 / 2, within(1e-6 * Math.abs(acceleration) * 0.01 / 2 + CREEP));
    }

    @Test
    void fromNoWrapToTwoTurnsInSteps() {
        DoubleStream.iterate(0, wrap -> wrap <= 720, wrap -> wrap + 30).forEach(degrees -> {
            double wrap = Math.toRadians(degrees);
            double holds = 1e5 * Math.exp(0.25 * wrap);
            agree(50, 1.5 * holds, 20, 1e5, wrap, 0.25);
            agree(50, 0.98 * holds, 20, 1e5, wrap, 0.25);
            agree(50, 1e5, 20, 1.02 * holds, wrap, 0.25);
        });
    }

    @Test
    void anyWrapAndAnyForces() {
        Random random = new Random(3);
        for (int k = 0; k < 60; k++) {
            double wrap = Math.toRadians(1500) * random.nextDouble();
            double mu = 0.02 + 0.2 * random.nextDouble();
            double force = 2e5 * Math.exp(mu * wrap * (1.4 * random.nextDouble() - 0.2));
            agree(5 + 80 * random.nextDouble(), force, 5 + 80 * random.nextDouble(), 2e5, wrap, mu);
        }
    }

    /** A weight between guides hangs on a string from a wheel over a post of the wheel's radius. */
    private static Mechanism winch(MechanismBuilder builder, int wheel, Point tied, int weight) {
        for (double y : new double[] {-210, -190}) {
            builder.slide(
                    "guide", weight, GROUND, new Point(RADIUS, y), new Point(RADIUS, -900), new Point(RADIUS, 900), 0);
        }
        builder.cord(
                "cord",
                wheel,
                tied,
                List.of(new MechanismBuilder.CordGuide(GROUND, Point.ORIGIN, RADIUS, -1, 0, 0.15)),
                weight,
                new Point(RADIUS, -200),
                0);
        return builder.build();
    }

    /** A heavy wheel winds a weight's string up by two turns, past three quarters and past whole ones. */
    @Test
    void woundUpByTwoTurns() {
        MechanismBuilder builder = new MechanismBuilder();
        Point tied = new Point(RADIUS, 120);
        int wheel = builder.body("wheel", 1, Point.ORIGIN, 1e9);
        int weight = builder.body("weight", 30, new Point(RADIUS, -200), 500);
        builder.pin("axle", wheel, GROUND, Point.ORIGIN, 0, 0).lever(wheel, 1, tied, new Point(-1, 0));
        Mechanism mechanism = winch(builder, wheel, tied, weight);
        TimeStepper stepper = new TimeStepper(mechanism, 1e-3);
        double[] velocity = new double[mechanism.coordinates()];
        velocity[3 * wheel + 2] = 8;
        velocity[3 * weight + 1] = 8 * RADIUS;
        stepper.begin(mechanism.drawnPose(), velocity);
        double most = 0;
        while (stepper.time() < 1.6) {
            stepper.step(1e-3);
            double wrap = stepper.pose()[3 * wheel + 2];
            most = Math.max(most, wrap);
            assertThat(stepper.pose()[3 * weight + 1]).isCloseTo(-200 + RADIUS * wrap, within(1e-4));
        }
        assertThat(stepper.isComputed()).isTrue();
        assertThat(most).isGreaterThan(4 * Math.PI);
        // The wheel pays for the weight's height and for what the string loses on the post: ∫ m g e^{µβ} R dβ.
        double lost = 30 * GRAVITY * RADIUS * Math.expm1(0.15 * most) / 0.15;
        double given = 0.5 * 1e9 * (64 - Math.pow(stepper.velocity()[3 * wheel + 2], 2));
        assertThat(given).isCloseTo(lost, within(1e-3 * lost));
    }

    /** A run may begin with the string wound up already: how it is wound follows from how it is drawn. */
    @Test
    void begunInTheMiddle() {
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        Point tied = new Point(RADIUS, 120);
        int wheel = builder.body("wheel", 40, new Point(0, 30), 1e5);
        int weight = builder.body("weight", 30, new Point(RADIUS, -200), 500);
        builder.pin("axle", wheel, GROUND, Point.ORIGIN, 0, 0).lever(wheel, 1, tied, new Point(-1, 0));
        Mechanism mechanism = winch(builder, wheel, tied, weight);
        for (double turned : new double[] {1, 5, 2 * Math.PI + 0.3, 11, 25}) {
            double[] pose = mechanism.drawnPose();
            pose[3 * wheel] = -30 * Math.sin(turned);
            pose[3 * wheel + 1] = 30 * Math.cos(turned);
            pose[3 * wheel + 2] = turned;
            pose[3 * weight + 1] += RADIUS * turned;
            TimeStepper stepper = new TimeStepper(mechanism, 1e-3);
            double[] velocity = new double[mechanism.coordinates()];
            velocity[3 * weight + 1] = -100;
            stepper.begin(pose, velocity);
            stepper.step(1e-5);
            // Taut from the first: the weight's fall turns the wheel at once.
            assertThat(stepper.velocity()[3 * wheel + 2]).as("%s rad", turned).isLessThan(-0.1);
        }
    }
}
