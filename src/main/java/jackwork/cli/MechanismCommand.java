package jackwork.cli;

import jackwork.app.core.MechanismJson;
import jackwork.design.DesignReader;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code jackwork mechanism DESIGN}. */
@Command(
        name = "mechanism",
        mixinStandardHelpOptions = true,
        description = "The compiled mechanism as JSON, to be checked with tools of your own.")
final class MechanismCommand implements Callable<Integer> {

    @Parameters(paramLabel = "DESIGN", description = "the design's folder")
    private Path design = Path.of("");

    @Override
    public Integer call() {
        System.out.print(MechanismJson.of(DesignReader.read(design)));
        return Outcome.FINE;
    }
}
