package jackwork.motion.time;

import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.Elimination;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Pins rub in blows as they do at any time: an impulse P in a pin gives an impulse of friction of µ r P against its
 * turning. Held against the equations of impulse written out here, friction put in by turns until it stays.
 *
 * <p>Reach: one rod and a chain of two, lying level and at rest, struck square by a ball that rebounds, gravity and the
 * ball's own friction left out; so every impulse is upright, and pins slide or stick.
 */
@Tag("outside")
@Tag("quick")
class BlowFrictionTest {

    private static final double BALL = 5;

    /** What is struck. Lengths mm, masses g; {@code circle} is µ r; {@code at} from the first pin. */
    private record Case(
            double[] length, double[] mass, double circle, double ball, double speed, double rebound, double at) {

        static Case any(Random random, int rods) {
            double[] length = new double[rods];
            double[] mass = new double[rods];
            double whole = 0;
            for (int i = 0; i < rods; i++) {
                length[i] = 40 + 80 * random.nextDouble();
                mass[i] = 3 + 30 * random.nextDouble();
                whole += length[i];
            }
            double last = length[rods - 1];
            return new Case(
                    length,
                    mass,
                    4 * random.nextDouble(),
                    1 + 12 * random.nextDouble(),
                    50 + 900 * random.nextDouble(),
                    0.9 * random.nextDouble(),
                    whole - last * (0.05 + 0.9 * random.nextDouble()));
        }

        double inertia(int i) {
            return mass[i] * length[i] * length[i] / 12;
        }
    }

    /** Turning of each rod after the blow, rad/s, and the ball's speed upward, mm/s, as the stepper has it. */
    private static double[] stepped(Case struck) {
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        int rods = struck.length.length;
        double from = 0;
        int before = GROUND;
        for (int i = 0; i < rods; i++) {
            int rod = builder.body(
                    "rod " + i, struck.mass[i], new Point(from + struck.length[i] / 2, 0), struck.inertia(i));
            // Radius 1, so that the coefficient is the circle.
            builder.pin("pin " + i, rod, before, new Point(from, 0), 1, struck.circle);
            if (i == 0) {
                builder.lever(rod, -1, new Point(1, 0), new Point(0, -1));
            }
            from += struck.length[i];
            before = rod;
        }
        Point start = new Point(struck.at, BALL + 1);
        int ball = builder.body("ball", struck.ball, start, 100);
        builder.touchDisc(
                "blow",
                ball,
                start,
                BALL,
                before,
                List.of(new Point(-500, -9), new Point(500, -9), new Point(500, 0), new Point(-500, 0)),
                0,
                struck.rebound);
        Mechanism mechanism = builder.build();
        TimeStepper stepper = new TimeStepper(mechanism, 1e-3);
        double[] velocity = new double[mechanism.coordinates()];
        velocity[3 * ball + 1] = -struck.speed;
        stepper.begin(mechanism.drawnPose(), velocity);
        while (stepper.blows() == 0) {
            stepper.step(1e-3);
        }
        assertThat(stepper.isComputed()).isTrue();
        double[] found = new double[rods + 1];
        for (int i = 0; i < rods; i++) {
            found[i] = stepper.velocity()[3 * i + 2];
        }
        found[rods] = stepper.velocity()[3 * ball + 1];
        return found;
    }

