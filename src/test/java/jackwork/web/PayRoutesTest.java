package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.app.bench.Bench;
import jackwork.app.pay.Pricing;
import jackwork.bench.Kinds;
import jackwork.bench.RevisionName;
import jackwork.bench.Stamp;
import jackwork.bench.Timing;
import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Will it pay? through the real server, held against what {@link Pricing} itself answers. */
class PayRoutesTest {

    @RegisterExtension
    static final Serving SERVING = Serving.copy();

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String PLAIN =
            "{\"version\": \"\", \"laidOut\": 2, \"quantity\": 2, \"shelf\": \"\", \"minutes\": 0,"
                    + " \"supposed\": false, \"numbers\": {}}";

    private static Pricing pricing;

    @BeforeAll
    static void start() throws Exception {
        pricing = Pricing.of(SERVING.folder().resolve("heron"), 2, line -> {});
    }

    private static HttpResponse<String> ask(String method, String path, String body) throws Exception {
        return SERVING.asking().send(method, path, body);
    }

    private static JsonNode pay(String body) throws Exception {
        HttpResponse<String> answer = ask("POST", "api/pay/heron", body);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    private static JsonNode finished(String path, String body) throws Exception {
        return SERVING.asking().finished(JSON.readTree(ask("POST", path, body).body()));
    }

    @Test
    void amountsAreTextAndThoseOfTheSameQuestion() throws Exception {
        JsonNode report = pay(PLAIN).path("report");
        JsonNode same = JSON.readTree(Pricing.json(pricing.answer(new Pricing.Ask(2, null, null, Map.of(), Map.of()))));
        assertThat(report.path("floor").isString()).isTrue();
        assertThat(new BigDecimal(report.path("floor").asString()))
                .isEqualByComparingTo(same.path("floor").decimalValue());
        for (int i = 0; i < same.path("lines").size(); i++) {
            JsonNode line = report.path("lines").get(i);
            assertThat(new BigDecimal(line.path("amount").asString()))
                    .as(line.toString())
                    .isEqualByComparingTo(same.at("/lines/" + i + "/amount").decimalValue());
            assertThat(line.path("restsOn").isEmpty()).isFalse();
        }
    }

    @Test
    void groupsAddUpToTheFloor() throws Exception {
        JsonNode report = pay(PLAIN).path("report");
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode group : report.path("groups")) {
            sum = sum.add(new BigDecimal(group.path("amount").asString()));
        }
        assertThat(sum).isEqualByComparingTo(report.path("floor").asString());
    }

    @Test
    void whatIsSlidMovesTheAnswer() throws Exception {
        JsonNode slid = pay("{\"version\": \"\", \"laidOut\": 2, \"quantity\": 25, \"shelf\": \"34.90\","
                        + " \"minutes\": 90, \"supposed\": false, \"numbers\": {\"wage\": 16.5, \"times.pivot\": 0.4}}")
                .path("report");
        var same = pricing.answer(
                new Pricing.Ask(25, new BigDecimal("34.90"), 90.0, Map.of("wage", 16.5, "times.pivot", 0.4), Map.of()));
        assertThat(slid.path("floor").asString()).isEqualTo(same.floor().toPlainString());
        assertThat(slid.path("asked").asString()).isEqualTo("34.90");
        assertThat(slid.path("minutes").asDouble()).isBetween(89.999, 90.001);
        assertThat(slid.path("verdict").asString()).isEqualTo("fails");
        assertThat(slid.at("/hour/wage").asString()).isEqualTo("16.50");
    }

    /** With fewer minutes by half, hands and overhead cost half, all else as much: worked out beside the program. */
    @Test
    void minutesScaleEveryStep() throws Exception {
        JsonNode now = pay(PLAIN).path("report");
        double half = now.path("minutes").asDouble() / 2;
        JsonNode then =
                pay(PLAIN.replace("\"minutes\": 0", "\"minutes\": " + half)).path("report");
        double hands = 0;
        for (JsonNode line : now.path("lines")) {
            String group = line.path("group").asString();
            boolean byTheMinute = group.equals("hands")
                    || group.equals("overhead")
                    || line.path("name").asString().equals("hands");
            hands += byTheMinute ? Double.parseDouble(line.path("amount").asString()) : 0;
        }
        double floor = Double.parseDouble(now.path("floor").asString());
        double expected = floor - hands / 2;
        assertThat(Double.parseDouble(then.path("floor").asString())).isBetween(expected - 0.02, expected + 0.02);
        assertThat(then.path("guesses")).isEqualTo(now.path("guesses"));
    }

