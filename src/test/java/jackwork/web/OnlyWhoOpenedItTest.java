package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Another account of the same machine reaches the port, and nothing behind it. */
@Tag("quick")
class OnlyWhoOpenedItTest {

    private static final Path SOURCES = Path.of("src", "main", "java", "jackwork", "web");
    private static final Pattern ROUTE = Pattern.compile("routes\\.(get|post|delete)(?:Json)?\\(\\s*\"(/api/[^\"]+)\"");
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private Path hut;
    private PageServer server;

    @BeforeEach
    void start() throws IOException {
        hut = DemoCopy.here("heron");
        server = PageServer.start(Benches.at(hut), 0, List::of);
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    private static HttpResponse<String> send(URI address, String method, String... headers) throws Exception {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(address).method(method, HttpRequest.BodyPublishers.ofString("{}"));
        return CLIENT.send(
                (headers.length > 0 ? request.headers(headers) : request).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** Every route of the sources, not a list kept here. */
    private static Set<String> routes() throws IOException {
        Set<String> routes = new TreeSet<>();
        try (Stream<Path> files = Files.list(SOURCES)) {
            for (Path file : files.filter(path -> path.toString().endsWith("Routes.java"))
                    .toList()) {
                Matcher matcher = ROUTE.matcher(Files.readString(file));
                while (matcher.find()) {
                    routes.add(matcher.group(1) + " "
                            + matcher.group(2).replace("<id>", "heron").replaceAll("\\{[a-z]+}", "1"));
                }
            }
        }
        return routes;
    }

    @Test
    void noRouteAnswersWithoutThePass() throws Exception {
        assertThat(routes()).hasSizeGreaterThan(45);
        for (String route : routes()) {
            String method = route.substring(0, route.indexOf(' ')).toUpperCase(java.util.Locale.ROOT);
            URI address = server.home().resolve(route.substring(route.indexOf(' ') + 1));
            for (String[] headers : new String[][] {
                {},
                {"Cookie", "jackwork-" + server.port() + "="},
                {"Cookie", "jackwork-" + server.port() + "=" + "A".repeat(43)}
            }) {
                HttpResponse<String> answer = send(address, method, headers);
                assertThat(answer.statusCode()).as(route).isEqualTo(401);
                assertThat(answer.body()).as(route).contains("Open the address that");
            }
        }
        assertThat(send(server.home().resolve("/no/such/thing"), "GET").statusCode())
                .isEqualTo(401);
        assertThat(send(URI.create(server.home() + "/api/workshop"), "GET").statusCode())
                .isEqualTo(401);
        assertThat(send(URI.create(server.home() + "%61pi/workshop"), "GET").statusCode())
                .isEqualTo(401);
        assertThat(hut.resolve(".jackwork")).doesNotExist();
    }

    @Test
    void theKeyIsExchangedForAPassThatNoScriptReadsAndNoOtherSiteSends() throws Exception {
        HttpResponse<String> entered = send(server.address(), "GET");
        assertThat(entered.statusCode()).isEqualTo(303);
        assertThat(entered.headers().firstValue("Location")).contains("/");
        String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie)
                .startsWith("jackwork-" + server.port() + "=")
                .contains("; HttpOnly")
                .contains("; SameSite=Strict");
        String key = server.address().getQuery().replaceFirst(".*=", "");
        assertThat(key).hasSizeGreaterThanOrEqualTo(43);
        assertThat(cookie).doesNotContain(key);
        HttpResponse<String> let = send(
                server.home().resolve("/api/workshop"), "GET", "Cookie", "other=1; " + cookie.replaceFirst(";.*", ""));
        assertThat(let.statusCode()).isEqualTo(200);
    }

    @Test
    void anotherKeyAndAnotherServersPassLetNobodyIn() throws Exception {
        HttpResponse<String> entered = send(URI.create(server.home() + "?key=" + "A".repeat(43)), "GET");
        assertThat(entered.statusCode()).isEqualTo(303);
        assertThat(entered.headers().firstValue("Set-Cookie")).isEmpty();
        PageServer other = PageServer.start(Benches.at(hut), 0, List::of);
        try {
            String pass = new Asking(other.address()).pass().replaceFirst("jackwork-\\d+", "jackwork-" + server.port());
            assertThat(send(server.home().resolve("/api/workshop"), "GET", "Cookie", pass)
                            .statusCode())
                    .isEqualTo(401);
        } finally {
            other.stop();
        }
    }

    @Test
    void thePagesOwnFilesAreTheSameForEveryone() throws Exception {
        for (String file : List.of("", "main.js", "style.css", "favicon.svg")) {
            HttpResponse<String> answer = send(server.home().resolve("/" + file), "GET");
            assertThat(answer.statusCode()).as(file).isEqualTo(200);
            assertThat(answer.body()).as(file).doesNotContain("heron-hangs-up").doesNotContain(hut.toString());
        }
    }
}
