package jackwork.builds;

import jackwork.geometry.Wanted;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import jackwork.parts.Bearing;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Tries a build with every coin: what fails out of the plane first, then the whole cycle. */
final class BuildTrial {

    /** What rests deeper in another than rounding may leave it, mm. */
    private static final double RESTS_IN = 1e-6;

    private BuildTrial() {}

    static BuildResult run(int number, Build build, List<Coin> coins) {
        List<BuildResult.Trial> trials = new ArrayList<>();
        CycleRig rig = rig(build);
        for (Coin coin : coins) {
            Wanted.goOn();
            trials.add(trial(build, rig, coin, CoinCycle.NOBODY));
        }
        return new BuildResult(number, List.copyOf(trials));
    }

    static BuildResult.Trial trial(Build build, CycleRig rig, Coin coin, CoinCycle.Watcher watcher) {
        return watch(build, rig, coin, watcher).trial();
    }

    static Watched watch(Build build, CycleRig rig, Coin coin, CoinCycle.Watcher watcher) {
        CoinWorks works = build.assembly.coinWorks();
        double diameter = coin.diameter() + build.coinWidth;
        double play = Math.min(
                works.slotWidth() + build.kerf - 2 * build.film - coin.thickness(),
                works.slotLength() + build.kerf - 2 * build.film - diameter);
        if (play <= 0) {
            return fails(coin, Cause.SLOT, play / coin.thickness());
        }
        double room = build.assembly.coinGap() - 2 * build.film - build.warp - coin.thickness();
        if (room <= 0) {
            return fails(coin, Cause.GAP, room / coin.thickness());
        }
        Bearing bearing = build.assembly.bucketBearing();
        double roundest = bearing.clearance() - (bearing.isOnShoulder() ? 0 : build.outOfRound);
        if (roundest <= 0) {
            return fails(coin, Cause.BEARING, roundest);
        }
        double twist = 1 - works.shift(bearing) / (works.sideGap() - 2 * build.film - build.warp);
        if (twist <= 0) {
            return fails(coin, Cause.TWIST, twist);
        }
        double under = rig.catchRoom();
        if (under < -RESTS_IN) {
            // The strut comes to stand beside the tooth, not under it.
            double margin = -stagesFrom(CycleStage.LOCKS) + Math.max(0, 1 + under);
            return new Watched(
                    new BuildResult.Trial(coin.code(), Optional.of(Cause.LOCKS), true, margin), Optional.empty());
        }
        CycleResult cycle = cycle(build, rig, coin, watcher);
        Optional<Cause> cause = cycle.computed() ? cycle.firstMissed().map(Cause::of) : Optional.empty();
        BuildResult.Trial trial = new BuildResult.Trial(
                coin.code(),
                cause,
                cycle.computed(),
                cycle.computed() ? Math.min(margin(cycle), cycle.passes() ? twist : 0) : Double.NaN);
        return new Watched(trial, Optional.of(cycle));
    }

    static CycleRig rig(Build build) {
        return CycleRig.of(
                build.assembly,
                new CycleRig.Circumstances(
                        build.kerf,
                        Math.toRadians(build.tilt),
                        build.leverAside(),
                        build.bucketAside(),
                        build.slips,
                        build.stopRebound,
                        build.stiction));
    }

    static CycleResult cycle(Build build, CycleRig rig, Coin coin, CoinCycle.Watcher watcher) {
        return CoinCycle.run(rig, drop(build, coin), press(build), watcher);
    }

    /** What is missing of what a cause says does not happen, by the margin of its trial: nought where it just happens. */
    static double missing(Cause cause, double margin) {
        boolean moves = Arrays.stream(CycleStage.values()).anyMatch(stage -> Cause.of(stage) == cause);
        return moves ? 1 - stagesFrom(CycleStage.valueOf(cause.name())) - margin : -CycleStage.values().length - margin;
    }

    private static long stagesFrom(CycleStage missed) {
        return Arrays.stream(CycleStage.values())
                .filter(stage -> stage.compareTo(missed) >= 0)
                .count();
    }

    private static Watched fails(Coin coin, Cause cause, double lack) {
        double margin = -CycleStage.values().length + lack;
        return new Watched(new BuildResult.Trial(coin.code(), Optional.of(cause), true, margin), Optional.empty());
    }

    static CoinDrop drop(Build build, Coin coin) {
        double play = build.assembly.coinWorks().slotLength() - coin.diameter() - build.coinWidth;
        return new CoinDrop(
                coin.mass() * build.coinMass,
                coin.radius() + build.coinWidth / 2,
                build.offset * play / 2,
                build.dropSpeed,
                build.assembly.coinWorks().coinFriction().coefficient().value(),
                build.rebound,
                build.bucketRebound);
    }

    static Press press(Build build) {
        return new Press(build.pressForce, build.pressSpeed);
    }

    /** Passed: the share of its time left to the slowest stage. Failed: stages missed, less how near the first came. */
    private static double margin(CycleResult cycle) {
        Optional<CycleStage> missed = cycle.firstMissed();
        if (missed.isEmpty()) {
            return cycle.timeLeft();
        }
        double near = cycle.nearest().getOrDefault(missed.get(), 0.0);
        return -stagesFrom(missed.get()) + Math.max(0, Math.min(1, near));
    }
}
