package jackwork.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork bench strike KIND NUMBER --why TEXT}. */
@Command(name = "strike", description = "Makes a wrong entry not count; it stays in the log with the reason.")
final class BenchStrike extends Subcommand {

    @Parameters(index = "0", paramLabel = "KIND", description = "as for list")
    private String name = "";

    @Parameters(index = "1", paramLabel = "NUMBER", description = "as list prints it")
    private long number;

    @Option(names = "--why", paramLabel = "TEXT", required = true)
    private String why = "";

    @Mixin
    private WorkshopOption workshop = new WorkshopOption();

    @Override
    public Integer call() {
        BadInputException.unless(() -> {
            workshop.bench().log().strike(BenchList.kind(name), number, why);
            return name;
        });
        System.out.println("Struck: " + number + " of the " + name);
        return Outcome.FINE;
    }
}
