package jackwork.cli;

import jackwork.bench.Archive;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code jackwork bench import FILE|DIR}. */
@Command(
        name = "import",
        description = "Takes over a CSV file, trials.csv say, or a folder that export wrote: all of it or nothing.")
final class BenchImport extends Subcommand {

    @Parameters(paramLabel = "FILE|DIR")
    private Path from = Path.of("");

    @Mixin
    private WorkshopOption workshop = new WorkshopOption();

    @Override
    public Integer call() throws IOException {
        if (!Files.exists(from)) {
            throw new BadInputException(from + ": no such file or folder");
        }
        Archive.Taken taken = Archive.read(workshop.bench().log(), from);
        System.out.println(taken.added() + " logged, " + taken.already() + " were there already");
        return Outcome.FINE;
    }
}
