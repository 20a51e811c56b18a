package jackwork;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.NoBenchmarksException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs the benchmarks and prints one table, then whole commands. A run of all is also written to
 * {@code docs/benchmarks/YYYY-MM-DD.md}, with curves of growth beside it; a run of some is only printed, so that it never
 * replaces the day's whole table. One more benchmark is one more class with {@link Compared}.
 */
public final class Speed {

    private static final int WARM_UPS = 3;
    /** Many short ones: the interval of ten is far narrower than that of five. */
    private static final int MEASUREMENTS = 10;

    private static final int WARM_UP_MILLISECONDS = 1000;
    private static final int MEASUREMENT_MILLISECONDS = 500;
    private static final int SECONDS =
            (WARM_UPS * WARM_UP_MILLISECONDS + MEASUREMENTS * MEASUREMENT_MILLISECONDS) / 1000;
    /** The program's own collector, and a heap laid out beforehand: neither helpers nor new pages in the times. */
    private static final String[] JAVA = {"-XX:+UseSerialGC", "-Xms128m", "-Xmx128m", "-XX:+AlwaysPreTouch"};

    private static final Path DOCS = Path.of("docs", "benchmarks");
    private static final Path LOG = Path.of("target", "speed.log");
    private static final Path RAW = Path.of("target", "speed.json");

    private Speed() {}

    /** @param words none, or one regular expression that a benchmark's name must hold */
    public static void main(String[] words) throws IOException, InterruptedException {
        String pattern = words.length == 0 ? ".*" : words[0];
        System.err.println("Measuring, " + SECONDS + " s a benchmark; the whole log is in " + LOG);
        try {
            Collection<RunResult> results = new Runner(options(pattern)).run();
            SpeedTable table = SpeedTable.of(results);
            System.out.print(table.plain());
            if (words.length == 0) {
                System.err.println("Whole commands, each in a process of its own ...");
                String commands = WholeCommands.page(WholeCommands.all());
                System.out.println("\n" + commands);
                System.out.println("Written to " + write(table, commands, Growth.draw(results, DOCS)));
            }
        } catch (NoBenchmarksException e) {
            System.err.println("./check speed: no benchmark's name holds \"" + pattern + "\"");
            System.exit(2);
        } catch (RunnerException e) {
            System.err.println("./check speed: a benchmark failed; " + LOG + " says why (" + e.getMessage() + ")");
            System.exit(1);
        }
    }

    private static Options options(String pattern) {
        return new OptionsBuilder()
                .include(pattern)
                .mode(Mode.AverageTime)
                .timeUnit(TimeUnit.MICROSECONDS)
                .warmupIterations(WARM_UPS)
                .warmupTime(TimeValue.milliseconds(WARM_UP_MILLISECONDS))
                .measurementIterations(MEASUREMENTS)
                .measurementTime(TimeValue.milliseconds(MEASUREMENT_MILLISECONDS))
                .forks(1)
                .jvmArgs(JAVA)
                .shouldFailOnError(true)
                .output(LOG.toString())
                .result(RAW.toString())
                .resultFormat(ResultFormatType.JSON)
                .build();
    }

    private static Path write(SpeedTable table, String commands, String curves) throws IOException {
        LocalDate today = LocalDate.now();
        Path file = DOCS.resolve(today + ".md");
        String method =
                "One run of `./check speed`: %d warm-ups of %d ms and %d measurements of %d ms, each benchmark in a fresh Java (%s)."
                        .formatted(
                                WARM_UPS,
                                WARM_UP_MILLISECONDS,
                                MEASUREMENTS,
                                MEASUREMENT_MILLISECONDS,
                                String.join(" ", JAVA));
        return Files.writeString(
                file,
                "# Speed, " + today + "\n\n" + Machine.describe() + "\n" + method + "\n\n" + table.page()
                        + "\n## Whole commands\n\nAs a maker starts them, each in a fresh process; wanted on two cores: at most 512 MiB.\n\n"
                        + commands + "\n## Growth\n\n" + curves);
    }
}
