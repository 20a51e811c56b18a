package jackwork.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** How requests are answered: JSON that is ready, or a refusal in words. */
final class Answers {

    /** Attribute of a request whose refusal is written already. */
    private static final String ANSWERED = "answered";

    private Answers() {}

    static void json(Context context, String body) {
        context.contentType("application/json").result(body);
    }

    static void refuse(Context context, HttpStatus status, @Nullable String problem, String remedy) {
        context.attribute(ANSWERED, true);
        json(context.status(status), new Refusal(String.valueOf(problem), remedy).json());
    }

    /** A word of the query; empty when it is not there. */
    static String word(Context context, String name) {
        String word = context.queryParam(name);
        return word == null ? "" : word;
    }

    /** A whole number of the query. */
    static int number(Context context, String name) {
        return whole(word(context, name));
    }

    static int whole(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new BadRequestException("read \"" + text + "\", expected a whole number");
        }
    }

    /** The body, larger than other requests' may be; no more than that is ever read. */
    static byte[] body(Context context, int most, Supplier<RuntimeException> tooLarge) {
        try (InputStream in = context.bodyInputStream()) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw tooLarge.get();
            }
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is to be saved as a file; of its name only what means nothing in a header. */
    static Context download(Context context, String type, String name) {
        String plain = name.replaceAll("[^A-Za-z0-9._-]+", "-");
        return context.contentType(type).header("Content-Disposition", "attachment; filename=\"" + plain + "\"");
    }

    static boolean isRefused(Context context) {
        return context.attribute(ANSWERED) != null;
    }
}
