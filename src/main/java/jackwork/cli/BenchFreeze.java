package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.bench.Revision;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code jackwork bench freeze DESIGN --note TEXT}. */
@Command(
        name = "freeze",
        mixinStandardHelpOptions = true,
        description = "Keeps a design as it stands, file by file, as its next revision.")
final class BenchFreeze implements Callable<Integer> {

    @Parameters(paramLabel = "DESIGN", description = "the design's folder")
    private Path design = Path.of("");

    @Mixin
    private EntryOptions entry = new EntryOptions();

    @Override
    public Integer call() throws IOException {
        Bench bench = Bench.in(design);
        Optional<Revision> last = bench.log().last(bench.id(design));
        Revision frozen = bench.freeze(design, entry.stamp().note(), entry.at());
        System.out.println(frozen.name() + ": " + frozen.files().size() + " files kept");
        if (last.isPresent()) {
            System.out.println("Since " + last.get().name() + ":");
            bench.compare(last.get().name(), frozen.name()).stream()
                    .flatMap(difference -> difference.words().stream())
                    .forEach(line -> System.out.println("    " + line));
        }
        return Outcome.FINE;
    }
}
