package jackwork.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Spec;

/** {@code jackwork bench}. */
@Command(
        name = "bench",
        mixinStandardHelpOptions = true,
        description = "What really happened: the workshop's log, workshop.db.",
        subcommands = {
            BenchFreeze.class,
            BenchRevisions.class,
            BenchRestore.class,
            BenchTrial.class,
            BenchTiming.class,
            BenchMeasured.class,
            BenchPiece.class,
            BenchTakings.class,
            BenchPredict.class,
            BenchReportCommand.class,
            BenchUse.class,
            BenchList.class,
            BenchStrike.class,
            BenchExport.class,
            BenchImport.class,
            BenchPhone.class
        })
final class BenchCommand implements Runnable {

    @Spec
    private CommandLine.Model.CommandSpec spec = CommandLine.Model.CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(System.err);
        throw new CommandLine.ParameterException(spec.commandLine(), "say what to log: one of the commands above");
    }
}
