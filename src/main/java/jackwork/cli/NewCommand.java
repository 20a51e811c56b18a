package jackwork.cli;

import jackwork.app.bring.Demo;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork new NAME --from EXAMPLE}. */
@Command(name = "new", description = "A new design folder, from an example.")
final class NewCommand extends Subcommand {

    @Parameters(paramLabel = "NAME", description = "name of the new design and its folder")
    private String name = "";

    @Option(
            names = "--from",
            paramLabel = "EXAMPLE",
            description = "a design of the demo, or bare boards with a mechanism: nodding, bowing, lifting, flapping,"
                    + " turning, hammering; heron when absent")
    private String example = "heron";

    @Option(names = "--in", paramLabel = "FOLDER", description = "the workshop; this folder when absent")
    private Path workshop = Path.of("");

    @Override
    public Integer call() throws IOException {
        if (!name.matches("[\\p{L}0-9][\\p{L}0-9 _-]{0,60}")) {
            throw new BadInputException(
                    "the name reads \"" + name + "\", expected letters, digits, spaces and hyphens, at most 61");
        }
        Path folder = Demo.newDesign(workshop, name, example);
        System.out.println(folder);
        return Outcome.FINE;
    }
}
