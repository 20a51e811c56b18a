package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.bench.Prediction;
import java.io.IOException;
import java.time.Instant;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jackwork bench predict DESIGN --builds 1000}. */
@Command(name = "predict", description = "Virtual builds of a frozen design, kept to be laid beside its trials.")
final class BenchPredict extends Subcommand {

    @Mixin
    private RevisionOption which = new RevisionOption();

    @Option(names = "--builds", paramLabel = "N", description = "10 to 100000; 1000 when absent")
    private int builds = 1000;

    @Option(names = "--seed", paramLabel = "S", description = "1 when absent")
    private long seed = 1;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (builds < 10 || builds > 100_000) {
            throw new BadInputException("--builds reads " + builds + ", expected 10 to 100000");
        }
        Bench bench = which.bench();
        int threads = Runtime.getRuntime().availableProcessors();
        Prediction prediction = bench.predict(
                which.revision(bench).name(),
                builds,
                seed,
                threads,
                Instant.now(),
                done -> CheckCommand.progress(done, builds));
        System.out.println(prediction.revision() + ": " + prediction.passes() + " of " + prediction.builds()
                + " builds pass with every coin, under spreads of which " + prediction.guesses() + " of "
                + prediction.numbers() + " are guesses");
        prediction.coins().forEach((coin, passes) -> System.out.println("    " + coin + " in " + passes));
        return Outcome.FINE;
    }
}