    /** A stage, a kind of work and a word of the maker's own, on two revisions: the last counts. */
    @Test
    void whatTheLogHasTimedStandsForWhatWasSupposed() throws Exception {
        JsonNode supposed = pay(PLAIN);
        assertThat(supposed.path("timed").isEmpty()).isTrue();
        Bench bench = Bench.in(SERVING.folder());
        Path heron = SERVING.folder().resolve("heron");
        RevisionName first =
                bench.freeze(heron, "as drawn", Instant.EPOCH.plusSeconds(1)).name();
        time(bench, first, "build", 300, 1);
        Path file = heron.resolve("design.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text + "\n# once more\n");
        RevisionName second =
                bench.freeze(heron, "once more", Instant.EPOCH.plusSeconds(2)).name();
        Files.writeString(file, text);
        time(bench, second, "build", 150, 2);
        time(bench, second, "build", 81, 1);
        time(bench, second, "pivot", 12, 1);
        time(bench, second, "whistling", 5, 1);
        try {
            JsonNode timed = pay(PLAIN);
            JsonNode build = timed.path("timed").get(0);
            assertThat(build.path("operation").asString()).isEqualTo("build");
            assertThat(build.path("minutes").asDouble()).isEqualTo(77);
            assertThat(build.path("low").asDouble()).isEqualTo(75);
            assertThat(build.path("high").asDouble()).isEqualTo(81);
            assertThat(build.path("revision").asInt()).isEqualTo(2);
            assertThat(timed.at("/report/unused/0").asString()).isEqualTo("whistling");

            // The stage keeps to what it was timed, and the pivots among it to their own time.
            double stage = 0;
            for (JsonNode task : timed.at("/report/tasks")) {
                if (task.path("stage").asString().equals("build")
                        && !task.path("perBatch").asBoolean()) {
                    double once =
                            task.path("count").asDouble() * task.path("each").asDouble();
                    assertThat(task.path("basis").asString()).isEqualTo("measured here");
                    if (task.path("operation").asString().equals("pivot")) {
                        assertThat(once).isBetween(11.99, 12.01);
                    } else {
                        stage += once;
                    }
                }
            }
            double others = 77 - shareOfPivots(supposed.path("report"), 77);
            assertThat(stage).isBetween(others - 0.05, others + 0.05);
            assertThat(timed.at("/report/guesses").asInt())
                    .isLessThan(supposed.at("/report/guesses").asInt());
            assertThat(timed.at("/report/floor")).isNotEqualTo(supposed.at("/report/floor"));

            JsonNode asSupposed = pay(PLAIN.replace("\"supposed\": false", "\"supposed\": true"));
            assertThat(asSupposed.path("report")).isEqualTo(supposed.path("report"));

            // A step that is slid leaves the others as they were timed.
            JsonNode slid = pay(PLAIN.replace("\"numbers\": {}", "\"numbers\": {\"times.pivot\": 2}"));
            assertThat(each(slid, "pivot")).isEqualTo(2);
            assertThat(each(slid, "dowel-glue")).isEqualTo(each(timed, "dowel-glue"));
            JsonNode half = pay(PLAIN.replace("\"minutes\": 0", "\"minutes\": 60"));
            assertThat(half.at("/report/minutes").asDouble()).isBetween(59.999, 60.001);
        } finally {
            bench.log()
                    .list(Kinds.TIMINGS)
                    .forEach(logged -> bench.log().strike(Kinds.TIMINGS, logged.number(), "a test"));
        }
        assertThat(pay(PLAIN).path("report")).as("struck out").isEqualTo(supposed.path("report"));
    }

    private static void time(Bench bench, RevisionName revision, String operation, double minutes, int pieces) {
        bench.log().add(Kinds.TIMINGS, new Timing(Stamp.of(Instant.now(), ""), revision, operation, minutes, pieces));
    }

    private static double each(JsonNode view, String operation) {
        for (JsonNode task : view.at("/report/tasks")) {
            if (task.path("operation").asString().equals(operation)) {
                return task.path("each").asDouble();
            }
        }
        return Double.NaN;
    }

    /** Of a stage's minutes, as supposed. */
    private static double shareOfPivots(JsonNode report, double minutes) {
        double pivots = 0;
        double all = 0;
        for (JsonNode task : report.path("tasks")) {
            if (task.path("stage").asString().equals("build")
                    && !task.path("perBatch").asBoolean()) {
                double once = task.path("count").asDouble() * task.path("each").asDouble();
                all += once;
                pivots += task.path("operation").asString().equals("pivot") ? once : 0;
            }
        }
        return minutes * pivots / all;
    }

    @Test
    void aFileChangedIsLaidOutAnew() throws Exception {
        JsonNode before = pay(PLAIN);
        Path file = SERVING.folder().resolve("workshop.yaml");
        String text = Files.readString(file);
        Files.writeString(file, text.replace("  wage: 14", "  wage: 28"));
        try {
            JsonNode after = pay(PLAIN);
            assertThat(after.path("version")).isNotEqualTo(before.path("version"));
            assertThat(after.at("/report/hour/wage").asString()).isEqualTo("28.00");
            JsonNode known = pay(PLAIN.replace("\"version\": \"\"", "\"version\": " + before.path("version")));
            assertThat(known.path("version")).as("kept, as asked for").isEqualTo(before.path("version"));
        } finally {
            Files.writeString(file, text);
        }
    }

    @Test
    void findingsAreRunAgainAndBuildsDrawn() throws Exception {
        String single = PLAIN.replace("\"laidOut\": 2", "\"laidOut\": 1");
        JsonNode again = finished("api/pay-again/heron", "{\"version\": \"\", \"laidOut\": 1}");
        assertThat(again.path("state").asString()).as(again.toString()).isEqualTo("done");
        assertThat(again.path("done")).isEqualTo(again.path("size"));
        int asked = 0;
        for (JsonNode offer : pay(single).at("/report/quicker")) {
            if (!offer.path("edit").isEmpty()) {
                asked++;
                assertThat(offer.path("after").asString()).isIn("works", "doubtful", "fails");
            }
        }
        assertThat(asked).isGreaterThanOrEqualTo(2);

        assertThat(pay(single).path("drawn").isNull()).isTrue();
        String few = "{\"version\": \"\", \"laidOut\": 1, \"builds\": 10, \"seed\": 1}";
        assertThat(finished("api/pay-draw/heron", few).path("done").asInt()).isEqualTo(20);
        JsonNode drawn = pay(single);
        assertThat(drawn.at("/drawn/builds").asInt()).isEqualTo(10);
        for (JsonNode number : drawn.at("/report/numbers")) {
            if (number.path("name").asString().equals("yields.first-time")) {
                assertThat(number.at("/number/value").asDouble())
                        .isEqualTo(100.0 * drawn.at("/drawn/passes").asInt() / 10);
            }
        }
    }

    @Test
    void drawingIsStoppedAndChangesNothing() throws Exception {
        String path = "api/pay-draw/lamplighter";
        String many = "{\"version\": \"\", \"laidOut\": 1, \"builds\": 5000, \"seed\": 1}";
        JsonNode job = JSON.readTree(ask("POST", path, many).body());
        String address = "api/jobs/" + job.path("number").asInt();
        while (JSON.readTree(ask("GET", address, "").body()).path("done").asInt() == 0) {
            Thread.sleep(20);
        }
        ask("DELETE", address, "");
        JsonNode stopped = job;
        while (stopped.path("state").asString().equals("running")) {
            Thread.sleep(20);
            stopped = JSON.readTree(ask("GET", address, "").body());
        }
        assertThat(stopped.path("state").asString()).isEqualTo("stopped");
        String asked = PLAIN.replace("\"laidOut\": 2", "\"laidOut\": 1");
        JsonNode after = JSON.readTree(ask("POST", "api/pay/lamplighter", asked).body());
        assertThat(after.path("drawn").isNull()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"quantity\": 2|\"quantity\": 0|read 0 pieces, expected 1 to 1000",
                "\"laidOut\": 2|\"laidOut\": 100000|read 100000 pieces",
                "\"shelf\": \"\"|\"shelf\": \"thirty\"|expected an amount",
                "\"shelf\": \"\"|\"shelf\": \"0\"|expected an amount",
                "\"minutes\": 0|\"minutes\": -4|minutes",
                "\"numbers\": {}|\"numbers\": {\"wgae\": 3}|no number is called \"wgae\"",
                "\"numbers\": {}|\"numbers\": {\"wage\": -3}|wage: read -3, expected 0 to 1000",
                "\"numbers\": {}|\"numbers\": {\"productive\": 1}|expected 5 to 100",
                "\"numbers\": {}|\"numbers\": {\"wage\": 1e999}|",
                "\"numbers\": {}|\"colour\": 3|expected JSON with"
            })
    void slipsAreRefusedInWords(String from, String to, String words) throws Exception {
        HttpResponse<String> answer = ask("POST", "api/pay/heron", PLAIN.replace(from, to));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
        assertThat(JSON.readTree(answer.body()).path("problem").asString()).contains(words == null ? "" : words);
        assertThat(ask("POST", "api/pay/nothing", PLAIN).statusCode()).isEqualTo(404);
    }
}
