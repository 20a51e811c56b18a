package jackwork.app;

import jackwork.Compared;
import jackwork.app.pay.Pricing;
import jackwork.price.PriceReport;
import java.nio.file.Path;
import java.util.Map;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** What a price costs while a hand slides it; the aim is ours. */
@State(Scope.Thread)
@Compared(
        what = "the demo heron's whole price report for another batch size, its sheets laid out before",
        aim = 100_000)
public class PriceAnswerBenchmark {

    private static final int MOST = 20;

    private Pricing pricing;
    private int pieces;

    @Setup
    public void layOut() {
        pricing = Pricing.of(Path.of("demo/heron"), 1, words -> {});
    }

    @Benchmark
    public PriceReport ours() {
        pieces = pieces % MOST + 1;
        return pricing.answer(new Pricing.Ask(pieces, null, null, Map.of(), Map.of()));
    }
}
