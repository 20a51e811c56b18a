package jackwork.cli;

import jackwork.app.BringException;
import jackwork.app.UnknownDesignException;
import jackwork.bench.BenchException;
import jackwork.design.DesignException;
import jackwork.drawing.PictureException;
import jackwork.make.MakeException;
import jackwork.motion.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
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

    private static int cannotReadOrWrite(@Nullable IOException why) {
        String remedy = why instanceof AccessDeniedException
                ? "; the system refuses it: give yourself the right to, or take another folder"
                : "";
        System.err.println("cannot read or write: " + (why == null ? "" : why.getMessage()) + remedy);
        return BAD_INPUT;
    }
}
