package jackwork.cli;

import jackwork.app.core.MechanismJson;
import jackwork.design.DesignReader;
import picocli.CommandLine.Command;

/** {@code jackwork mechanism DESIGN}. */
@Command(name = "mechanism", description = "The compiled mechanism as JSON, to be checked with tools of your own.")
final class MechanismCommand extends DesignCommand {

    @Override
    public Integer call() {
        System.out.print(MechanismJson.of(DesignReader.read(design)));
        return Outcome.FINE;
    }
}
