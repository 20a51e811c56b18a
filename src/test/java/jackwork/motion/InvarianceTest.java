package jackwork.motion;

import static jackwork.motion.Mechanism.GRAVITY;
import static jackwork.motion.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Random mechanisms (a four-bar with rubbing pins, a lamp hung on its coupler, a string to a weight in a slot)
 * looked at in other ways: mirrored, turned together with gravity, in other units of length, put
 * together in another order. Poses, forces and verdict must be the same.
 */
class InvarianceTest {

    private static final int SAMPLES = 13;

    /**
     * @param map of points
     * @param sense −1 when the map mirrors
     * @param scale of lengths
     */
    private record View(UnaryOperator<Point> map, int sense, double scale, boolean reordered) {}

    private static Mechanism mechanism(int seed, View view) {
        Random random = new Random(seed);
        double[] r = random.doubles(24, 0.5, 1.5).toArray();
        UnaryOperator<Point> map = view.map();
        double unit = view.scale();
        FourBar bar = new FourBar(40 * r[0], 110 * r[1] + 40, 90 * r[2] + 20, 100 * r[3] + 20);
        double theta = Math.toRadians(60 + 30 * r[4]);
        Point p = bar.crankEnd(theta);
        Point q = bar.rockerEnd(theta, 1);
        Point o4 = new Point(bar.d, 0);
        Point lampAt = p.plus(q).times(0.5).plus(new Point(0, 10 * r[5]));
        double mu = 0.2 * r[6];
        MechanismBuilder builder = new MechanismBuilder();
        Point down = map.apply(new Point(0, -1)).minus(map.apply(Point.ORIGIN));
        builder.gravity(down.times(GRAVITY / unit * 1));
        String[] names = {"crank", "coupler", "rocker", "lamp", "weight"};
        Point[] centres = {
            p.times(0.5),
            p.plus(q).times(0.5),
            q.plus(o4).times(0.5),
            lampAt.minus(new Point(0, 15 * r[7])),
            new Point(-60, 40)
        };
        double[] masses = {3 * r[8], 5 * r[9], 4 * r[10], 6 * r[11], 9 * r[12]};
        int[] number = new int[5];
        for (int k = 0; k < 5; k++) {
            int body = view.reordered() ? 4 - k : k;
            number[body] =
                    builder.body(names[body], masses[body], map.apply(centres[body]), 900 * r[13 + body] * unit * unit);
        }
        List<Runnable> joints = new java.util.ArrayList<>(List.of(
                () -> builder.pin("o2", number[0], GROUND, map.apply(Point.ORIGIN), 1.5 * unit, mu),
                () -> builder.pin("a", number[1], number[0], map.apply(p), 1.5 * unit, mu),
                () -> builder.pin("b", number[2], number[1], map.apply(q), 1.5 * unit, mu),
                () -> builder.pin("o4", number[2], GROUND, map.apply(o4), 1.5 * unit, mu),
                () -> builder.pin("lamp", number[3], number[1], map.apply(lampAt), 1.5 * unit, 0.1 * mu),
                () -> builder.slide(
                        "way-1",
                        number[4],
                        GROUND,
                        map.apply(new Point(-60, 35)),
                        map.apply(new Point(-60, -400)),
                        map.apply(new Point(-60, 400)),
                        0),
                () -> builder.slide(
                        "way-2",
                        number[4],
                        GROUND,
                        map.apply(new Point(-60, 45)),
                        map.apply(new Point(-60, -400)),
                        map.apply(new Point(-60, 400)),
                        0),
                () -> builder.cord(
                        "cord",
                        number[0],
                        map.apply(p),
                        List.of(new MechanismBuilder.CordGuide(
                                GROUND, map.apply(new Point(-62, 120)), 2 * unit, view.sense(), mu)),
                        number[4],
                        map.apply(new Point(-60, 40)),
                        0)));
        if (view.reordered()) {
            java.util.Collections.reverse(joints);
        }
        joints.forEach(Runnable::run);
        Point push =
                map.apply(p.plus(new Point(Math.sin(theta), -Math.cos(theta)))).minus(map.apply(p));
        return builder.lever(number[0], view.sense() * Math.toRadians(-20), map.apply(p), push)
                .build();
    }

    private static void assertSame(int seed, View view) {
        Mechanism plain = mechanism(seed, new View(point -> point, 1, 1, false));
        Mechanism other = mechanism(seed, view);
        StrokeResult a = StrokeSolver.solve(plain, SAMPLES);
        StrokeResult b = StrokeSolver.solve(other, SAMPLES);
        assertThat(b.reach()).as("%s against %s", a.events(), b.events()).isCloseTo(a.reach(), within(1e-5));
        // In other units of length, gravity's number and every force's change alike.
        double force = 1 / view.scale();
        for (int i = 0; i < SAMPLES; i++) {
            if (Double.isNaN(a.pressForce()[i])) {
                continue;
            }
            double scale = Math.abs(a.pressForce()[i]) + 1000;
            // Where nothing has slid yet, at the start of either way, friction may be anything within its bounds.
            if (i > 0) {
                assertThat(b.pressForce()[i] / force)
                        .as("press %s", i)
                        .isCloseTo(a.pressForce()[i], within(1e-5 * scale));
            }
            if (i > 0 && i < SAMPLES - 1) {
                assertThat(b.returnForce()[i] / force)
                        .as("back %s", i)
                        .isCloseTo(a.returnForce()[i], within(1e-5 * scale));
            }
            for (int body = 0; body < plain.bodyCount(); body++) {
                int twin = other.bodyNumber(plain.bodyName(body));
                double[] pa = a.pose()[i];
                double[] pb = b.pose()[i];
                Point wanted = view.map().apply(new Point(pa[3 * body], pa[3 * body + 1]));
                assertThat(wanted.distance(new Point(pb[3 * twin], pb[3 * twin + 1])) / view.scale())
                        .isLessThan(1e-6);
                assertThat(view.sense() * pb[3 * twin + 2]).isCloseTo(pa[3 * body + 2], within(1e-7));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void turnedWithGravity(int seed) {
        assertSame(seed, new View(point -> point.turned(1.1 + seed), 1, 1, false));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void mirrored(int seed) {
        assertSame(seed, new View(point -> new Point(-point.x(), point.y()), -1, 1, false));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void inOtherOrder(int seed) {
        assertSame(seed, new View(point -> point, 1, 1, true));
    }
}
