package jackwork.motion;

import jackwork.Compared;
import jackwork.motion.model.Mechanism;
import jackwork.motion.rest.StrokeResult;
import jackwork.motion.rest.StrokeSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/**
 * The demo heron's whole stroke in 200 poses. The peer finds the poses alone ({@link LeastSquaresPose});
 * {@link StrokeSolver} also solves forces without friction and with friction both ways at each of them,
 * and locates stops, locks and reversals of force between them. The two do not do the same work: the
 * ratio says what forces and events cost beside a stroke of poses by a general solver.
 */
@State(Scope.Thread)
@Compared(
        aim = 15_000,
        what = "the demo heron's stroke in 200 poses, with forces in both directions and located events",
        peer = "200 poses as in Pose, from the drawn one on; no forces, no events")
public class StrokeBenchmark {

    private static final int SAMPLES = 200;

    private Mechanism mechanism;
    private LeastSquaresPose peer;

    /** Both must go the whole way, else they would be timed at different work. */
    @Setup
    public void reachBothEnds() {
        mechanism = Heron.mechanism();
        peer = new LeastSquaresPose(mechanism);
        double reach = StrokeSolver.solve(mechanism, SAMPLES).reach();
        if (reach != 1) {
            throw new IllegalStateException("the heron reaches stroke " + reach + " only");
        }
    }

    @Benchmark
    public StrokeResult ours() {
        return StrokeSolver.solve(mechanism, SAMPLES);
    }

    @Benchmark
    public void peer(Blackhole hole) {
        peer.reset();
        for (int i = 0; i < SAMPLES; i++) {
            hole.consume(peer.moveTo((double) i / (SAMPLES - 1)));
        }
    }
}
