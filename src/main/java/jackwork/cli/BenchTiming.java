package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.bench.Kinds;
import jackwork.bench.Timing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jackwork bench timing DESIGN --operation glue --minutes 41}. */
@Command(name = "timing", description = "Logs how long an operation took.")
final class BenchTiming extends Subcommand {

    @Mixin
    private RevisionOption which = new RevisionOption();

    @Option(names = "--operation", paramLabel = "WORD", required = true, description = "in your words: glue")
    private String operation = "";

    @Option(names = "--minutes", paramLabel = "M", required = true, description = "for all the pieces together")
    private double minutes;

    @Option(names = "--pieces", paramLabel = "N", description = "done at once; 1 when absent")
    private int pieces = 1;

    @Mixin
    private EntryOptions entry = new EntryOptions();

    @Override
    public Integer call() {
        Bench bench = which.bench();
        Timing timing = BadInputException.unless(
                () -> new Timing(entry.stamp(), which.revision(bench).name(), operation, minutes, pieces));
        bench.log().add(Kinds.TIMINGS, timing);
        System.out.println(timing.revision() + ": " + operation + ", " + minutes / pieces + " minutes a piece");
        return Outcome.FINE;
    }
}
