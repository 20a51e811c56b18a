package jackwork.motion;

import jackwork.Compared;
import jackwork.geometry.Point;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A second of a ten-link chain ({@link HangingChain}), each with its largest step that ends within 0.01 mm. */
@State(Scope.Thread)
@Compared(
        what = "a second of a hanging chain of ten links, its end within 0.01 mm of a fine reference",
        peer = "the same chain by dyn4j at its own largest step, halved from 1 ms, that ends as near")
public class SecondToHundredthBenchmark {

    private static final double ERROR = 0.01;

    private double ourStep;
    private double peerStep;

    @Setup
    public void findSteps() {
        ourStep = HangingChain.ourStep(ERROR);
        peerStep = HangingChain.peerStep(ERROR);
    }

    @Benchmark
    public Point ours() {
        return HangingChain.ours(ourStep);
    }

    @Benchmark
    public Point peer() {
        return HangingChain.peer(peerStep);
    }
}
