package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The real server on a free port, asked rightly and wrongly. */
@Tag("quick")
class PageServerTest {

    @RegisterExtension
    static final Serving SERVING = Serving.demo();

    /** Raw, because an HTTP client would mend or refuse what is asked here. */
    private static String raw(String target, String... headers) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", SERVING.server().port())) {
            String request = "GET " + target + " HTTP/1.1\r\n" + String.join("\r\n", headers)
                    + (headers.length == 0 ? "" : "\r\n") + "Connection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            try (InputStream in = socket.getInputStream()) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            }
        }
    }

    private static String own() throws IOException, InterruptedException {
        return "Host: 127.0.0.1:" + SERVING.server().port() + "\r\nCookie: "
                + SERVING.asking().pass();
    }

    private static HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(SERVING.asking().request(path).build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void servesThePageWithHeadersThatLoadNothingForeign() throws Exception {
        HttpResponse<String> page = get("");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("<jackwork-page>");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'self'");
        assertThat(page.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(page.headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
        assertThat(get("main.js").statusCode()).isEqualTo(200);
        assertThat(get("style.css").statusCode()).isEqualTo(200);
    }

    @Test
    void servesDesignsInFolders() throws Exception {
        assertThat(get("api/workshop").body()).contains("\"spoiled/heron-hangs-up\"");
        assertThat(get("api/designs/spoiled/heron-hangs-up").body()).contains("\"verdict\":\"fails\"");
    }

    @Test
    void refusesAForeignHost() throws IOException {
        assertThat(raw("/", "Host: example.org")).startsWith("HTTP/1.1 403");
        assertThat(raw(
                        "/api/designs/heron",
                        "Host: example.org:" + SERVING.server().port()))
                .startsWith("HTTP/1.1 403");
    }

    @Test
    void refusesAForeignOrigin() throws Exception {
        assertThat(raw("/api/workshop", own(), "Origin: http://example.org")).startsWith("HTTP/1.1 403");
        assertThat(raw(
                        "/api/workshop",
                        own(),
                        "Origin: http://127.0.0.1:" + SERVING.server().port()))
                .startsWith("HTTP/1.1 200");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../pom.xml",
                "/%2e%2e/pom.xml",
                "/api/designs/../../pom.xml",
                "/api/designs/%2e%2e%2fworkshop.yaml",
                "/api/designs/no-such-design",
                "/design.yaml"
            })
    void givesNothingBesideThePage(String target) throws Exception {
        String answer = raw(target, own());
        assertThat(answer).matches("(?s)HTTP/1\\.1 (400|404) .*");
        assertThat(answer).doesNotContain("<project").doesNotContain("format: 2");
    }
}
