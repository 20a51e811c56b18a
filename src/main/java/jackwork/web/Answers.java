package jackwork.web;

import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** How requests are answered: JSON that is ready, or a refusal in words. */
final class Answers {

    private Answers() {}

    static void json(Exchange exchange, String body) {
        exchange.answer("application/json", body);
    }

    static void refuse(Exchange exchange, int status, @Nullable String problem, String remedy) {
        json(exchange.setStatus(status), new Refusal(String.valueOf(problem), remedy).json());
    }

    /** A word of the query; empty when it is not there. */
    static String word(Exchange exchange, String name) {
        String word = exchange.query(name);
        return word == null ? "" : word;
    }

    /** A whole number of the query. */
    static int number(Exchange exchange, String name) {
        return whole(word(exchange, name));
    }

    static int whole(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new BadRequestException("read \"" + text + "\", expected a whole number");
        }
    }

    /** The body, larger than other requests' may be; no more than that is ever read. */
    static byte[] body(Exchange exchange, int most, Supplier<RuntimeException> tooLarge) {
        try {
            byte[] bytes = exchange.bodyStream().readNBytes(most + 1);
            if (bytes.length > most) {
                throw tooLarge.get();
            }
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is answered is to be saved as a file; of its name only what means nothing in a header. */
    static void toBeSaved(Exchange exchange, String name) {
        String plain = name.replaceAll("[^A-Za-z0-9._-]+", "-");
        exchange.setHeader("Content-Disposition", "attachment; filename=\"" + plain + "\"");
    }
}
