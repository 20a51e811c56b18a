package jackwork.motion.rest;

import static jackwork.motion.model.Mechanism.GRAVITY;
import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.geometry.Point;
import jackwork.motion.model.FourBar;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Random mechanisms looked at in other ways: mirrored, turned together with gravity, in other units of length, put
 * together in another order. Poses, forces and verdict must be the same. Two families: a four-bar with rubbing pins,
 * a lamp hung on its coupler and a string to a weight in a slot; and gears with a peg in an arm's slot, a spring, a
 * torque, a curved slot, and a flap that lies on a sill.
 */
class InvarianceTest {

    private static final int SAMPLES = 13;

    /**
     * @param map of points
     * @param sense −1 when the map mirrors
     * @param scale of lengths
     */
    private record View(UnaryOperator<Point> map, int sense, double scale, boolean reordered) {}

    private static final View AS_DRAWN = new View(point -> point, 1, 1, false);

    private static Mechanism linkage(int seed, View view) {
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
        builder.gravity(down.times(GRAVITY));
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

    /** Gears, slots, spring, torque and a flap that lies on a sill. */
    private static Mechanism gears(int seed, View view) {
        Random random = new Random(100 + seed);
        double[] r = random.doubles(24, 0.5, 1.5).toArray();
        UnaryOperator<Point> map = view.map();
        double unit = view.scale();
        int sense = view.sense();
        double mu = 0.15 * r[0];
        Point wheelAxle = new Point(30 + 8 * r[1], 6 * r[2]);
        Point peg = wheelAxle.plus(new Point(10 + 4 * r[3], 0).turned(r[4]));
        Point armPivot = wheelAxle.plus(new Point(5 * r[5], 70 + 10 * r[6]));
        Point way = armPivot.minus(peg).times(1 / armPivot.distance(peg));
        Point flapPivot = armPivot.plus(new Point(25, 20 * r[7]));
        Point flapTip = flapPivot.plus(new Point(30 * r[8], -5));
        Point bolt = armPivot.plus(new Point(-20, 15 * r[9]));
        MechanismBuilder builder = new MechanismBuilder();
        builder.gravity(
                map.apply(new Point(0, -1)).minus(map.apply(Point.ORIGIN)).times(GRAVITY));
        String[] names = {"pinion", "wheel", "arm", "flap", "bolt"};
        Point[] centres = {
            new Point(2, 1),
            wheelAxle.plus(new Point(3, 2)),
            armPivot.minus(way.times(20)),
            flapPivot.plus(flapTip).times(0.5),
            bolt
        };
        int[] number = new int[5];
        for (int k = 0; k < 5; k++) {
            int body = view.reordered() ? 4 - k : k;
            number[body] = builder.body(
                    names[body], (2 + 3 * r[10 + body]), map.apply(centres[body]), 700 * r[15 + body] * unit * unit);
        }
        List<Point> sill = new java.util.ArrayList<>(List.of(
                flapTip.plus(new Point(-40, -12)),
                flapTip.plus(new Point(40, -12)),
                flapTip.plus(new Point(40, -3)),
                flapTip.plus(new Point(-40, -3))));
        sill.replaceAll(map);
        if (sense < 0) {
            java.util.Collections.reverse(sill);
        }
        List<Runnable> joints = new java.util.ArrayList<>(List.of(
                () -> builder.pin("o1", number[0], GROUND, map.apply(Point.ORIGIN), 1.5 * unit, mu),
                () -> builder.pin("o2", number[1], GROUND, map.apply(wheelAxle), 1.5 * unit, mu),
                () -> builder.pin("o3", number[2], GROUND, map.apply(armPivot), 1.5 * unit, mu),
                () -> builder.pin("hinge", number[3], number[2], map.apply(flapPivot), 1.5 * unit, 0.2 * mu),
                () -> builder.pin("bolt", number[4], number[2], map.apply(bolt), 1.5 * unit, mu),
                () -> builder.arcSlide(
                        "curve",
                        number[4],
                        GROUND,
                        map.apply(bolt.plus(new Point(20, 3))),
                        map.apply(bolt.plus(new Point(-40, 8))),
                        map.apply(bolt.plus(new Point(20, 3))),
                        map.apply(bolt.plus(new Point(80, 9))),
                        mu),
                () -> builder.mesh(
                        "mesh",
                        number[0],
                        map.apply(Point.ORIGIN),
                        12,
                        number[1],
                        map.apply(wheelAxle),
                        24,
                        Math.toRadians(20),
                        mu),
                () -> builder.slide(
                        "slot",
                        number[1],
                        number[2],
                        map.apply(peg),
                        map.apply(armPivot.minus(way.times(90))),
                        map.apply(armPivot.minus(way.times(10))),
                        mu),
                () -> builder.spring(
                        "spring",
                        number[2],
                        map.apply(centres[2]),
                        GROUND,
                        map.apply(centres[2].plus(new Point(-50, 0))),
                        3000 * r[20],
                        45 * unit,
                        false),
                () -> builder.torque(number[0], sense * 4e5 * r[21] * unit * unit),
                () -> builder.touchDisc("sill", number[3], map.apply(flapTip), 2 * unit, GROUND, sill, mu, 0)));
        if (view.reordered()) {
            java.util.Collections.reverse(joints);
        }
        joints.forEach(Runnable::run);
        Point press = new Point(20, 0);
        Point push = map.apply(press.plus(new Point(0, -1))).minus(map.apply(press));
        return builder.lever(number[0], sense * Math.toRadians(-30), map.apply(press), push)
                .build();
    }

    private static void assertSame(int seed, View view) {
        assertSame(linkage(seed, AS_DRAWN), linkage(seed, view), view);
        assertSame(gears(seed, AS_DRAWN), gears(seed, view), view);
    }

    private static void assertSame(Mechanism plain, Mechanism other, View view) {
        StrokeResult a = StrokeSolver.solve(plain, SAMPLES);
        StrokeResult b = StrokeSolver.solve(other, SAMPLES);
        assertThat(b.reach()).as("%s against %s", a.events(), b.events()).isCloseTo(a.reach(), within(1e-5));
        // In other units of length, gravity's number and every force's change alike.
        double force = view.scale();
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

    /**
     * What is small enough must not depend on the unit. Reach: touches look some millimetres around, so they are only
     * taken half and four times as large.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void inOtherUnits(int seed) {
        assertSame(seed, new View(point -> point.times(4), 1, 4, false));
        assertSame(seed, new View(point -> point.times(0.5), 1, 0.5, false));
        View tenth = new View(point -> point.times(0.1), 1, 0.1, false);
        assertSame(linkage(seed, AS_DRAWN), linkage(seed, tenth), tenth);
    }
}
