package jackwork.cli;

import jackwork.bench.Archive;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code jackwork bench export DIR}. */
@Command(name = "export", description = "Writes the whole log as CSV files, and the frozen designs beside them.")
final class BenchExport extends Subcommand {

    @Parameters(paramLabel = "DIR", description = "a new or empty folder")
    private Path folder = Path.of("");

    @Mixin
    private WorkshopOption workshop = new WorkshopOption();

    @Override
    public Integer call() throws IOException {
        Archive.write(workshop.bench().log(), folder).forEach(System.out::println);
        return Outcome.FINE;
    }
}
