package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.bench.Bench;
import jackwork.app.bench.PhoneLog;
import jackwork.bench.Kinds;
import jackwork.bench.Logged;
import jackwork.bench.Trial;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The phone's server, asked as a phone asks and as others might. */
class PhoneServerTest {

    private static final String ID = "0f8fad5b-d9cb-469f-a165-70867728950e";

    /** A clock that a test may put forward. */
    private static final class Hand extends Clock {
        private Instant now = Instant.parse("2026-03-01T09:30:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @TempDir
    private Path folder;

    private final Hand clock = new Hand();
    private Bench bench;
    private PhoneServer server;

    @BeforeEach
    void start() throws IOException {
        Path workshop = DemoCopy.at(folder.resolve("workshop"));
        bench = Bench.in(workshop);
        bench.freeze(workshop.resolve("heron"), "first", clock.now);
        server = PhoneServer.start(new PhoneLog(bench, clock), InetAddress.getLoopbackAddress(), 0, clock);
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    private HttpResponse<String> ask(String method, String path, String body, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .method(
                        method,
                        body.isEmpty()
                                ? HttpRequest.BodyPublishers.noBody()
                                : HttpRequest.BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private String origin() {
        return "http://127.0.0.1:" + server.port();
    }

    private HttpResponse<String> enter(String token) throws IOException, InterruptedException {
        return ask("POST", "/session", "{\"token\":\"" + token + "\"}", "Origin", origin());
    }

    private String session() throws IOException, InterruptedException {
        HttpResponse<String> entered = enter(server.link().getFragment());
        assertThat(entered.statusCode()).isEqualTo(200);
        String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie).contains("HttpOnly").contains("SameSite=Strict");
        return cookie.substring(0, cookie.indexOf(';'));
    }

    private static String trial(String id, String cause) {
        return "{\"entries\":[{\"id\":\"" + id + "\",\"kind\":\"trial\",\"at\":\"2026-03-01T09:30:00Z\","
                + "\"design\":\"heron\",\"revision\":1,\"coin\":\"EUR-1\",\"piece\":\"\",\"cause\":\"" + cause
                + "\"}]}";
    }

    @Test
    void aLinkLetsOneInOnce() throws Exception {
        String token = server.link().getFragment();
        assertThat(enter("wrong").statusCode()).isEqualTo(401);
        assertThat(enter(token).statusCode()).isEqualTo(200);
        assertThat(enter(token).statusCode()).isEqualTo(401);
        String old = server.link().getFragment();
        server.link();
        assertThat(enter(old).statusCode())
                .as("a newer link voids the one before")
                .isEqualTo(401);
        String late = server.link().getFragment();
        clock.now = clock.now.plus(Duration.ofMinutes(11));
        assertThat(enter(late).statusCode()).isEqualTo(401);
        assertThat(ask("POST", "/session", "no JSON", "Origin", origin()).statusCode())
                .isEqualTo(401);
    }

    @Test
    void aClockSetBackLetsNobodyInForLonger() throws Exception {
        String link = server.link().getFragment();
        String cookie = session();
        clock.now = clock.now.minusSeconds(3600);
        assertThat(server.guests()).isEmpty();
        assertThat(ask("GET", "/choices", "", "Cookie", cookie).statusCode()).isEqualTo(401);
        assertThat(enter(link).statusCode()).isEqualTo(401);
        // Asked for anew it lets one in, whatever the clock says.
        session();
    }

    @Test
    void withoutSessionThereIsNothing() throws Exception {
        assertThat(ask("GET", "/choices", "").statusCode()).isEqualTo(401);
        assertThat(ask("POST", "/log", trial(ID, ""), "Origin", origin()).statusCode())
                .isEqualTo(401);
        assertThat(ask("GET", "/choices", "", "Cookie", "jackwork-bench=" + "A".repeat(43))
                        .statusCode())
                .isEqualTo(401);
        assertThat(bench.log().list(Kinds.TRIALS)).isEmpty();
        String session = session();
        clock.now = clock.now.plus(Duration.ofHours(13));
        assertThat(ask("GET", "/choices", "", "Cookie", session).statusCode()).isEqualTo(401);
    }

    @Test
    void onlyLoggingIsReached() throws Exception {
        String session = session();
        for (String path : new String[] {
            "/api/workshop",
            "/api/designs/heron",
            "/main.js",
            "/index.html",
            "/workshop.db",
            "/../workshop.yaml",
            "/session"
        }) {
            assertThat(ask("GET", path, "", "Cookie", session).statusCode())
                    .as(path)
                    .isIn(400, 404);
        }
        HttpResponse<String> page = ask("GET", "/", "");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).doesNotContain("heron");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                .startsWith("default-src 'none'");
    }

    @Test
    void foreignPagesAndNamesAreRefused() throws Exception {
        String session = session();
        assertThat(ask("POST", "/log", trial(ID, ""), "Cookie", session).statusCode())
                .as("a post says where it comes from")
                .isEqualTo(403);
        assertThat(ask("POST", "/log", trial(ID, ""), "Cookie", session, "Origin", "http://example.org")
                        .statusCode())
                .isEqualTo(403);
        HttpResponse<String> named = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + "/"))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(named.statusCode()).isEqualTo(403);
        assertThat(bench.log().list(Kinds.TRIALS)).isEmpty();
    }

