package jackwork.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.HttpStatus;

/** The page itself: nothing but the program's own resources, and of those only names as plain as these. */
final class FileRoutes implements Routes {

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-]{1,60}\\.(html|js|css|svg)");
    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "svg", "image/svg+xml");

    /** A bundle of its own: fetched only by whoever looks at printed parts. */
    private static final String SOLIDS = "solids.js";

    private final Door door;

    FileRoutes(Door door) {
        this.door = door;
    }

    @Override
    public void add(Router routes) {
        routes.get("/", exchange -> {
            if (Door.isKnocking(exchange)) {
                door.enter(exchange);
            } else {
                file(exchange, "index.html");
            }
        });
        routes.get("/{file}", exchange -> file(exchange, exchange.parameter("file")));
    }

    /** Whether a path leads to nothing but the program's own files, the same for everyone. */
    static boolean isOpen(String path) {
        return path.equals("/")
                || (path.startsWith("/") && NAME.matcher(path.substring(1)).matches());
    }

    private static void file(Exchange exchange, String name) {
        Matcher matcher = NAME.matcher(name);
        if (!matcher.matches()) {
            missing(exchange);
            return;
        }
        String folder = name.equals(SOLIDS) ? "solids/" : "page/";
        try (InputStream in = PageServer.class.getResourceAsStream(folder + name)) {
            if (in == null) {
                missing(exchange);
            } else {
                exchange.answer(TYPES.getOrDefault(matcher.group(1), "application/octet-stream"), in.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void missing(Exchange exchange) {
        Answers.refuse(exchange, HttpStatus.NOT_FOUND_404, "there is nothing here", "Go to the page's first address.");
    }
}
