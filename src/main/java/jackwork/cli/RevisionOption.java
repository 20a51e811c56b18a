package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.bench.Revision;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which frozen state of which design. */
final class RevisionOption {

    @Parameters(paramLabel = "DESIGN", description = "the design's folder")
    Path design = Path.of("");

    @Option(names = "--revision", paramLabel = "N", description = "the last one when absent")
    private @Nullable Integer number;

    /** Its workshop's bench; a design that is gone is looked for from where it was. */
    Bench bench() {
        return Bench.in(design);
    }

    /** The one meant; says so when none was named and the files have changed since. */
    Revision revision(Bench bench) {
        Revision revision = bench.revision(bench.id(design), number);
        if (number == null && !bench.unchanged(revision)) {
            System.err.println("Taken for " + revision.name()
                    + ". The files have changed since: freeze them if this was made from them, or say --revision.");
        }
        return revision;
    }
}
