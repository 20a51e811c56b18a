package jackwork.web;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.util.JavalinBindException;
import jackwork.app.Refusal;
import jackwork.app.UnknownDesignException;
import jackwork.app.Workbench;
import jackwork.design.DesignException;
import jackwork.motion.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Serves the page and its data on 127.0.0.1 alone; other hosts' names and other sites' pages are refused. */
public final class PageServer {

    private static final String LOOPBACK = "127.0.0.1";
    /** Attribute of a request whose refusal is written already. */
    private static final String ANSWERED = "answered";

    /** Everything that is not data: path and type. Nothing else is ever read from disk for a request. */
    private static final Map<String, String> FILES = Map.of(
            "/index.html", "text/html; charset=utf-8",
            "/main.js", "text/javascript; charset=utf-8",
            "/style.css", "text/css; charset=utf-8",
            "/favicon.svg", "image/svg+xml");

    private final Javalin server;

    private PageServer(Javalin server) {
        this.server = server;
    }

    /** @param port 0 for any that is free */
    public static PageServer start(Workbench workbench, int port) {
        Javalin server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.jetty.host = LOOPBACK;
            config.jetty.port = port;
            config.http.maxRequestSize = 64 * 1024L;
            config.routes.before(PageServer::guard);
            config.routes.get("/", context -> file(context, "/index.html"));
            FILES.keySet().forEach(path -> config.routes.get(path, context -> file(context, path)));
            config.routes.get("/api/workshop", context -> json(context, workbench.workshopJson()));
            config.routes.get(
                    "/api/designs/<id>", context -> json(context, workbench.designJson(context.pathParam("id"))));
            config.routes.exception(
                    UnknownDesignException.class,
                    (e, context) -> refuse(
                            context, HttpStatus.NOT_FOUND, e.getMessage(), "Choose one of the workshop's designs."));
            List.of(DesignException.class, MechanismException.class, PartException.class)
                    .forEach(fault -> config.routes.exception(fault, PageServer::unusable));
            config.routes.error(404, context -> {
                if (context.attribute(ANSWERED) == null) {
                    refuse(context, HttpStatus.NOT_FOUND, "there is nothing here", "Go to the page's first address.");
                }
            });
        });
        try {
            return new PageServer(server.start());
        } catch (JavalinBindException e) {
            throw new UncheckedIOException(new IOException("port " + port + " is in use; choose another, or none", e));
        }
    }

    public int port() {
        return server.port();
    }

    public URI address() {
        return URI.create("http://" + LOOPBACK + ":" + port() + "/");
    }

    public void stop() {
        server.stop();
    }

    /** Names of this machine only, no other site's page; and headers that let the page load nothing foreign. */
    private static void guard(Context context) {
        int port = context.req().getLocalPort();
        Set<String> hosts = Set.of(LOOPBACK + ":" + port, "localhost:" + port, "[::1]:" + port);
        String host = context.header("Host");
        String origin = context.header("Origin");
        context.header("Content-Security-Policy", "default-src 'self'; frame-ancestors 'none'; base-uri 'none'");
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        context.header("Cache-Control", "no-store");
        boolean foreignOrigin = origin != null && hosts.stream().noneMatch(h -> origin.equals("http://" + h));
        if (host == null || !hosts.contains(host) || foreignOrigin) {
            refuse(
                    context,
                    HttpStatus.FORBIDDEN,
                    "this page answers only to its own machine",
                    "Open the address that Jackwork printed.");
            context.skipRemainingHandlers();
        }
    }

    /** A design's files cannot be used as they are: the maker's to mend. */
    private static void unusable(Exception fault, Context context) {
        refuse(
                context,
                HttpStatus.UNPROCESSABLE_CONTENT,
                fault.getMessage(),
                "Mend the file; the page reads it again.");
    }

    private static void file(Context context, String path) {
        try (InputStream in = PageServer.class.getResourceAsStream("page" + path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the program's own resources");
            }
            context.contentType(typeOf(path)).result(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String typeOf(String path) {
        String type = FILES.get(path);
        return type == null ? "application/octet-stream" : type;
    }

    private static void json(Context context, String body) {
        context.contentType("application/json").result(body);
    }

    private static void refuse(Context context, HttpStatus status, @Nullable String problem, String remedy) {
        context.attribute(ANSWERED, true);
        json(context.status(status), new Refusal(String.valueOf(problem), remedy).json());
    }
}
