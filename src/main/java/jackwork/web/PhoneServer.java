package jackwork.web;

import jackwork.app.bench.PhoneHost;
import jackwork.app.bench.PhoneLog;
import jackwork.bench.BenchException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.URI;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.http.HttpStatus;

/**
 * Lets a phone log, from one address of this machine and nothing else: no design, no file, no other page is reached here.
 * Without a session there is nothing but an empty page. Plain HTTP: a workshop's network has no certificates, so whoever
 * listens in it can read along.
 */
public final class PhoneServer {

    /** Of what a phone sends at once. */
    private static final int MOST_BYTES = 128 * 1024;

    private static final String COOKIE = "jackwork-bench";

    private static final Map<String, String> FILES = Map.of(
            "/phone.html", "text/html; charset=utf-8",
            "/phone.js", "text/javascript; charset=utf-8",
            "/phone.css", "text/css; charset=utf-8");

    private final PhoneLog log;
    private final String host;
    private final Sessions sessions;
    private final Listening server;

    private PhoneServer(PhoneLog log, InetAddress address, int port, Clock clock) throws IOException {
        this.log = log;
        this.host = address instanceof Inet6Address ? "[" + address.getHostAddress() + "]" : address.getHostAddress();
        this.sessions = new Sessions(clock);
        this.server = Listening.at(address.getHostAddress(), port, routes(), SlowClients.PATIENCE);
    }

    private Router routes() {
        Router routes = new Router(
                MOST_BYTES,
                this::guard,
                exchange -> Answers.refuse(
                        exchange, HttpStatus.NOT_FOUND_404, "there is nothing here", "Use the link from the bench."));
        routes.get("/", exchange -> file(exchange, "/phone.html"));
        routes.get("/phone.js", exchange -> file(exchange, "/phone.js"));
        routes.get("/phone.css", exchange -> file(exchange, "/phone.css"));
        routes.post("/session", this::enter);
        routes.get("/choices", exchange -> let(exchange, log::choicesJson));
        routes.post("/log", exchange -> let(exchange, () -> log.logJson(exchange.body())));
        Faults.add(routes);
        routes.exception(
                BenchException.class,
                (e, exchange) -> Answers.refuse(
                        exchange, HttpStatus.SERVICE_UNAVAILABLE_503, e.getMessage(), "Mend it at the bench."));
        routes.exception(
                IllegalArgumentException.class,
                (e, exchange) ->
                        Answers.refuse(exchange, HttpStatus.BAD_REQUEST_400, e.getMessage(), "Load the page anew."));
        return routes;
    }

    /** @param port 0 for any that is free */
    public static PhoneServer start(PhoneLog log, InetAddress address, int port, Clock clock) {
        try {
            return new PhoneServer(log, address, port, clock);
        } catch (IOException e) {
            throw new UncheckedIOException(new IOException(
                    "cannot listen at " + address.getHostAddress() + ", port " + port
                            + ": is it this machine's, and is the port free?",
                    e));
        }
    }

    int port() {
        return server.port();
    }

    /** An address that lets one phone in, once. What stands behind the # never leaves the phone's browser by itself. */
    public URI link() {
        return URI.create("http://" + host + ":" + port() + "/#" + sessions.invite());
    }

    boolean open() {
        return sessions.open();
    }

    List<PhoneHost.Guest> guests() {
        return sessions.guests();
    }

    public void stop() {
        server.stop();
    }

    /** One name, this page only, and headers that let it load nothing foreign. */
    private boolean guard(Exchange exchange) {
        String own = host + ":" + exchange.port();
        String origin = exchange.header("Origin");
        exchange.setHeader(
                "Content-Security-Policy",
                "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src data:;"
                        + " frame-ancestors 'none'; base-uri 'none'; form-action 'none'");
        exchange.setHeader("X-Content-Type-Options", "nosniff");
        exchange.setHeader("Referrer-Policy", "no-referrer");
        exchange.setHeader("Cache-Control", "no-store");
        boolean posts = exchange.method().equals("POST");
        boolean foreign = origin == null ? posts : !origin.equals("http://" + own);
        if (!own.equals(exchange.header("Host")) || foreign) {
            Answers.refuse(
                    exchange,
                    HttpStatus.FORBIDDEN_403,
                    "this page answers only to itself",
                    "Use the link that Jackwork printed.");
            return false;
        }
        return true;
    }

    private void enter(Exchange exchange) throws IOException {
        Optional<String> session = sessions.enter(PhoneLog.token(exchange.body()));
        if (session.isEmpty()) {
            Answers.refuse(
                    exchange,
                    HttpStatus.UNAUTHORIZED_401,
                    "this link has been used, or is too old",
                    "Ask for another at the bench.");
            return;
        }
        exchange.setHeader(
                "Set-Cookie", COOKIE + "=" + session.get() + "; Path=/; HttpOnly; SameSite=Strict; Max-Age=43200");
        Answers.json(exchange, "{}");
    }

    private interface Answer {
        String body() throws IOException;
    }

    private void let(Exchange exchange, Answer answer) throws IOException {
        if (sessions.holds(exchange.cookie(COOKIE))) {
            Answers.json(exchange, answer.body());
        } else {
            Answers.refuse(
                    exchange, HttpStatus.UNAUTHORIZED_401, "this phone is not let in", "Ask for a link at the bench.");
        }
    }

    private static void file(Exchange exchange, String path) {
        try (InputStream in = PhoneServer.class.getResourceAsStream("phone" + path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the program's own resources");
            }
            exchange.answer(FILES.getOrDefault(path, "application/octet-stream"), in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
