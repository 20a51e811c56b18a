package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What is sent to the real server: large and good, hostile, and not meant for it. */
class BringRoutesTest {

    @RegisterExtension
    private final Serving serving = Serving.copy();

    private HttpResponse<String> post(String path, byte[] body) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        serving.asking()
                                .request(path)
                                .POST(HttpRequest.BodyPublishers.ofByteArray(body))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }

    private static byte[] svg(String inside) {
        return ("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\">"
                        + inside + "</svg>")
                .getBytes(StandardCharsets.UTF_8);
    }

    /** A wavy disc of many points. */
    private static byte[] wavy(int points) {
        StringBuilder path = new StringBuilder("<path d=\"");
        for (int i = 0; i < points; i++) {
            double angle = 2 * Math.PI * i / points;
            double radius = 40 + Math.sin(40 * angle);
            path.append(i == 0 ? 'M' : 'L');
            path.append(50 + radius * Math.cos(angle)).append(' ').append(50 + radius * Math.sin(angle));
        }
        return svg(path + "Z\"/>");
    }

    @Test
    void readsADrawingLargerThanOtherRequestsMayBe() throws Exception {
        byte[] large = wavy(20_000);
        assertThat(large.length).isGreaterThan(500_000);
        HttpResponse<String> answer = post("api/bring?file=sun.svg&scale=1", large);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("\"key\":\"s1\"").contains("\"sized\":true");
        // Points that no laser could follow are left out.
        assertThat(answer.body().length()).isLessThan(100_000);
    }

    @Test
    void refusesWhatIsTooMuchOrNoDrawingInWords() throws Exception {
        HttpResponse<String> many =
                post("api/bring?file=sun.svg&scale=1", svg("<path d=\"M0 0" + "h1h-1v.001".repeat(350_000) + "Z\"/>"));
        assertThat(many.statusCode()).isEqualTo(422);
        assertThat(many.body()).contains("path points").contains("Mend the drawing");
        HttpResponse<String> none = post("api/bring?file=a.svg&scale=1", "nonsense".getBytes(StandardCharsets.UTF_8));
        assertThat(none.statusCode()).isEqualTo(422);
        assertThat(none.body()).contains("a.svg");
        HttpResponse<String> bomb = post(
                "api/bring?file=a.svg&scale=1",
                "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><svg>&a;</svg>"
                        .getBytes(StandardCharsets.UTF_8));
        assertThat(bomb.statusCode()).isEqualTo(422);
        assertThat(bomb.body()).doesNotContain("root:");
        HttpResponse<String> jpeg =
                post("api/bring?file=a.jpg&scale=1", new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 0});
        assertThat(jpeg.body()).contains("PNG");
        assertThat(post("api/bring?file=a.svg&scale=NaN", svg("")).statusCode()).isEqualTo(422);
        assertThat(post("api/bring?file=a.svg&scale=x", svg("")).statusCode()).isEqualTo(400);
    }

    @Test
    void refusesPlansThatAreNoneAndDesignsThatAreNot() throws Exception {
        assertThat(post("api/bring/make", "{}".getBytes(StandardCharsets.UTF_8)).statusCode())
                .isEqualTo(400);
        assertThat(post("api/redrawn/..%2f..?file=a.svg&scale=1", svg("")).statusCode())
                .isIn(400, 404);
        assertThat(post("api/redrawn/no-such?file=a.svg&scale=1", svg("")).statusCode())
                .isEqualTo(404);
        HttpResponse<String> escape = post("api/bring/make", """
                {"name": "../out", "box": "boxes/marsh-box/box.yaml", "scale": 1, "placed": false, "shift": [0, 0],
                 "parts": [], "points": [], "lines": []}""".getBytes(StandardCharsets.UTF_8));
        assertThat(escape.statusCode()).isEqualTo(422);
        assertThat(Files.exists(serving.folder().resolveSibling("out"))).isFalse();
        HttpResponse<String> start = post(
                "api/begin",
                "{\"from\": \"own/../..\", \"name\": \"x1\", \"box\": \"\"}".getBytes(StandardCharsets.UTF_8));
        assertThat(start.statusCode()).isEqualTo(404);
    }

    /** As many outlines as are taken, all nearly alike: a redrawing is still answered soon. */
    @Test
    void answersAHostileRedrawingSoon() throws Exception {
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 390; i++) {
            many.append("<path d=\"M")
                    .append(i % 20 * 4)
                    .append(' ')
                    .append(i / 20 * 4)
                    .append("l60 1 3 30 -50 3Z\"/>");
        }
        long began = System.nanoTime();
        HttpResponse<String> answer = post("api/redrawn/heron?file=a.svg&scale=0", svg(many.toString()));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat((System.nanoTime() - began) / 1e9).isLessThan(20);
    }
}