    /** The same from the equations of impulse, friction in the pins' present impulses and senses until both stay. */
    private static double[] byHand(Case struck) {
        int rods = struck.length.length;
        // Unknown: ω of each rod, impulse up on each rod at its first end, impulse up on the last rod by the ball.
        double[] x = new double[2 * rods + 1];
        double[] friction = new double[rods];
        for (int turn = 0; turn < 4000; turn++) {
            double[] next = solved(struck, friction);
            double most = 0;
            for (int i = 0; i < rods; i++) {
                double slides = next[i] - (i == 0 ? 0 : next[i - 1]);
                double bound = struck.circle * Math.abs(next[rods + i]);
                // Toward what stops the sliding, as far as the bound lets it: a pin that would turn back sticks.
                double mass = struck.inertia(i) + struck.mass[i] * struck.length[i] * struck.length[i] / 4;
                double wanted = friction[i] - 0.2 * mass * slides;
                double clipped = Math.max(-bound, Math.min(bound, wanted));
                most = Math.max(most, Math.abs(clipped - friction[i]) / (1e-9 + bound));
                friction[i] = clipped;
            }
            x = next;
            if (most < 1e-13) {
                break;
            }
        }
        double[] found = new double[rods + 1];
        System.arraycopy(x, 0, found, 0, rods);
        found[rods] = -struck.speed - x[2 * rods] / struck.ball;
        return found;
    }

    private static double[] solved(Case c, double[] friction) {
        int rods = c.length.length;
        int n = 2 * rods + 1;
        double[][] a = new double[n][n + 1];
        double from = 0;
        for (int i = 0; i < rods; i++) {
            double half = c.length[i] / 2;
            // m v = R_i − R_{i+1} (+ P), v = Σ ω_k l_k + ω_i l_i / 2
            double[] up = a[2 * i];
            for (int k = 0; k < i; k++) {
                up[k] += c.mass[i] * c.length[k];
            }
            up[i] += c.mass[i] * half;
            up[rods + i] -= 1;
            // J ω = −R_i l/2 − R_{i+1} l/2 (+ P arm) + friction of this pin − that of the next
            double[] turn = a[2 * i + 1];
            turn[i] += c.inertia(i);
            turn[rods + i] += half;
            turn[n] += friction[i];
            if (i + 1 < rods) {
                up[rods + i + 1] += 1;
                turn[rods + i + 1] += half;
                turn[n] -= friction[i + 1];
            } else {
                up[2 * rods] -= 1;
                turn[2 * rods] -= c.at - from - half;
            }
            from += c.length[i];
        }
        // Apart as fast as e times together: (v_ball + P'/m … with P up on the rod, −P on the ball)
        double[] apart = a[2 * rods];
        double to = 0;
        for (int i = 0; i < rods; i++) {
            apart[i] += i + 1 < rods ? c.length[i] : c.at - to;
            to += c.length[i];
        }
        apart[2 * rods] += 1 / c.ball;
        apart[n] = -c.speed * (1 + c.rebound);
        return Elimination.solved(a);
    }

    private static void agree(Case struck) {
        double[] stepped = stepped(struck);
        double[] hand = byHand(struck);
        double scale = struck.speed / struck.length[0];
        for (int i = 0; i < hand.length; i++) {
            double size = i + 1 < hand.length ? scale : struck.speed;
            assertThat(stepped[i]).as("%s, %d", struck, i).isCloseTo(hand[i], within(1e-6 * size));
        }
    }

    /** Struck at its centre of percussion a pin bears nothing and takes nothing; elsewhere it does. */
    @Test
    void aRodAwayFromItsCentreOfPercussion() {
        for (double at : new double[] {15, 40, 200 / 3.0, 90}) {
            Case rubs = new Case(new double[] {100}, new double[] {20}, 3, 7, 300, 0.3, at);
            Case smooth = new Case(new double[] {100}, new double[] {20}, 0, 7, 300, 0.3, at);
            agree(rubs);
            agree(smooth);
            double lost = 1 - stepped(rubs)[0] / stepped(smooth)[0];
            if (at == 200 / 3.0) {
                assertThat(lost).isLessThan(1e-6);
            } else {
                assertThat(lost).isGreaterThan(2e-3);
            }
        }
    }

    @Test
    void anyRod() {
        Random random = new Random(11);
        for (int k = 0; k < 60; k++) {
            agree(Case.any(random, 1));
        }
    }

    @Test
    void anyChainOfTwo() {
        Random random = new Random(12);
        for (int k = 0; k < 60; k++) {
            agree(Case.any(random, 2));
        }
    }
}
