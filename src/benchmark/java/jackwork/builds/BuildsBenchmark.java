package jackwork.builds;

import jackwork.Compared;
import jackwork.check.Subject;
import jackwork.design.DesignReader;
import java.nio.file.Path;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How virtual builds grow with their number and with threads: the heron with its four coins. */
@State(Scope.Thread)
@Compared(what = "virtual builds of the demo heron, each with its four coins, drawn and reported", grows = "builds")
public class BuildsBenchmark {

    @Param({"5", "20", "40"})
    public int builds;

    @Param({"1", "2"})
    public int threads;

    private Subject heron;

    @Setup
    public void read() {
        heron = Subject.of(DesignReader.read(Path.of("demo/heron")));
    }

    @Benchmark
    public BuildReport ours() throws InterruptedException {
        return new BuildRun(heron.assembly(), heron.coins(), builds, 7).run(threads, done -> {});
    }
}
