package jackwork.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Spec;

/** {@code jackwork}. */
@Command(
        name = "jackwork",
        mixinStandardHelpOptions = true,
        version = "Jackwork 0.1.0",
        description = "A workbench for small coin-worked wooden figures on money boxes.",
        subcommands = {
            OpenCommand.class,
            CheckCommand.class,
            PackCommand.class,
            PriceCommand.class,
            ReplayCommand.class,
            TuneCommand.class,
            NewCommand.class,
            TraceCommand.class,
            MeasureCommand.class,
            BenchCommand.class,
            MechanismCommand.class,
            CoinsCommand.class,
            StockCommand.class
        })
public final class Main implements Runnable {

    @Spec
    private CommandLine.Model.CommandSpec spec = CommandLine.Model.CommandSpec.create();

    public static void main(String[] arguments) {
        // Same bytes on every machine, whatever its locale.
        System.setOut(new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8));
        int exit = run(arguments);
        System.out.flush();
        System.exit(exit);
    }

    /** @return the exit code */
    static int run(String... arguments) {
        return new CommandLine(new Main())
                .setExecutionExceptionHandler(new Outcome())
                .execute(arguments);
    }

    @Override
    public void run() {
        spec.commandLine().usage(System.err);
        throw new CommandLine.ParameterException(spec.commandLine(), "say what to do: one of the commands above");
    }
}
