package jackwork.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.util.JavalinBindException;
import jackwork.app.bench.BenchDesk;
import jackwork.app.bench.HouseNetwork;
import jackwork.app.bench.PhoneDesk;
import jackwork.app.bring.Bringing;
import jackwork.app.core.Editor;
import jackwork.app.core.Jobs;
import jackwork.app.core.Workbench;
import jackwork.app.pay.Paying;
import jackwork.app.wire.UnknownDesignException;
import jackwork.design.DesignException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Serves the page and its data on 127.0.0.1 alone, to whoever opened it; other accounts of this machine, other hosts' names
 * and other sites' pages are refused.
 */
public final class PageServer {

    private static final String LOOPBACK = "127.0.0.1";
    private final Javalin server;
    private final List<Routes> rooms;
    private final Door door;
    private final Askers askers;

    private PageServer(Javalin server, List<Routes> rooms, Door door, Askers askers) {
        this.server = server;
        this.rooms = rooms;
        this.door = door;
        this.askers = askers;
    }

    /** @param port 0 for any that is free */
    public static PageServer start(Workbench workbench, int port) {
        return start(workbench, port, HouseNetwork::addresses);
    }

    /** @param network addresses of this machine at which a phone may be let in */
    static PageServer start(Workbench workbench, int port, Supplier<List<InetAddress>> network) {
        return start(workbench, port, network, SlowClients.PATIENCE);
    }

    /** @param patience how long the head of a request may take */
    static PageServer start(Workbench workbench, int port, Supplier<List<InetAddress>> network, Duration patience) {
        Door door = new Door();
        Askers askers = new Askers(workbench.faces(), workbench.longest());
        Editor editor = new Editor(workbench);
        Jobs jobs = new Jobs(workbench.faces());
        PhoneDesk phone = new PhoneDesk(workbench, new LanHost(), network);
        List<Routes> rooms = List.of(
                new FileRoutes(door),
                new DesignRoutes(workbench, editor),
                new WorkshopRoutes(workbench),
                new PlayRoutes(workbench, jobs),
                new MakeRoutes(workbench, jobs),
                new PayRoutes(new Paying(workbench, jobs)),
                new BenchRoutes(new BenchDesk(workbench, jobs, phone), phone),
                new BringRoutes(workbench, editor));
        Javalin server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.jetty.host = LOOPBACK;
            config.jetty.port = port;
            config.http.maxRequestSize = 64 * 1024L;
            // Within one machine packing takes longer than sending.
            config.http.compressionStrategy = CompressionStrategy.NONE;
            SlowClients.refuse(config.jetty, patience);
            config.routes.before(context -> guard(context, door));
            config.routes.before("/api/*", askers::come);
            config.routes.after("/api/*", askers::leave);
            rooms.forEach(room -> room.add(config.routes));
            Faults.add(config.routes);
            config.routes.exception(
                    UnknownDesignException.class,
                    (e, context) -> Answers.refuse(
                            context, HttpStatus.NOT_FOUND, e.getMessage(), "Choose one of the workshop's designs."));
            List.of(DesignException.class, MechanismException.class, PartException.class)
                    .forEach(fault -> config.routes.exception(fault, PageServer::unusable));
            config.routes.error(404, context -> {
                if (!Answers.isRefused(context)) {
                    FileRoutes.missing(context);
                }
            });
        });
        try {
            return new PageServer(server.start(), rooms, door, askers);
        } catch (JavalinBindException e) {
            askers.close();
            throw new UncheckedIOException(new IOException("port " + port + " is in use; choose another, or none", e));
        }
    }

    public int port() {
        return server.port();
    }

    /** The address that is opened: it lets in whoever has it. */
    public URI address() {
        return URI.create(home() + door.query());
    }

    /** The address that the page has then. */
    URI home() {
        return URI.create("http://" + LOOPBACK + ":" + port() + "/");
    }

    public void stop() {
        server.stop();
        askers.close();
        rooms.forEach(Routes::close);
    }

    /** Who opened the page, names of this machine only, no other site's page; and headers that let it load nothing foreign. */
    private static void guard(Context context, Door door) {
        int port = context.req().getLocalPort();
        Set<String> hosts = Set.of(LOOPBACK + ":" + port, "localhost:" + port, "[::1]:" + port);
        String host = context.header("Host");
        String origin = context.header("Origin");
        context.header("Content-Security-Policy", "default-src 'self'; frame-ancestors 'none'; base-uri 'none'");
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        context.header("Cache-Control", "no-store");
        boolean foreignOrigin = origin != null && hosts.stream().noneMatch(h -> origin.equals("http://" + h));
        if (host == null || !hosts.contains(host) || foreignOrigin || isAskedByAnotherSite(context)) {
            Answers.refuse(
                    context,
                    HttpStatus.FORBIDDEN,
                    "this page answers only to its own machine",
                    "Open the address that Jackwork printed.");
            context.skipRemainingHandlers();
        } else if (!FileRoutes.isOpen(context.path()) && !door.lets(context)) {
            Door.refuse(context);
            context.skipRemainingHandlers();
        } else if (context.req().getContentLengthLong() > Bringing.mostBytes()) {
            // Nobody waits for what is refused in any case.
            Answers.refuse(
                    context,
                    HttpStatus.CONTENT_TOO_LARGE,
                    "what is to be sent is larger than is read here",
                    "Nothing was changed.");
            context.skipRemainingHandlers();
        }
    }

    /** What a browser says of who asks: pictures and scripts of other pages name no origin. A link may lead to the page. */
    private static boolean isAskedByAnotherSite(Context context) {
        String site = context.header("Sec-Fetch-Site");
        boolean own = site == null || site.equals("same-origin") || site.equals("none");
        return !own && !FileRoutes.isOpen(context.path());
    }

    /** A design's files cannot be used as they are: the maker's to mend. */
    private static void unusable(Exception fault, Context context) {
        Answers.refuse(
                context,
                HttpStatus.UNPROCESSABLE_CONTENT,
                fault.getMessage(),
                HandlerType.GET.equals(context.method())
                        ? "Mend the file; the page reads it again."
                        : "Nothing was changed.");
    }
}
