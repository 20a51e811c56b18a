package jackwork.motion;

import jackwork.Compared;
import jackwork.design.DesignReader;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import jackwork.parts.Assembler;
import java.nio.file.Path;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How a cycle's time grows with what the figure is made of. */
@State(Scope.Thread)
@Compared(
        what = "a whole coin cycle of one euro on each demo: the heron's 10 bodies folded into the lever and each by"
                + " itself; the others with gears, strings, cams and free parts, which stay by themselves")
public class DesignCycleBenchmark {

    private static final CoinDrop EURO = new CoinDrop(7.5, 11.625, 0, 60, 0.35, 0.3, 0.12);

    @Param({"heron", "heron unfolded", "lamplighter", "windmill", "cobbler"})
    public String design;

    private CycleRig rig;

    @Setup
    public void make() {
        String name = design.replaceAll(" .*", "");
        var assembly = Assembler.assemble(DesignReader.read(Path.of("demo", name)));
        rig = design.equals(name) ? CycleRig.of(assembly, 0, 0) : CycleRig.unfolded(assembly, 0, 0);
    }

    @Benchmark
    public CycleResult ours() {
        return CoinCycle.run(rig, EURO, new Press(6, 150), CoinCycle.NOBODY);
    }
}
