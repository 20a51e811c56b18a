package jackwork.motion.coin;

import jackwork.geometry.Point;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Finger;
import jackwork.motion.time.Press;
import jackwork.motion.time.TimeStepper;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleSupplier;

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
         *     of the coin; used again for the next step, do not keep
         */
        void at(double time, double[] pose);
    }

    /** Sees nothing. */
    public static final Watcher NOBODY = (time, pose) -> {};

    private final CycleScene scene;
    private final Visit visit;
    /** Nothing after this is looked at. */
    private final CycleStage last;
    /** Coins let go so far. */
    private int let;

    private final TimeStepper stepper;
    private final double step;
    private final Watcher watcher;
    private final double[] shown;
    /** How long the finger takes to bring the lever down when nothing holds it back, s. */
    private final double pressing;
    /** When the last step began, s. */
    private double lastTime;

    private final Map<CycleStage, Double> times = new EnumMap<>(CycleStage.class);
    private final Map<CycleStage, Double> nearest = new EnumMap<>(CycleStage.class);
    private final Map<CycleStage, Double> byItself = new EnumMap<>(CycleStage.class);
    private final double overlapAtRest;
    /** Height of the bucket's lowest point, mm: a coin below it is in the box. */
    private final double lowest;

    private CoinCycle(CycleRig rig, Visit visit, CycleStage last, double step, Watcher watcher) {
        this.scene = CycleScene.of(rig, visit.coins());
        this.visit = visit;
        this.last = last;
        this.step = step;
        this.watcher = watcher;
        this.shown = new double[3 * (scene.assembly.bodies().size() - 1 + scene.coins.length)];
        this.stepper = new TimeStepper(scene.mechanism, step);
        this.pressing = pressing(rig.assembly.lever(), visit.press());
        double times = Math.max(1, CoinLimits.STEP / step) * (1 + pressing / CoinLimits.PATIENCE);
        stepper.mostAttempts((int) Math.min(Integer.MAX_VALUE, CoinLimits.MOST_ATTEMPTS * times));
        double[] pose = scene.restPose();
        for (int i = 0; i < scene.coins.length; i++) {
            pose[3 * scene.coins[i]] = (i + 1) * CoinLimits.FAR_AWAY;
        }
        stepper.begin(pose, new double[pose.length]);
        stepper.shake(visit.shake());
        this.overlapAtRest = overlap();
        this.lowest = CycleRig.lowest(scene.assembly);
    }

    public static CycleResult run(CycleRig rig, CoinDrop drop, Press press, Watcher watcher) {
        return run(rig, drop, press, CoinLimits.STEP, watcher);
    }

    /** @param step longest, s */
    public static CycleResult run(CycleRig rig, CoinDrop drop, Press press, double step, Watcher watcher) {
        return new CoinCycle(rig, Visit.of(drop, press), CycleStage.REFUSES, step, watcher).run();
    }

    /** A visit of any kind. */
    public static CycleResult run(CycleRig rig, Visit visit, Watcher watcher) {
        return new CoinCycle(rig, visit, CycleStage.REFUSES, CoinLimits.STEP, watcher).run();
    }

    /** Whether one stage is reached, and all before it: what comes after is not computed. */
    public static CycleResult until(CycleStage last, CycleRig rig, Visit visit) {
        return new CoinCycle(rig, visit, last, CoinLimits.STEP, NOBODY).run();
    }

    /**
     * Whether a coin laid in the bucket at rest, lever waiting, tips it out of the lever's way.
     *
     * @param seat where its centre is laid
     */
    public static boolean tips(CycleRig rig, CoinDrop drop, Point seat) {
        CoinCycle cycle =
                new CoinCycle(rig, Visit.of(drop, new Press(0, 0)), CycleStage.FREES, CoinLimits.STEP, NOBODY);
        cycle.stepper.put(cycle.scene.coins[0], seat.x(), seat.y(), 0);
        cycle.let = 1;
        return cycle.frees();
    }

    /** The whole way of the press point, which is at least what the finger goes along its own direction. */
    private static double pressing(Lever lever, Press press) {
        double way = lever.pivot().distance(lever.press()) * Math.abs(lever.turn());
        return press.speed() > 0 ? way / press.speed() : 0;
    }

    private CycleResult run() {
        if (visit.leansFirst()) {
            stepper.finger(finger());
        }
        for (int i = 0; i < scene.coins.length; i++) {
            if (i > 0) {
                passUntil(stepper.time() + CoinLimits.APART);
            }
            CoinDrop drop = visit.coins().get(i);
            Point at = CycleScene.letGo(scene.assembly.coinWorks(), drop);
            stepper.put(scene.coins[i], at.x(), at.y(), drop.speed());
            let++;
            show();
        }
        if (visit.shake().acceleration() > 0) {
            passUntil(stepper.time() + CoinLimits.SHAKEN);
        }
        if (let == 0 || (frees() && first() && back())) {
            second();
        }
        return new CycleResult(
                times,
                nearest,
                byItself,
                stepper.isComputed(),
                stepper.closure(),
                stepper.residual(),
                stepper.energyFromNowhere(),
                stepper.attempts());
    }

    private Finger finger() {
        return Finger.push(1e6 * visit.press().force(), visit.press().speed());
    }

    /** The lever is free when it stays so as long as a visitor takes to press: a coin that bounces out does not do. */
    private boolean frees() {
        return scene.assembly.coinWorks().bridges() ? bridges() : tips();
    }

    /** The coin lies still before the visitor presses; pressed against the gate it takes the strut away. */
    private boolean bridges() {
        if (!passUntil(stepper.time() + CoinLimits.APART + CoinLimits.REACTION)) {
            return false;
        }
        near(CycleStage.LANDS, times.containsKey(CycleStage.LANDS) ? 1 : 0);
        stepper.finger(finger());
        return waitFor(CycleStage.FREES, () -> 1 - overlap() / overlapAtRest, 1, 1, pressing);
    }

    private boolean tips() {
        double end = stepper.time() + CoinLimits.PATIENCE;
        double freed = Double.NaN;
        double before = overlap();
        while (goesOn(end)) {
            advance(Double.isNaN(freed) ? end : Math.min(end, freed + CoinLimits.REACTION));
            double overlap = overlap();
            if (overlap >= 0) {
                freed = Double.NaN;
            } else if (Double.isNaN(freed)) {
                freed = before < 0 ? lastTime : crossing(before, overlap, 0);
            }
            if (stepper.time() - freed >= CoinLimits.REACTION - CoinLimits.INSTANT) {
                times.put(CycleStage.FREES, freed);
                return true;
            }
            before = overlap;
        }
        near(CycleStage.LANDS, times.containsKey(CycleStage.LANDS) ? 1 : 0);
        near(CycleStage.FREES, Math.min(1, 1 - overlap() / overlapAtRest));
        return false;
    }

    private boolean first() {
        stepper.finger(finger());
        return waitFor(CycleStage.ACTS, this::stroke, CoinLimits.DOWN, 1 / CoinLimits.DOWN, pressing * (1 - stroke()))
                && holdAfter(CycleStage.ACTS);
    }

    private boolean back() {
        stepper.finger(Finger.OFF);
        return (times.containsKey(CycleStage.THROWN) || waitFor(CycleStage.THROWN, this::fallen, 1, 1, 0))
                && waitFor(CycleStage.RETURNS, () -> 1 - stroke(), 1 - CoinLimits.BACK, 1 / (1 - CoinLimits.BACK), 0)
                && waitFor(
                        CycleStage.LOCKS,
                        () -> stroke() <= CoinLimits.BACK ? overlap() / overlapAtRest : 0,
                        CoinLimits.LOCKED,
                        1 / CoinLimits.LOCKED,
                        0)
                && holdAfter(CycleStage.LOCKS);
    }

    /** Lasts as long as a press without a catch would: else a slow one were held by the clock. */
    private void second() {
        stepper.finger(finger());
        double least = visit.shake().acceleration() > 0 ? CoinLimits.SHAKEN : CoinLimits.SECOND_PRESS;
        double end = stepper.time() + Math.max(least, pressing);
        byItself.put(CycleStage.REFUSES, pressing);
        double most = 0;
        while (goesOn(end)) {
            advance(end);
            most = Math.max(most, stroke());
        }
        boolean held = overlap() > 0 && most < CoinLimits.HELD;
        near(CycleStage.REFUSES, held ? 1 : 1 - most);
        if (held) {
            times.put(CycleStage.REFUSES, stepper.time());
        }
    }

    /**
     * Runs until a measure has grown to a limit, and notes when, between the steps.
     *
     * @param share makes it 1 at the limit
     * @param longer time beyond patience that the stage takes by itself, s: a press
     * @return false when patience ends before
     */
    private boolean waitFor(CycleStage stage, DoubleSupplier measure, double limit, double share, double longer) {
        double end = stepper.time() + CoinLimits.PATIENCE + longer;
        byItself.put(stage, longer);
        double before = measure.getAsDouble();
        near(stage, before * share);
        if (before >= limit) {
            times.putIfAbsent(stage, stepper.time());
            return true;
        }
        while (goesOn(end)) {
            advance(end);
            double now = measure.getAsDouble();
            near(stage, now * share);
            if (now >= limit) {
                times.putIfAbsent(stage, crossing(before, now, limit));
                return stepper.isComputed();
            }
            before = now;
        }
        return false;
    }

    private boolean holdAfter(CycleStage stage) {
        return passUntil(times.getOrDefault(stage, stepper.time()) + CoinLimits.HOLD);
    }

    private boolean passUntil(double end) {
        while (goesOn(end)) {
            advance(end);
        }
        return stepper.isComputed();
    }

    private boolean goesOn(double end) {
        return stepper.isComputed() && !times.containsKey(last) && stepper.time() < end - CoinLimits.INSTANT;
    }

    /** When, within the last step, a measure went through a limit, as if evenly. */
    private double crossing(double before, double now, double limit) {
        return lastTime + (limit - before) / (now - before) * (stepper.time() - lastTime);
    }

    /** One step, none beyond {@code until}. */
    private void advance(double until) {
        double before = fallen();
        lastTime = stepper.time();
        stepper.step(Math.min(step, until - lastTime));
        show();
        if (scene.assembly.coinWorks().bridges() ? liesOnLedge() : touchesBucket()) {
            times.putIfAbsent(CycleStage.LANDS, stepper.time());
        }
        if (times.containsKey(CycleStage.FREES)) {
            double fallen = fallen();
            near(CycleStage.THROWN, fallen);
            // One that bounced out before anyone pressed was not thrown: it counts once the figure has acted.
            if (fallen > 1 && before < 1) {
                times.putIfAbsent(CycleStage.THROWN, crossing(before, fallen, 1));
            }
        }
    }

    /** How far the coin that is highest has come down into the box: 1 when it is below the bucket. */
    private double fallen() {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < let; i++) {
            double start = scene.mechanism.bodies[scene.coins[i]].centreY();
            least = Math.min(least, (start - stepper.pose()[3 * scene.coins[i] + 1]) / (start - lowest));
        }
        return least;
    }

    private void show() {
        if (watcher != NOBODY) {
            scene.spread(stepper.pose(), shown);
            watcher.at(stepper.time(), shown);
        }
    }

    private void near(CycleStage stage, double share) {
        nearest.merge(stage, share, Math::max);
    }

    private boolean liesOnLedge() {
        CoinWorks works = scene.assembly.coinWorks();
        double floor = Math.max(works.heel().y(), works.toe().y()) + CoinLimits.AT_LEDGE;
        return let > 0
                && stepper.pose()[3 * scene.coins[0] + 1] - visit.coins().get(0).radius() < floor;
    }

    private boolean touchesBucket() {
        for (int r = 0; r < scene.onBucket.length; r++) {
            if (scene.onBucket[r] && stepper.bears(r)) {
                return true;
            }
        }
        return false;
    }

    private double stroke() {
        Lever lever = scene.assembly.lever();
        return (stepper.pose()[3 * scene.lever + 2] - lever.rest()) / lever.turn();
    }

    /** By how much the strut stands beneath the tooth, mm; negative when it is out of its way. */
    private double overlap() {
        CoinWorks works = scene.assembly.coinWorks();
        Lever lever = scene.assembly.lever();
        Point strut = works.strut().turnedAbout(works.pivot(), stepper.pose()[3 * scene.bucket + 2] - works.rest());
        double side = Math.signum(
                works.strut().distance(lever.pivot()) - works.tooth().distance(lever.pivot()));
        return side * (strut.distance(lever.pivot()) - works.tooth().distance(lever.pivot()));
    }
}
