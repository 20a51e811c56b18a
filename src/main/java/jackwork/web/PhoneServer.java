package jackwork.web;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.util.JavalinBindException;
import jackwork.app.bench.PhoneHost;
import jackwork.app.bench.PhoneLog;
import jackwork.app.wire.Refusal;
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
import org.jspecify.annotations.Nullable;

/**
 * Lets a phone log, from one address of this machine and nothing else: no design, no file, no other page is reached here.
 * Without a session there is nothing but an empty page. Plain HTTP: a workshop's network has no certificates, so whoever
 * listens in it can read along.
 */
public final class PhoneServer {

    private static final String COOKIE = "jackwork-bench";
    private static final String ANSWERED = "answered";

    private static final Map<String, String> FILES = Map.of(
            "/phone.html", "text/html; charset=utf-8",
            "/phone.js", "text/javascript; charset=utf-8",
            "/phone.css", "text/css; charset=utf-8");

    private final PhoneLog log;
    private final String host;
    private final Sessions sessions;
    private final Javalin server;

    private PhoneServer(PhoneLog log, InetAddress address, int port, Clock clock) {
        this.log = log;
        this.host = address instanceof Inet6Address ? "[" + address.getHostAddress() + "]" : address.getHostAddress();
        this.sessions = new Sessions(clock);
        this.server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.jetty.host = address.getHostAddress();
            config.jetty.port = port;
            config.http.maxRequestSize = 128 * 1024L;
            SlowClients.refuse(config.jetty, SlowClients.PATIENCE);
            config.routes.before(this::guard);
            config.routes.get("/", context -> file(context, "/phone.html"));
            config.routes.get("/phone.js", context -> file(context, "/phone.js"));
            config.routes.get("/phone.css", context -> file(context, "/phone.css"));
            config.routes.post("/session", this::enter);
            config.routes.get("/choices", context -> let(context, () -> log.choicesJson()));
            config.routes.post("/log", context -> let(context, () -> this.log.logJson(context.body())));
            config.routes.exception(
                    BenchException.class,
                    (e, context) ->
                            refuse(context, HttpStatus.SERVICE_UNAVAILABLE, e.getMessage(), "Mend it at the bench."));
            config.routes.exception(
                    IllegalArgumentException.class,
                    (e, context) -> refuse(context, HttpStatus.BAD_REQUEST, e.getMessage(), "Load the page anew."));
            Faults.add(config.routes);
            config.routes.error(404, context -> {
                if (context.attribute(ANSWERED) == null) {
                    refuse(context, HttpStatus.NOT_FOUND, "there is nothing here", "Use the link from the bench.");
                }
            });
        });
    }

    /** @param port 0 for any that is free */
    public static PhoneServer start(PhoneLog log, InetAddress address, int port, Clock clock) {
        PhoneServer phone = new PhoneServer(log, address, port, clock);
        try {
            phone.server.start();
            return phone;
        } catch (JavalinBindException e) {
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
    private void guard(Context context) {
        String own = host + ":" + context.req().getLocalPort();
        String origin = context.header("Origin");
        context.header(
                "Content-Security-Policy",
                "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src data:;"
                        + " frame-ancestors 'none'; base-uri 'none'; form-action 'none'");
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        context.header("Cache-Control", "no-store");
        boolean posts = context.req().getMethod().equals("POST");
        boolean foreign = origin == null ? posts : !origin.equals("http://" + own);
        if (!own.equals(context.header("Host")) || foreign) {
            refuse(
                    context,
                    HttpStatus.FORBIDDEN,
                    "this page answers only to itself",
                    "Use the link that Jackwork printed.");
            context.skipRemainingHandlers();
        }
    }

    private void enter(Context context) {
        Optional<String> session = sessions.enter(PhoneLog.token(context.body()));
        if (session.isEmpty()) {
            refuse(
                    context,
                    HttpStatus.UNAUTHORIZED,
                    "this link has been used, or is too old",
                    "Ask for another at the bench.");
            return;
        }
        context.header(
                "Set-Cookie", COOKIE + "=" + session.get() + "; Path=/; HttpOnly; SameSite=Strict; Max-Age=43200");
        json(context, "{}");
    }

    private interface Answer {
        String body();
    }

    private void let(Context context, Answer answer) {
        if (sessions.holds(context.cookie(COOKIE))) {
            json(context, answer.body());
        } else {
            refuse(context, HttpStatus.UNAUTHORIZED, "this phone is not let in", "Ask for a link at the bench.");
        }
    }

    private static void file(Context context, String path) {
        try (InputStream in = PhoneServer.class.getResourceAsStream("phone" + path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the program's own resources");
            }
            context.contentType(FILES.getOrDefault(path, "application/octet-stream"))
                    .result(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void json(Context context, String body) {
        context.contentType("application/json").result(body);
    }

    private static void refuse(Context context, HttpStatus status, @Nullable String problem, String remedy) {
        context.attribute(ANSWERED, true);
        json(context.status(status), new Refusal(String.valueOf(problem), remedy).json());
    }
}
