package jackwork.cli;

import jackwork.app.bring.BringException;
import jackwork.app.wire.UnknownDesignException;
import jackwork.bench.BenchException;
import jackwork.design.DesignException;
import jackwork.drawing.PictureException;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.InvalidPathException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Turns exceptions into words and exit codes, in this one place. */
final class Outcome implements IExecutionExceptionHandler {

    static final int FINE = 0;
    static final int FAILS = 1;
    static final int BAD_INPUT = 2;
    static final int OUR_FAULT = 3;

    @Override
    public int handleExecutionException(Exception thrown, CommandLine command, ParseResult parsed) {
        if (thrown instanceof DesignException
                || thrown instanceof MechanismException
                || thrown instanceof PartException
                || thrown instanceof MakeException
                || thrown instanceof UnknownDesignException
                || thrown instanceof PictureException
                || thrown instanceof BenchException
                || thrown instanceof BadInputException) {
            System.err.println(thrown.getMessage());
            return BAD_INPUT;
        }
        if (thrown instanceof BringException refused) {
            System.err.println(refused.getMessage() + ". " + refused.remedy());
            return BAD_INPUT;
        }
        if (thrown instanceof InvalidPathException path) {
            System.err.println("read \"" + path.getInput() + "\", which no file can be called here: " + path.getReason()
                    + (Locales.knowsAsciiAlone()
                            ? "; this system's locale knows no letters but ASCII: set one that knows all, as LC_ALL=C.UTF-8"
                            : ""));
            return BAD_INPUT;
        }
        if (thrown instanceof UncheckedIOException unchecked) {
            return cannotReadOrWrite(unchecked.getCause());
        }
        if (thrown instanceof IOException io) {
            return cannotReadOrWrite(io);
        }
        System.err.println("this is our fault, not yours; please keep the lines below for whoever mends it");
        thrown.printStackTrace();
        return OUR_FAULT;
    }

    /** The exit code, once all that was printed has come through. */
    static int delivered(int exit) {
        if (!System.out.checkError()) {
            return exit;
        }
        System.err.println("the output could not be written: there is no room where it goes, or nobody reads it any"
                + " more; what came through is not whole. Files that the command says it wrote are whole");
        return BAD_INPUT;
    }

    private static int cannotReadOrWrite(@Nullable IOException why) {
        String remedy =
                why instanceof AccessDeniedException || (why != null && why.getCause() instanceof AccessDeniedException)
                        ? "; the system refuses it: give yourself the right to, or take another folder"
                        : "";
        System.err.println("cannot read or write: " + (why == null ? "" : why.getMessage()) + remedy);
        return BAD_INPUT;
    }
}
