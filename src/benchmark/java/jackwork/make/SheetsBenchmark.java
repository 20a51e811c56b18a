package jackwork.make;

import jackwork.Compared;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.nio.file.Path;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How laying out grows with the pieces of a batch. */
@State(Scope.Thread)
@Compared(what = "the demo heron's sheets laid out, and all that a batch takes counted", grows = "pieces")
public class SheetsBenchmark {

    @Param({"1", "2", "4", "8"})
    public int pieces;

    private Design heron;

    @Setup
    public void read() {
        heron = DesignReader.read(Path.of("demo/heron"));
    }

    @Benchmark
    public Quantities ours() {
        return Quantities.of(heron, pieces);
    }
}
