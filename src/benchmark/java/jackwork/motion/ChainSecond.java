package jackwork.motion;

import jackwork.geometry.Point;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A second of a ten-link chain ({@link HangingChain}), each with its largest step that ends within an error. */
@State(Scope.Thread)
public abstract class ChainSecond {

    private final double error;
    private double ourStep;
    private double peerStep;

    /** @param error mm */
    ChainSecond(double error) {
        this.error = error;
    }

    @Setup
    public void findSteps() {
        ourStep = HangingChain.ourStep(error);
        peerStep = HangingChain.peerStep(error);
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
