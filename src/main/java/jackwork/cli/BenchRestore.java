package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.bench.Archive;
import jackwork.bench.RevisionName;
import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork bench restore DESIGN [--revision N] -o DIR}. */
@Command(
        name = "restore",
        description = "Writes a frozen design back into a folder, a small workshop of its own, to be packed again.")
final class BenchRestore extends Subcommand {

    @Parameters(paramLabel = "DESIGN", arity = "0..1", description = "the design's folder; or say --piece")
    private @Nullable Path design;

    @Option(names = "--revision", paramLabel = "N", description = "the last one when absent")
    private @Nullable Integer number;

    @Option(names = "--piece", paramLabel = "SERIAL", description = "the revision that this piece was made from")
    private @Nullable String serial;

    @Option(names = "-o", paramLabel = "DIR", required = true, description = "a new or empty folder")
    private Path out = Path.of("");

    @Mixin
    private WorkshopOption workshop = new WorkshopOption();

    @Override
    public Integer call() throws IOException {
        if ((design == null) == (serial == null)) {
            throw new BadInputException("name a DESIGN or a --piece, one of them");
        }
        Bench bench = design == null ? workshop.bench() : Bench.in(design);
        RevisionName name = serial != null
                ? bench.piece(serial).revision()
                : bench.revision(bench.id(design == null ? out : design), number)
                        .name();
        Archive.restore(bench.log(), name, out);
        System.out.println(out.resolve(name.design()));
        System.err.println(name + " as it was frozen; make its files with: jackwork pack " + out.resolve(name.design())
                + " -o DIR");
        return Outcome.FINE;
    }
}
