package jackwork.motion;

import jackwork.Compared;
import jackwork.design.DesignReader;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CoinLimits;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import java.nio.file.Path;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * One whole cycle of a euro on the demo heron, box and figure, from the slot to the second press refused. The piece is
 * made ready once, as a build does it for all its coins. The peer runs as long, at the same step, pressed for as long;
 * it neither lands on touches nor bounds its errors, so the ratio says what those cost beside a game's way.
 */
@State(Scope.Thread)
@Compared(
        aim = 10_000,
        what = "a whole coin cycle of the demo heron, box and figure, one euro as numbered, the piece made ready",
        peer = "dyn4j for as long at the same longest step, its own settings, every body; no friction in pins, no"
                + " landing on touches, no bounds on errors")
public class CycleBenchmark {

    private static final CoinDrop EURO = new CoinDrop(7.5, 11.625, 0, 60, 0.35, 0.3, 0.12);
    private static final Press PRESS = new Press(6, 150);

    private Assembly heron;
    private CycleRig rig;
    private double pressFrom;
    private double pressUntil;
    private double seconds;

    /** The cycle must pass, and the peer's coin land, else they would be timed at different work. */
    @Setup
    public void passOnce() {
        heron = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
        rig = CycleRig.of(heron, 0, 0);
        CycleResult result = ours();
        if (!result.passes()) {
            throw new IllegalStateException("the heron's cycle does not pass");
        }
        pressFrom = result.times().get(CycleStage.FREES) + 0.15;
        pressUntil = result.times().get(CycleStage.ACTS) + 0.1;
        seconds = result.times().get(CycleStage.REFUSES);
        if (!(peer() > 30)) {
            throw new IllegalStateException("the peer's coin falls by " + peer() + " mm only");
        }
    }

    @Benchmark
    public CycleResult ours() {
        return CoinCycle.run(rig, EURO, PRESS, CoinCycle.NOBODY);
    }

    @Benchmark
    public double peer() {
        return new CyclePeer(heron, EURO, CoinLimits.STEP).run(PRESS, pressFrom, pressUntil, seconds, CoinLimits.STEP);
    }
}
