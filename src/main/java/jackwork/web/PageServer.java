package jackwork.web;

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
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.http.HttpStatus;

/**
 * Serves the page and its data on 127.0.0.1 alone, to whoever opened it; other accounts of this machine, other hosts' names
 * and other sites' pages are refused.
 */
public final class PageServer {

    private static final String LOOPBACK = "127.0.0.1";
    /** Of a request's text: a change is far less. What is brought in may be more ({@link BringRoutes}). */
    private static final int MOST_BYTES = 64 * 1024;

    private final Listening server;
    private final List<Routes> rooms;
    private final Door door;
    private final Askers askers;

    private PageServer(Listening server, List<Routes> rooms, Door door, Askers askers) {
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
                new RenewalRoutes(workbench),
                new WorkshopRoutes(workbench),
                new PlayRoutes(workbench, jobs),
                new MakeRoutes(workbench, jobs),
                new PayRoutes(new Paying(workbench, jobs)),
                new BenchRoutes(new BenchDesk(workbench, jobs, phone), phone),
                new BringRoutes(workbench, editor));
        Router routes = new Router(MOST_BYTES, exchange -> isLet(exchange, door), FileRoutes::missing);
        routes.watch("/api/", askers::come, askers::leave);
        rooms.forEach(room -> room.add(routes));
        Faults.add(routes);
        routes.exception(
                UnknownDesignException.class,
                (e, exchange) -> Answers.refuse(
                        exchange, HttpStatus.NOT_FOUND_404, e.getMessage(), "Choose one of the workshop's designs."));
        List.of(DesignException.class, MechanismException.class, PartException.class)
                .forEach(fault -> routes.exception(fault, PageServer::unusable));
        try {
            return new PageServer(Listening.at(LOOPBACK, port, routes, patience), rooms, door, askers);
        } catch (IOException e) {
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
    private static boolean isLet(Exchange exchange, Door door) {
        int port = exchange.port();
        Set<String> hosts = Set.of(LOOPBACK + ":" + port, "localhost:" + port, "[::1]:" + port);
        String host = exchange.header("Host");
        String origin = exchange.header("Origin");
        exchange.setHeader("Content-Security-Policy", "default-src 'self'; frame-ancestors 'none'; base-uri 'none'");
        exchange.setHeader("X-Content-Type-Options", "nosniff");
        exchange.setHeader("Referrer-Policy", "no-referrer");
        exchange.setHeader("Cache-Control", "no-store");
        boolean foreignOrigin = origin != null && hosts.stream().noneMatch(h -> origin.equals("http://" + h));
        if (host == null || !hosts.contains(host) || foreignOrigin || isAskedByAnotherSite(exchange)) {
            Answers.refuse(
                    exchange,
                    HttpStatus.FORBIDDEN_403,
                    "this page answers only to its own machine",
                    "Open the address that Jackwork printed.");
            return false;
        } else if (!FileRoutes.isOpen(exchange.path()) && !door.lets(exchange)) {
            Door.refuse(exchange);
            return false;
        } else if (exchange.length() > Bringing.mostBytes()) {
            // Nobody waits for what is refused in any case.
            Answers.refuse(
                    exchange,
                    HttpStatus.PAYLOAD_TOO_LARGE_413,
                    "what is to be sent is larger than is read here",
                    "Nothing was changed.");
            return false;
        }
        return true;
    }

    /** What a browser says of who asks: pictures and scripts of other pages name no origin. A link may lead to the page. */
    private static boolean isAskedByAnotherSite(Exchange exchange) {
        String site = exchange.header("Sec-Fetch-Site");
        boolean own = site == null || site.equals("same-origin") || site.equals("none");
        return !own && !FileRoutes.isOpen(exchange.path());
    }

    /** A design's files cannot be used as they are: the maker's to mend. */
    private static void unusable(Exception fault, Exchange exchange) {
        Answers.refuse(
                exchange,
                HttpStatus.UNPROCESSABLE_ENTITY_422,
                fault.getMessage(),
                HttpMethod.GET.is(exchange.method())
                        ? "Mend the file; the page reads it again."
                        : "Nothing was changed.");
    }
}