    @Test
    void sentTwiceLoggedOnce() throws Exception {
        String session = session();
        for (int i = 0; i < 3; i++) {
            HttpResponse<String> answer =
                    ask("POST", "/log", trial(ID, "lands"), "Cookie", session, "Origin", origin());
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.body()).contains("\"logged\":true");
        }
        assertThat(bench.log().counting(Kinds.TRIALS)).singleElement().satisfies(trial -> {
            assertThat(trial.failures()).containsEntry("lands", 1);
            assertThat(trial.coin()).isEqualTo("EUR-1");
        });
        String strike = "{\"entries\":[{\"id\":\"" + ID.replace('0', '1')
                + "\",\"kind\":\"strike-trial\",\"strikes\":\"" + ID + "\",\"at\":\"\"}]}";
        assertThat(ask("POST", "/log", strike, "Cookie", session, "Origin", origin())
                        .body())
                .contains("\"logged\":true");
        Logged<Trial> struck = bench.log().list(Kinds.TRIALS).get(0);
        assertThat(struck.struck()).isEqualTo("taken back on the phone");
    }

    @Test
    void whatIsNoEntryIsRefusedAndSaysWhy() throws Exception {
        String session = session();
        String[] bodies = {
            trial("x", ""),
            trial(ID, "landz"),
            trial(ID, "").replace("heron", "owl"),
            trial(ID, "").replace("trial", "takings")
        };
        for (String body : bodies) {
            HttpResponse<String> answer = ask("POST", "/log", body, "Cookie", session, "Origin", origin());
            assertThat(answer.statusCode()).isEqualTo(200);
            JsonNode result = JsonMapper.shared().readTree(answer.body()).at("/results/0");
            assertThat(result.get("logged").asBoolean()).isFalse();
            assertThat(result.get("problem").asString()).isNotBlank();
        }
        for (String body :
                new String[] {"", "[]", "{\"entries\":3}", "{", "{\"entries\":[" + "1,".repeat(300) + "1]}"}) {
            assertThat(ask("POST", "/log", body, "Cookie", session, "Origin", origin())
                            .statusCode())
                    .as(body)
                    .isEqualTo(400);
        }
        assertThat(ask("POST", "/log", " ".repeat(200_000), "Cookie", session, "Origin", origin())
                        .statusCode())
                .isEqualTo(413);
        assertThat(bench.log().list(Kinds.TRIALS)).isEmpty();
    }

    @Test
    void choicesAreThoseOfTheFrozenDesigns() throws Exception {
        JsonNode choices = JsonMapper.shared()
                .readTree(ask("GET", "/choices", "", "Cookie", session()).body());
        assertThat(choices.at("/designs/0/design").asString()).isEqualTo("heron");
        assertThat(choices.at("/designs/0/coins").size()).isEqualTo(4);
        assertThat(choices.at("/causes").size()).isEqualTo(12);
    }
}
