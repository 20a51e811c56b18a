package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Who is asked for an answer, over a real socket. */
@Tag("quick")
class RouterTest {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final List<String> told = Collections.synchronizedList(new ArrayList<>());
    private final Router routes = new Router(
            10,
            exchange -> {
                boolean let = exchange.header("Stranger") == null;
                exchange.setStatus(let ? 200 : 403);
                return let;
            },
            exchange -> exchange.setStatus(404));
    private Listening listening;

    @BeforeEach
    void start() throws IOException {
        routes.watch("/told/", exchange -> told.add("before"), exchange -> told.add("after " + exchange.status()));
        routes.exception(IOException.class, (e, exchange) -> exchange.answer("text/plain", "a file's"));
        routes.exception(FileSystemException.class, (e, exchange) -> exchange.answer("text/plain", "one file's"));
        routes.exception(Throwable.class, (e, exchange) -> exchange.setStatus(500));
        routes.post("/told/body", exchange -> exchange.answer("text/plain", exchange.body()));
        listening = Listening.at("127.0.0.1", 0, routes, SlowClients.PATIENCE);
    }

    @AfterEach
    void stop() {
        listening.stop();
    }

    private HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + listening.port() + path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void aFaultIsAnsweredByWhatFitsItMostClosely() throws Exception {
        routes.get("/denied", exchange -> {
            throw new AccessDeniedException("x");
        });
        routes.get("/broken", exchange -> {
            throw new IOException("x");
        });
        routes.get("/deep", exchange -> {
            throw new StackOverflowError();
        });
        assertThat(send(to("/denied")).body()).isEqualTo("one file's");
        assertThat(send(to("/broken")).body()).isEqualTo("a file's");
        assertThat(send(to("/deep")).statusCode()).isEqualTo(500);
    }

    @Test
    void whoWatchesIsToldWhateverBecomesOfIt() throws Exception {
        routes.get("/told/fault", exchange -> {
            throw new IllegalStateException("x");
        });
        send(to("/told/fault"));
        send(to("/told/nothing"));
        send(to("/not-told"));
        assertThat(told).containsExactly("before", "after 500", "before", "after 404");
    }

    @Test
    void whomTheGuardRefusesNobodyElseHears() throws Exception {
        AtomicInteger heard = new AtomicInteger();
        routes.get("/told/secret", exchange -> heard.incrementAndGet());
        assertThat(send(to("/told/secret").header("Stranger", "yes")).statusCode())
                .isEqualTo(403);
        assertThat(told).isEmpty();
        assertThat(heard).hasValue(0);
        send(to("/told/secret"));
        assertThat(heard).hasValue(1);
    }

    @Test
    void theFirstRouteThatFitsAnswers() throws Exception {
        routes.get("/a/b", exchange -> exchange.answer("text/plain", "fixed"));
        routes.get("/a/{x}", exchange -> exchange.answer("text/plain", exchange.parameter("x")));
        assertThat(send(to("/a/b")).body()).isEqualTo("fixed");
        assertThat(send(to("/a/c")).body()).isEqualTo("c");
        assertThat(send(to("/a/c").DELETE()).statusCode()).isEqualTo(404);
    }

    @Test
    void aBodyIsReadUpToItsLimit() throws Exception {
        HttpRequest.Builder fits = to("/told/body").POST(HttpRequest.BodyPublishers.ofString("0123456789"));
        assertThat(send(fits).body()).isEqualTo("0123456789");
        HttpRequest.Builder more = to("/told/body").POST(HttpRequest.BodyPublishers.ofString("0123456789a"));
        assertThat(send(more).statusCode()).isEqualTo(500);
    }

    /** Hanging up on a sender takes away what was sent to it and is not read yet. */
    @Test
    void whoSendsWhatNobodyWantsIsAnsweredAllTheSame() throws Exception {
        byte[] answer = new byte[300_000];
        routes.get("/whole", exchange -> exchange.answer("text/plain", answer));
        try (Socket socket = new Socket("127.0.0.1", listening.port())) {
            socket.setSoTimeout(20_000);
            for (int i = 0; i < 3; i++) {
                String head = "GET /whole HTTP/1.1\r\nHost: x\r\nContent-Length: 2\r\n\r\n";
                socket.getOutputStream().write(head.getBytes(StandardCharsets.ISO_8859_1));
                assertThat(socket.getInputStream().readNBytes(answer.length)).hasSize(answer.length);
                socket.getOutputStream().write("{}".getBytes(StandardCharsets.ISO_8859_1));
            }
        }
    }

    /** A pack is fetched as it is read: whoever gets half of one must not take it for the whole. */
    @Test
    void anAnswerThatBreaksOffIsNotTakenForWhole() throws Exception {
        byte[] half = new byte[300_000];
        Arrays.fill(half, (byte) 'x');
        List<Boolean> closed = new ArrayList<>();
        routes.get("/whole", exchange -> exchange.answer("text/plain", new ByteArrayInputStream(half)));
        routes.get(
                "/half",
                exchange -> exchange.answer(
                        "text/plain", new SequenceInputStream(new ByteArrayInputStream(half), broken(closed))));
        assertThat(send(to("/whole")).body()).hasSize(half.length);
        assertThatThrownBy(() -> send(to("/half"))).isInstanceOf(IOException.class);
        assertThat(closed).containsExactly(true);
    }

    private static InputStream broken(List<Boolean> closed) {
        return new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the disk is gone");
            }

            @Override
            public void close() {
                closed.add(true);
            }
        };
    }
}
