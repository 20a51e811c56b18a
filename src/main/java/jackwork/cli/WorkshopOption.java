package jackwork.cli;

import jackwork.app.bench.Bench;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Which workshop's bench. */
final class WorkshopOption {

    @Option(
            names = "--workshop",
            paramLabel = "FOLDER",
            description = "the workshop, or a folder in it; where you are when absent")
    private Path folder = Path.of("");

    Bench bench() {
        return Bench.in(folder);
    }
}
