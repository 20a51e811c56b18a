package jackwork.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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
    public void add(RoutesConfig routes) {
        routes.get("/", context -> {
            if (Door.isKnocking(context)) {
                door.enter(context);
            } else {
                file(context, "index.html");
            }
        });
        routes.get("/{file}", context -> file(context, context.pathParam("file")));
    }

    /** Whether a path leads to nothing but the program's own files, the same for everyone. */
    static boolean isOpen(String path) {
        return path.equals("/")
                || (path.startsWith("/") && NAME.matcher(path.substring(1)).matches());
    }

    private static void file(Context context, String name) {
        Matcher matcher = NAME.matcher(name);
        if (!matcher.matches()) {
            missing(context);
            return;
        }
        String folder = name.equals(SOLIDS) ? "solids/" : "page/";
        try (InputStream in = PageServer.class.getResourceAsStream(folder + name)) {
            if (in == null) {
                missing(context);
            } else {
                context.contentType(TYPES.getOrDefault(matcher.group(1), "application/octet-stream"))
                        .result(in.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void missing(Context context) {
        Answers.refuse(context, HttpStatus.NOT_FOUND, "there is nothing here", "Go to the page's first address.");
    }
}
