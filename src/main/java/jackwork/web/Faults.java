package jackwork.web;

import jackwork.app.wire.SavedException;
import jackwork.app.wire.TooLongException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.EofException;

/**
 * What no route foresees, in words all the same: a request that breaks off, a disk that takes nothing, and our own faults,
 * which are told on stderr as well, for whoever mends them.
 */
final class Faults {

    private Faults() {}

    static void add(Router routes) {
        routes.exception(TooLongException.class, (e, exchange) -> Askers.refuse(exchange, e));
        routes.exception(SavedException.class, Faults::saved);
        routes.exception(Throwable.class, Faults::unforeseen);
    }

    /** Nobody is to change again what is changed already. */
    private static void saved(SavedException e, Exchange exchange) {
        e.printStackTrace();
        Answers.refuse(
                exchange,
                HttpStatus.INTERNAL_SERVER_ERROR_500,
                e.getMessage(),
                "Reload the page to see it. Jackwork's own window says more; please keep that for whoever mends it.");
    }

    private static void unforeseen(Throwable e, Exchange exchange) {
        Throwable cause = e instanceof UncheckedIOException && e.getCause() != null ? e.getCause() : e;
        if (cause instanceof CancellationException || Askers.isDropped(exchange)) {
            Answers.refuse(
                    exchange,
                    HttpStatus.SERVICE_UNAVAILABLE_503,
                    "stopped: nobody waited for it any more",
                    "Nothing was changed; ask again.");
        } else if (cause instanceof HttpException refused && refused.getCode() == HttpStatus.PAYLOAD_TOO_LARGE_413) {
            Answers.refuse(
                    exchange,
                    HttpStatus.PAYLOAD_TOO_LARGE_413,
                    "what was sent is larger than is read here",
                    "Nothing was changed.");
        } else if (cause instanceof IOException && cause.getCause() instanceof TimeoutException) {
            Answers.refuse(
                    exchange,
                    HttpStatus.REQUEST_TIMEOUT_408,
                    "what was sent came too slowly",
                    "Nothing was changed; send it again.");
        } else if (cause instanceof EofException || cause instanceof HttpException) {
            Answers.refuse(
                    exchange,
                    HttpStatus.BAD_REQUEST_400,
                    "the request broke off, or is not what it says",
                    "Nothing was changed; send it again.");
        } else if (cause instanceof IOException) {
            Answers.refuse(
                    exchange,
                    HttpStatus.SERVICE_UNAVAILABLE_503,
                    "a file could not be read or written (" + cause.getMessage() + ")",
                    "Is the disk full, or may this folder not be written to? Make room, then try again.");
        } else {
            e.printStackTrace();
            Answers.refuse(
                    exchange,
                    HttpStatus.INTERNAL_SERVER_ERROR_500,
                    "this is our fault, not yours (" + e + ")",
                    "Jackwork's own window says more; please keep that for whoever mends it.");
        }
    }
}
