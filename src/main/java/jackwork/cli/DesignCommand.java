package jackwork.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** A command about one design. */
abstract class DesignCommand extends Subcommand {

    @Parameters(paramLabel = "DESIGN", description = "the design's folder")
    Path design = Path.of("");
}
