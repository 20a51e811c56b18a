package jackwork.builds;

import jackwork.check.CoinTrips;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.coin.Visit;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import jackwork.motion.time.Shake;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import jackwork.stock.Stray;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Someone in front of the piece as numbered, without any spread, and what came of each thing they did. Not shared. */
final class Visitor {

    final Assembly assembly;
    /** Coins that the design accepts. */
    final List<Coin> coins;

    private final Build build;
    private final CycleRig rig;
    private @Nullable CycleRig whole;

    Visitor(Assembly assembly, List<Coin> coins) {
        this.assembly = assembly;
        this.coins = List.copyOf(coins);
        this.build = new Build(assembly);
        this.rig = BuildTrial.rig(build);
    }

    /** The accepted coin that has least to give. */
    Coin lightest() {
        return coins.stream().min(Comparator.comparingDouble(Coin::mass)).orElseThrow();
    }

    CoinDrop drop(Coin coin) {
        return BuildTrial.drop(build, coin);
    }

    CoinDrop drop(Stray stray) {
        return new CoinDrop(
                stray.mass(),
                stray.diameter() / 2,
                0,
                build.dropSpeed,
                stray.friction(),
                stray.rebound(),
                Math.min(stray.rebound(), build.bucketRebound));
    }

    /** Whether something goes through the slot. */
    boolean goesIn(double diameter, double thickness) {
        CoinWorks works = assembly.coinWorks();
        return diameter < works.slotLength() && thickness < works.slotWidth();
    }

    /** Whether its weight alone tips what it falls on; of a gate it is not asked. */
    boolean tipsLaidIn(CoinDrop drop) {
        return assembly.coinWorks().bridges()
                || CoinTrips.balance(assembly, drop.mass(), drop.radius()).surplus() > 0;
    }

    /** Lets some go one after the other, then presses. */
    CycleResult puts(CoinDrop... drops) {
        return CoinCycle.run(rig, new Visit(List.of(drops), comfortable(), false, Shake.NONE), CoinCycle.NOBODY);
    }

    /** Leans on the lever with a force, N, and lets a coin go. */
    CycleResult leans(double force, CoinDrop drop) {
        Press press = new Press(force, build.pressSpeed);
        return CoinCycle.run(rig, new Visit(List.of(drop), press, true, Shake.NONE), CoinCycle.NOBODY);
    }

    /** Pushes with a force, N, without a coin, on a table that leans by an angle, degrees. */
    CycleResult pushes(double force, double tilt) {
        CycleRig leaning = CycleRig.of(assembly, 0, Math.toRadians(tilt));
        Press press = new Press(force, build.pressSpeed);
        return CoinCycle.run(leaning, new Visit(List.of(), press, false, Shake.NONE), CoinCycle.NOBODY);
    }

    /** Shakes the box, and presses without a coin. */
    CycleResult shakes(Shake shake) {
        CycleRig bodies = whole;
        if (bodies == null) {
            bodies = CycleRig.unfolded(assembly, 0, 0);
            whole = bodies;
        }
        return CoinCycle.run(bodies, new Visit(List.of(), comfortable(), false, shake), CoinCycle.NOBODY);
    }

    static boolean isRefused(CycleResult result) {
        return result.computed() && result.times().containsKey(CycleStage.REFUSES);
    }

    /** What went wrong first, in words. */
    static String missed(CycleResult result) {
        return result.computed()
                ? result.firstMissed().map(stage -> Cause.of(stage).words()).orElse("nothing went wrong")
                : "that could not be computed";
    }

    Press comfortable() {
        return new Press(build.pressForce, build.pressSpeed);
    }
}
