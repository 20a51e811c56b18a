package jackwork.motion;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * One whole cycle in time: a coin is let go in the slot, falls, tips the bucket; the finger presses, the figure acts,
 * the kicker throws the coin; let go, all comes back and locks; and a second press without a coin is held.
 */
public final class CoinCycle {

    /** Follows a run: called at its beginning and after every step. */
    public interface Watcher {

        /**
         * @param time s
         * @param pose x, y (mm) and angle (rad) of each of the assembly's bodies but the ground, in their order, then
         *     of the coin; the stepper's own, do not keep
         */
        void at(double time, double[] pose);
    }

    /** Longest step, s: between events the error goes with its square. */
    public static final double STEP = 2e-3;
    /** How long each stage is waited for, s. */
    static final double PATIENCE = 1.5;
    /** The visitor presses so long after the lever came free, and holds it down so long, s. */
    private static final double REACTION = 0.15;

    private static final double HOLD = 0.1;
    private static final double SECOND_PRESS = 0.2;
    /** Stroke at which the lever counts as down, and as back. */
    private static final double DOWN = 0.98;

    private static final double BACK = 0.02;
    /** A catch that overlaps by this share of what it does at rest has locked. */
    private static final double LOCKED = 0.8;

    private final CycleScene scene;
    private final Press press;
    private final TimeStepper stepper;
    private final double step;
    private final Watcher watcher;
    private final Map<CycleStage, Double> times = new EnumMap<>(CycleStage.class);
    private final Map<CycleStage, Double> nearest = new EnumMap<>(CycleStage.class);
    private final double overlapAtRest;
    /** Height of the bucket's lowest point, mm: a coin below it is in the box. */
    private final double lowest;

    private CoinCycle(CycleScene scene, CoinDrop drop, Press press, double step, Watcher watcher) {
        this.scene = scene;
        this.press = press;
        this.step = step;
        this.watcher = watcher;
        this.stepper = new TimeStepper(scene.mechanism, step);
        double[] velocity = new double[scene.mechanism.coordinates()];
        velocity[3 * scene.coin + 1] = -drop.speed();
        double[] pose = scene.mechanism.drawnPose();
        stepper.begin(pose, velocity);
        this.overlapAtRest = overlap();
        this.lowest = scene.assembly.body(scene.assembly.coinWorks().bucket()).parts().stream()
                .flatMap(part -> part.drawn().outer().stream())
                .mapToDouble(Point::y)
                .min()
                .orElse(0);
    }

    /**
     * @param kerf by which every part is smaller than drawn, mm, half of it all round
     * @param tilt of the table in the mechanism's plane, rad, counter-clockwise
     */
    public static CycleResult run(
            Assembly assembly, double kerf, CoinDrop drop, Press press, double tilt, Watcher watcher) {
        return run(assembly, kerf, drop, press, tilt, STEP, watcher);
    }

    /** @param step longest, s */
    static CycleResult run(
            Assembly assembly, double kerf, CoinDrop drop, Press press, double tilt, double step, Watcher watcher) {
        return new CoinCycle(CycleScene.of(assembly, kerf, drop, tilt), drop, press, step, watcher).run();
    }

    /**
     * Whether a coin laid in the bucket at rest, lever waiting, tips it out of the lever's way.
     *
     * @param seat where its centre is laid
     */
    public static boolean tips(Assembly assembly, CoinDrop drop, Point seat) {
        CoinCycle cycle =
                new CoinCycle(CycleScene.of(assembly, 0, drop, 0), drop, new Press(0, 0), STEP, (t, pose) -> {});
        double[] pose = cycle.scene.mechanism.drawnPose();
        pose[3 * cycle.scene.coin] = seat.x();
        pose[3 * cycle.scene.coin + 1] = seat.y();
        cycle.stepper.begin(pose, new double[pose.length]);
        return cycle.drop();
    }

    private CycleResult run() {
        watcher.at(0, stepper.pose());
        if (drop() && first() && back()) {
            second();
        }
        return new CycleResult(
                times,
                nearest,
                stepper.isComputed(),
                stepper.closure(),
                stepper.residual(),
                stepper.energyFromNowhere(),
                stepper.attempts());
    }

