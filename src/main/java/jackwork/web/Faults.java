package jackwork.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import jackwork.app.wire.SavedException;
import jackwork.app.wire.TooLongException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.CancellationException;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.EofException;

/**
 * What no route foresees, in words all the same: a request that breaks off, a disk that takes nothing, and our own faults,
 * which are told on stderr as well, for whoever mends them.
 */
final class Faults {

    private Faults() {}

    static void add(RoutesConfig routes) {
        routes.exception(HttpResponseException.class, Faults::refused);
        routes.exception(TooLongException.class, (e, context) -> Askers.refuse(context, e));
        routes.exception(SavedException.class, Faults::saved);
        routes.exception(Exception.class, Faults::unforeseen);
    }

    /** Refused by the server itself: larger than requests may be, most often. */
    private static void refused(HttpResponseException e, Context context) {
        boolean large = e.getStatus() == HttpStatus.CONTENT_TOO_LARGE.getCode();
        String problem = large ? "what was sent is larger than is read here" : String.valueOf(e.getMessage());
        Answers.refuse(context, HttpStatus.forStatus(e.getStatus()), problem, "Nothing was changed.");
    }

    /** Nobody is to change again what is changed already. */
    private static void saved(SavedException e, Context context) {
        e.printStackTrace();
        Answers.refuse(
                context,
                HttpStatus.INTERNAL_SERVER_ERROR,
                e.getMessage(),
                "Reload the page to see it. Jackwork's own window says more; please keep that for whoever mends it.");
    }

    private static void unforeseen(Exception e, Context context) {
        Throwable cause = e instanceof UncheckedIOException && e.getCause() != null ? e.getCause() : e;
        if (cause instanceof CancellationException || Askers.isDropped(context)) {
            Answers.refuse(
                    context,
                    HttpStatus.SERVICE_UNAVAILABLE,
                    "stopped: nobody waited for it any more",
                    "Nothing was changed; ask again.");
        } else if (cause instanceof EofException || cause instanceof HttpException) {
            Answers.refuse(
                    context,
                    HttpStatus.BAD_REQUEST,
                    "the request broke off, or is not what it says",
                    "Nothing was changed; send it again.");
        } else if (cause instanceof IOException) {
            Answers.refuse(
                    context,
                    HttpStatus.SERVICE_UNAVAILABLE,
                    "a file could not be read or written (" + cause.getMessage() + ")",
                    "Is the disk full, or may this folder not be written to? Make room, then try again.");
        } else {
            e.printStackTrace();
            Answers.refuse(
                    context,
                    HttpStatus.INTERNAL_SERVER_ERROR,
                    "this is our fault, not yours (" + e + ")",
                    "Jackwork's own window says more; please keep that for whoever mends it.");
        }
    }
}
