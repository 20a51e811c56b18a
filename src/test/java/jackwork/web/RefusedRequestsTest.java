package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Real sockets against the real server: other sites' requests, more than is read, and senders who never finish. */
class RefusedRequestsTest {

    private static final Duration PATIENCE = Duration.ofSeconds(1);

    private Path demo;
    private PageServer server;
    private String pass;

    @BeforeEach
    void start() throws Exception {
        demo = DemoCopy.here();
        server = PageServer.start(Benches.at(demo), 0, List::of, PATIENCE);
        pass = "\r\nCookie: " + new Asking(server.address()).pass();
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    private Socket connected() throws IOException {
        Socket socket = new Socket("127.0.0.1", server.port());
        socket.setSoTimeout(20_000);
        return socket;
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static String answer(Socket socket) throws IOException {
        try (InputStream in = socket.getInputStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String ask(String line, String headers, String body) throws IOException {
        try (Socket socket = connected()) {
            send(
                    socket,
                    line + " HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + pass + "\r\nConnection: close\r\n"
                            + headers + "Content-Length: " + body.length() + "\r\n\r\n" + body);
            return answer(socket);
        }
    }

    /** What would change the heron, were it let through. */
    private String change() throws Exception {
        String version = new Asking(server.address())
                .json("api/version/heron")
                .path("version")
                .asString();
        return """
                {"base": "%s", "label": "x", "steps": [{"kind": "SET", "path": "box.coin-works.slot.width", "value": "3.1"}]}""".formatted(version);
    }

    @Test
    void anotherSiteChangesNothing() throws Exception {
        Path file = demo.resolve("heron/design.yaml");
        String before = Files.readString(file);
        String here = "http://127.0.0.1:" + server.port();
        String change = change();
        for (String header : List.of(
                "Origin: http://example.org",
                "Origin: null",
                "Origin: http://127.0.0.1",
                "Origin: " + here.replace("http", "https"),
                "Origin: " + here + ".example.org",
                "Sec-Fetch-Site: cross-site",
                "Sec-Fetch-Site: same-site")) {
            assertThat(ask("POST /api/edit/heron", header + "\r\nContent-Type: text/plain\r\n", change))
                    .as(header)
                    .startsWith("HTTP/1.1 403");
            assertThat(ask("GET /api/designs/heron", header + "\r\n", ""))
                    .as(header)
                    .startsWith("HTTP/1.1 403");
        }
        assertThat(Files.readString(file)).isEqualTo(before);
        // The very same, from the page itself, is what the others were refused.
        String own = "Origin: " + here + "\r\nSec-Fetch-Site: same-origin\r\n";
        assertThat(ask("POST /api/edit/heron", own, change)).startsWith("HTTP/1.1 200");
        assertThat(Files.readString(file)).isNotEqualTo(before);
    }

    @Test
    void aNameThatLeadsHereFromOutsideIsRefused() throws Exception {
        for (String host :
                List.of("example.org", "127.0.0.1", "127.0.0.1:1", "localhost.example.org:" + server.port())) {
            try (Socket socket = connected()) {
                send(socket, "GET /api/workshop HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
                assertThat(answer(socket)).as(host).startsWith("HTTP/1.1 403");
            }
        }
    }

    @Test
    void aBodyLargerThanIsReadIsRefusedInWords() throws Exception {
        String large = "x".repeat(70_000);
        assertThat(ask("POST /api/edit/heron", "", large))
                .startsWith("HTTP/1.1 413")
                .contains("larger than is read here");
        // What is on its way is let come: to hang up meanwhile would take the answer away.
        for (int i = 0; i < 20; i++) {
            try (Socket socket = connected()) {
                send(
                        socket,
                        "POST /api/edit/heron HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + pass
                                + "\r\nConnection: close\r\nContent-Length: 4000000\r\n\r\n");
                for (int piece = 0; piece < 40; piece++) {
                    send(socket, "x".repeat(100_000));
                }
                assertThat(answer(socket)).startsWith("HTTP/1.1 413");
            }
        }
        try (Socket socket = connected()) {
            // Without a length it is counted as it comes; the server need not hear it to its end.
            send(
                    socket,
                    "POST /api/edit/heron HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + pass
                            + "\r\nConnection: close\r\nTransfer-Encoding: chunked\r\n\r\n");
            try {
                for (int i = 0; i < 200; i++) {
                    send(socket, "2710\r\n" + "x".repeat(10_000) + "\r\n");
                }
            } catch (SocketException e) {
                return;
            }
            assertThat(answer(socket)).startsWith("HTTP/1.1 413");
        }
    }

    @Test
    void aBodyThatIsAnnouncedAndNeverComesIsRefused() throws Exception {
        try (Socket socket = connected()) {
            send(
                    socket,
                    "POST /api/edit/heron HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + pass
                            + "\r\nConnection: close\r\nContent-Length: 9999999999\r\n\r\n");
            // Told at once; the connection is closed when nothing comes for long.
            byte[] first = socket.getInputStream().readNBytes("HTTP/1.1 413".length());
            assertThat(new String(first, StandardCharsets.UTF_8)).isEqualTo("HTTP/1.1 413");
        }
    }

    @Test
    void aRequestThatBreaksOffChangesNothing() throws Exception {
        try (Socket socket = connected()) {
            String body = change();
            send(
                    socket,
                    "POST /api/edit/heron HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + pass + "\r\nContent-Length: "
                            + (body.length() + 9) + "\r\n\r\n" + body);
            socket.shutdownOutput();
            assertThat(answer(socket)).startsWith("HTTP/1.1 400").contains("broke off");
        }
        assertThat(demo.resolve(".jackwork")).doesNotExist();
    }

    /** Whoever asks first gets a go-ahead before the body is sent, and no refusal of the rest for it. */
    @Test
    void whoeverAsksBeforeSendingIsToldToGoOn() throws Exception {
        try (Socket socket = connected()) {
            String body = change();
            send(
                    socket,
                    "POST /api/edit/heron HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + pass
                            + "\r\nConnection: close\r\nExpect: 100-continue\r\nContent-Length: " + body.length()
                            + "\r\n\r\n");
            byte[] first = socket.getInputStream().readNBytes("HTTP/1.1 100".length());
            assertThat(new String(first, StandardCharsets.UTF_8)).isEqualTo("HTTP/1.1 100");
            send(socket, body);
            assertThat(answer(socket)).contains("HTTP/1.1 200");
        }
    }

    @Test
    void noHeaderMakesAChangeOfAQuestion() throws Exception {
        String change = change();
        assertThat(ask("GET /api/edit/heron", "X-HTTP-Method-Override: POST\r\n", change))
                .startsWith("HTTP/1.1 404");
        assertThat(demo.resolve(".jackwork")).doesNotExist();
    }

    @Test
    void whatNoAddressOrTextCanBeIsNoFaultOfOurs() throws Exception {
        assertThat(ask("GET /api/version/%u0041", "", "")).startsWith("HTTP/1.1 404");
        assertThat(ask("GET /api/picture/heron?part=%zz", "", "")).startsWith("HTTP/1.1 400");
        assertThat(ask("POST /api/edit/heron", "Content-Type: application/json; charset=nonsense\r\n", "{}"))
                .startsWith("HTTP/1.1 400");
    }

    /** Headers alone; what is there for GET is not worked out for it. */
    @Test
    void whoeverAsksForTheHeadAloneGetsNoBody() throws IOException {
        assertThat(ask("HEAD /api/designs/heron", "", ""))
                .startsWith("HTTP/1.1 200")
                .endsWith("\r\n\r\n");
        assertThat(ask("HEAD /no/such", "", "")).startsWith("HTTP/1.1 404").endsWith("\r\n\r\n");
    }

    @Test
    void aHeadThatIsTooLongIsRefused() throws IOException {
        assertThat(ask("GET /", "X-Long: " + "x".repeat(9_000) + "\r\n", "")).startsWith("HTTP/1.1 431");
    }

    /** Sends one letter of a header at a time; @return after how long it was hung up on. */
    private static Duration trickle(Socket socket, Duration most) throws InterruptedException {
        long start = System.nanoTime();
        try {
            while (System.nanoTime() - start < most.toNanos()) {
                send(socket, "x");
                Thread.sleep(50);
                socket.setSoTimeout(1);
                try {
                    if (socket.getInputStream().read() < 0) {
                        break;
                    }
                } catch (SocketTimeoutException e) {
                    continue;
                }
            }
        } catch (IOException e) {
            // Hung up on.
        }
        return Duration.ofNanos(System.nanoTime() - start);
    }

    @Test
    void whoeverTricklesAHeadIsHungUpOn() throws Exception {
        try (Socket fresh = connected()) {
            send(fresh, "GET / HTTP/1.1\r\nX-Slow: ");
            assertThat(trickle(fresh, PATIENCE.multipliedBy(5))).isLessThan(PATIENCE.multipliedBy(3));
        }
        // Not on its first request alone.
        try (Socket known = connected()) {
            send(known, "GET /style.css HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + "\r\n\r\n");
            known.getInputStream().read(new byte[1 << 20]);
            send(known, "GET / HTTP/1.1\r\nX-Slow: ");
            assertThat(trickle(known, PATIENCE.multipliedBy(5))).isLessThan(PATIENCE.multipliedBy(3));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST /api/edit/heron HTTP/1.1\r\nX-Slow: ", ""})
    void hundredsWhoTrickleOrAreSilentKeepThePageFromNobody(String begun) throws Exception {
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 300; i++) {
                Socket socket = connected();
                send(socket, begun);
                slow.add(socket);
            }
            // Those who came first are hung up on, and then there is room for it.
            assertThat(ask("GET /", "", "")).startsWith("HTTP/1.1 200");
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    @Test
    void whoeverTricklesABodyIsHungUpOn() throws Exception {
        try (Socket socket = connected()) {
            send(
                    socket,
                    "POST /api/edit/heron HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + pass
                            + "\r\nContent-Length: 60000\r\n\r\n");
            assertThat(trickle(socket, Duration.ofSeconds(10))).isLessThan(Duration.ofSeconds(6));
        }
        assertThat(ask("GET /", "", "")).startsWith("HTTP/1.1 200");
    }

    @Test
    void slowAnswersAreWaitedFor() throws Exception {
        // A first check of a design takes longer than a quarter of the patience; reading nothing meanwhile is no
        // slowness.
        assertThat(ask("GET /api/designs/heron", "", "")).startsWith("HTTP/1.1 200");
        try (Socket socket = connected()) {
            send(socket, "GET /style.css HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + "\r\n\r\n");
            Thread.sleep(PATIENCE.plusMillis(700).toMillis());
            send(socket, "GET / HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + "\r\nConnection: close\r\n\r\n");
            assertThat(answer(socket)).contains("<jackwork-page>");
        }
    }

    @Test
    void listensOnThisMachineAlone() throws Exception {
        for (InetAddress address :
                InetAddress.getAllByName(InetAddress.getLocalHost().getHostName())) {
            if (!address.isLoopbackAddress()) {
                // Free there: nobody listens on it but at 127.0.0.1.
                try (ServerSocket other = new ServerSocket(server.port(), 1, address)) {
                    assertThat(other.isBound()).isTrue();
                }
            }
        }
    }
}
