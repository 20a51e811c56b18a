package jackwork.motion;

import jackwork.Compared;
import jackwork.geometry.Point;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** How a step grows with the parts that hang together. */
@State(Scope.Thread)
@Compared(what = "a twentieth of a second of a hanging chain in 50 steps, by its links", grows = "links")
public class ChainGrowthBenchmark {

    private static final double SECONDS = 0.05;
    private static final double STEP = 1e-3;

    @Param({"2", "4", "8", "16", "32"})
    public int links;

    @Benchmark
    public Point ours() {
        return HangingChain.ours(links, SECONDS, STEP);
    }
}
