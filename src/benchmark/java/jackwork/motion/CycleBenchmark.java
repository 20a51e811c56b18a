package jackwork.motion;

import jackwork.Compared;
import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import java.nio.file.Path;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One whole cycle of a euro on the demo heron, box and figure, from the slot to the second press refused. */
@State(Scope.Thread)
@Compared(what = "a whole coin cycle of the demo heron, box and figure, one euro as numbered")
public class CycleBenchmark {

    private static final CoinDrop EURO = new CoinDrop(7.5, 11.625, 0, 60, 0.35, 0.3, 0.12);
    private static final Press PRESS = new Press(6, 150);

    private Assembly heron;

    /** The cycle must pass, else it would be timed at different work. */
    @Setup
    public void passOnce() {
        heron = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
        if (!ours().passes()) {
            throw new IllegalStateException("the heron's cycle does not pass");
        }
    }

    @Benchmark
    public CycleResult ours() {
        return CoinCycle.run(CycleRig.of(heron, 0, 0), EURO, PRESS, CoinCycle.NOBODY);
    }
}
