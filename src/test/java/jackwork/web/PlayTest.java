package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Coins dropped, pieces made and watched, numbers looked for, through the real server. */
class PlayTest {

    @RegisterExtension
    static final Serving SERVING = Serving.demo();

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private static HttpResponse<String> ask(String method, String path, String body) throws Exception {
        return SERVING.asking().send(method, path, body);
    }

    private static JsonNode get(String path) throws Exception {
        return SERVING.asking().json(path);
    }

    private static JsonNode finished(JsonNode job) throws Exception {
        return SERVING.asking().finished(job);
    }

    @Test
    void aCoinGoesItsWholeWay() throws Exception {
        JsonNode run = get("api/drop/heron?coin=EUR-1");
        assertThat(run.path("passes").asBoolean()).isTrue();
        assertThat(run.path("stages")).hasSize(7);
        assertThat(run.path("times").size())
                .isGreaterThan(60)
                .isEqualTo(run.path("coinPoses").size());
        assertThat(run.path("coinPoses")
                        .get(run.path("times").size() - 1)
                        .get(1)
                        .asDouble())
                .as("thrown into the box")
                .isLessThan(run.path("coinPoses").get(0).get(1).asDouble() - 30);
    }

    @Test
    void aCoinThatDoesNotFitIsNotLetIn() throws Exception {
        JsonNode run = get("api/drop/spoiled/kicker-short?coin=EUR-1");
        assertThat(run.path("passes").asBoolean()).isFalse();
        assertThat(run.path("missed").asString()).isEqualTo("thrown");
        assertThat(ask("GET", "api/drop/heron?coin=EUR-7", "").statusCode()).isEqualTo(400);
    }

    @Test
    void piecesAreMadeCountedAndWatched() throws Exception {
        JsonNode job =
                finished(JSON.readTree(ask("POST", "api/pieces/spoiled/heron-hangs-up", "{\"builds\": 20, \"seed\": 1}")
                        .body()));
        assertThat(job.path("state").asString()).isEqualTo("done");
        assertThat(job.path("done").asInt()).isEqualTo(20);
        JsonNode builds = job.path("builds");
        assertThat(builds.path("passes").asInt()).isLessThan(20);
        int number = builds.path("failing").get(0).asInt();
        JsonNode piece = get("api/piece/spoiled/heron-hangs-up?builds=20&seed=1&number=" + number);
        assertThat(piece.path("passes").asBoolean()).isFalse();
        assertThat(piece.path("words").asString())
                .isEqualTo(builds.path("causes").get(0).path("words").asString());
    }

    @Test
    void workCanBeStopped() throws Exception {
        JsonNode job = JSON.readTree(ask("POST", "api/pieces/heron", "{\"builds\": 5000, \"seed\": 1}")
                .body());
        String address = "api/jobs/" + job.path("number").asInt();
        while (get(address).path("builds").isNull()) {
            Thread.sleep(20);
        }
        assertThat(ask("DELETE", address, "").statusCode()).isEqualTo(200);
        JsonNode stopped = finished(get(address));
        assertThat(stopped.path("state").asString()).isEqualTo("stopped");
        assertThat(stopped.path("done").asInt()).isLessThan(5000);
    }

    @ParameterizedTest
    @CsvSource({
        "heron-hangs-up, comes-back, figure.weights.tail.mass",
        "bucket-twists, bucket-twist, box.coin-works.bucket.side-gap",
        "counterweight-heavy, coin-trips/EUR-0.20, box.weights.counterweight.count",
        "kicker-short, coin-thrown-clear/EUR-0.50, box.lever.throw",
        "lamplighter-overpulled, string-overpulled/open, figure.strings.open.slack"
    })
    void theNumberThatWasSpoiledIsFound(String design, String finding, String path) throws Exception {
        JsonNode remedy = get("api/remedy/spoiled/" + design + "?finding=" + finding);
        assertThat(remedy.path("steps")).as(remedy.toString()).hasSize(1);
        assertThat(remedy.path("steps").get(0).path("path").asString()).isEqualTo(path);
    }
}
