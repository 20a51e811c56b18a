package jackwork.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** What every command has: {@code --help}, {@code --version}, and an exit code as in {@link Outcome}. */
@Command(mixinStandardHelpOptions = true)
abstract class Subcommand implements Callable<Integer> {}