    /** The lever is free when it stays so as long as a visitor takes to press: a coin that bounces out does not do. */
    private boolean drop() {
        double end = stepper.time() + PATIENCE;
        double freed = Double.NaN;
        while (stepper.isComputed() && stepper.time() < end) {
            if (overlap() >= 0) {
                freed = Double.NaN;
            } else if (Double.isNaN(freed)) {
                freed = stepper.time();
            } else if (stepper.time() - freed >= REACTION) {
                times.put(CycleStage.FREES, freed);
                return true;
            }
            advance();
        }
        near(CycleStage.LANDS, times.containsKey(CycleStage.LANDS) ? 1 : 0);
        near(CycleStage.FREES, Math.min(1, 1 - overlap() / overlapAtRest));
        return false;
    }

    private boolean first() {
        stepper.finger(Finger.push(1e6 * press.force(), press.speed()));
        double down = waitFor(CycleStage.ACTS, PATIENCE, () -> {
            near(CycleStage.ACTS, stroke() / DOWN);
            return stroke() >= DOWN;
        });
        return !Double.isNaN(down) && passTime(HOLD);
    }

    private boolean back() {
        stepper.finger(Finger.OFF);
        double thrown = times.containsKey(CycleStage.THROWN)
                ? 0
                : waitFor(CycleStage.THROWN, PATIENCE, () -> times.containsKey(CycleStage.THROWN));
        if (Double.isNaN(thrown)) {
            return false;
        }
        double back = waitFor(CycleStage.RETURNS, PATIENCE, () -> {
            near(CycleStage.RETURNS, (1 - stroke()) / (1 - BACK));
            return stroke() <= BACK;
        });
        if (Double.isNaN(back)) {
            return false;
        }
        double locked = waitFor(CycleStage.LOCKS, PATIENCE, () -> {
            near(CycleStage.LOCKS, overlap() / overlapAtRest / LOCKED);
            return overlap() >= LOCKED * overlapAtRest && stroke() <= BACK;
        });
        return !Double.isNaN(locked) && passTime(HOLD);
    }

    private void second() {
        stepper.finger(Finger.push(1e6 * press.force(), press.speed()));
        double end = stepper.time() + SECOND_PRESS;
        double most = 0;
        while (stepper.isComputed() && stepper.time() < end) {
            advance();
            most = Math.max(most, stroke());
        }
        boolean held = overlap() > 0 && most < 0.5;
        near(CycleStage.REFUSES, held ? 1 : 1 - most);
        if (held) {
            times.put(CycleStage.REFUSES, stepper.time());
        }
    }

    /** Runs until something is so; returns the time, or NaN when patience ends. */
    private double waitFor(CycleStage stage, double patience, BooleanSupplier reached) {
        double end = stepper.time() + patience;
        while (stepper.isComputed() && stepper.time() < end) {
            if (reached.getAsBoolean()) {
                times.putIfAbsent(stage, stepper.time());
                return stepper.time();
            }
            advance();
        }
        return Double.NaN;
    }

    private boolean passTime(double seconds) {
        double end = stepper.time() + seconds;
        while (stepper.isComputed() && stepper.time() < end) {
            advance();
        }
        return stepper.isComputed();
    }

    private void advance() {
        stepper.step(step);
        watcher.at(stepper.time(), stepper.pose());
        if (touchesBucket()) {
            times.putIfAbsent(CycleStage.LANDS, stepper.time());
        }
        double fallen = (scene.mechanism.bodies[scene.coin].centreY() - stepper.pose()[3 * scene.coin + 1])
                / (scene.mechanism.bodies[scene.coin].centreY() - lowest);
        if (times.containsKey(CycleStage.FREES)) {
            near(CycleStage.THROWN, fallen);
            if (fallen > 1) {
                times.putIfAbsent(CycleStage.THROWN, stepper.time());
            }
        }
    }

    private void near(CycleStage stage, double share) {
        nearest.merge(stage, share, Math::max);
    }

    private boolean touchesBucket() {
        for (int r = scene.firstCoinOnBucket; r < scene.endCoinOnBucket; r++) {
            if (stepper.bears(r)) {
                return true;
            }
        }
        return false;
    }

    private double stroke() {
        return stepper.pose()[3 * scene.lever + 2] / scene.assembly.lever().turn();
    }

    /** By how much the strut stands beneath the tooth, mm; negative when it is out of its way. */
    private double overlap() {
        CoinWorks works = scene.assembly.coinWorks();
        Lever lever = scene.assembly.lever();
        Point strut = works.strut().turnedAbout(works.pivot(), stepper.pose()[3 * scene.bucket + 2]);
        double side = Math.signum(
                works.strut().distance(lever.pivot()) - works.tooth().distance(lever.pivot()));
        return side * (strut.distance(lever.pivot()) - works.tooth().distance(lever.pivot()));
    }
}
