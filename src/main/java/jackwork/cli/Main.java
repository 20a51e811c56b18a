package jackwork.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Spec;

/** {@code jackwork}. */
@Command(
        name = "jackwork",
        mixinStandardHelpOptions = true,
        version = "Jackwork 0.1.0",
        description = "A workbench for small coin-worked wooden figures on money boxes.")
public final class Main implements Runnable {

    private static final List<Class<?>> COMMANDS = List.of(
            OpenCommand.class,
            CheckCommand.class,
            PackCommand.class,
            PriceCommand.class,
            ReplayCommand.class,
            TuneCommand.class,
            NewCommand.class,
            RenewCommand.class,
            TraceCommand.class,
            MeasureCommand.class,
            BenchCommand.class,
            MechanismCommand.class,
            CoinsCommand.class,
            StockCommand.class);

    @Spec
    private CommandLine.Model.CommandSpec spec = CommandLine.Model.CommandSpec.create();

    public static void main(String[] arguments) {
        // Same bytes on every machine, whatever its locale.
        System.setOut(new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8));
        if (Locales.knowsAsciiAlone()) {
            // Talk is in the system's own letters, but where it has too few of them.
            System.setErr(new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8));
        }
        System.exit(run(arguments));
    }

    /** @return the exit code */
    static int run(String... arguments) {
        CommandLine line = new CommandLine(new Main());
        // The one that is typed, where it is one: to take in all of them takes longer than most of them run.
        List<Class<?>> typed = COMMANDS.stream()
                .filter(command -> arguments.length > 0 && name(command).equals(arguments[0]))
                .toList();
        (typed.isEmpty() ? COMMANDS : typed).forEach(line::addSubcommand);
        if (Locales.lost(arguments)) {
            System.err.println("read a word with letters that this system's locale does not know, and lost them;"
                    + " set one that knows all, as LC_ALL=C.UTF-8, and try again");
            return Outcome.BAD_INPUT;
        }
        return Outcome.delivered(
                line.setExecutionExceptionHandler(new Outcome()).execute(arguments));
    }

    private static String name(Class<?> command) {
        return command.getAnnotation(Command.class).name();
    }

    @Override
    public void run() {
        spec.commandLine().usage(System.err);
        throw new CommandLine.ParameterException(spec.commandLine(), "say what to do: one of the commands above");
    }
}
