package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An answer is true: what is answered with an error has changed no file, and after any answer the design opens. */
class TrueAnswersTest {

    private static final String WIDTH = "box.case.width";
    private static final double[] FACTORS = {0.5, 0.9, 1.1, 2, 0, -1};

    private Path hut;
    private PageServer server;
    private Asking asking;

    @BeforeEach
    void start() throws IOException {
        hut = DemoCopy.here("heron", "spoiled/heron-hangs-up");
        serve();
    }

    private void serve() {
        server = PageServer.start(Benches.at(hut), 0);
        asking = new Asking(server.address());
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(hut)) {
            for (Path file : all.filter(Files::isRegularFile)
                    .filter(path -> !path.toString().contains(".jackwork"))
                    .toList()) {
                files.put(
                        hut.relativize(file).toString(),
                        Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }

    private JsonNode view(String id) throws Exception {
        HttpResponse<String> answer = asking.send("GET", "api/designs/" + id, "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JsonMapper.shared().readTree(answer.body());
    }

    private HttpResponse<String> edit(String version, String kind, String path, String value) throws Exception {
        return asking.send("POST", "api/edit/heron", """
                {"base": "%s", "label": "tried", "steps": [{"kind": "%s", "path": "%s", "value": "%s"}]}""".formatted(version, kind, path, value));
    }

    private HttpResponse<String> undo(String version) throws Exception {
        return asking.send("POST", "api/undo/heron", "{\"version\": \"" + version + "\"}");
    }

    private static String version(JsonNode told) {
        return told.path("version").asString();
    }

    @Test
    void aBoxOfWhichNoCaseCanBeMadeIsSavedAndSaidToFail() throws Exception {
        HttpResponse<String> answer = edit(version(view("heron")), "set", WIDTH, "140");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        assertThat(view("heron").path("report").path("findings").toString())
                .contains("box.yaml: case.left, case.width: case-right does not stay one piece");
    }

    @Test
    void aHoleThatLeavesNoWoodIsNotSaved() throws Exception {
        Map<String, String> before = files();
        HttpResponse<String> answer = edit(version(view("heron")), "set", "box.pins.lever-pivot.shoulder", "80");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(answer.body()).contains("breaks hub-near apart").contains("Nothing was");
        assertThat(files()).isEqualTo(before);
        view("heron");
    }

    /** A sample of all numbers of the heron, each with a factor that hangs on the seed. */
    @Test
    void whateverANumberIsSetToTheDesignOpensAfterwards() throws Exception {
        JsonNode first = view("heron");
        List<JsonNode> numbers = new ArrayList<>();
        first.path("changeable").path("settings").forEach(numbers::add);
        Random random = new Random(20261129);
        int refused = 0;
        for (int i = 0; i < 25; i++) {
            JsonNode number = numbers.get(random.nextInt(numbers.size()));
            double value = number.path("value").asDouble() * FACTORS[random.nextInt(FACTORS.length)];
            String written =
                    number.path("whole").asBoolean() ? String.valueOf(Math.round(value)) : String.valueOf(value);
            String what = number.path("path").asString() + " = " + written;
            Map<String, String> before = files();
            String base = version(view("heron"));
            HttpResponse<String> answer = edit(base, "set", number.path("path").asString(), written);
            assertThat(answer.statusCode()).as(what + ": " + answer.body()).isIn(200, 422);
            if (answer.statusCode() == 422) {
                refused++;
                assertThat(files()).as(what).isEqualTo(before);
            }
            JsonNode now = view("heron");
            view("spoiled/heron-hangs-up");
            if (!version(now).equals(base)) {
                assertThat(undo(version(now)).statusCode()).as(what).isEqualTo(200);
            }
            assertThat(files()).as(what).isEqualTo(before);
        }
        assertThat(refused).isBetween(1, 24);
    }

    /** The spoiled heron changes the very weight that goes. */
    @Test
    void anEntryThatAnotherDesignStandsOnIsNotTakenAway() throws Exception {
        Map<String, String> before = files();
        HttpResponse<String> answer = edit(version(view("heron")), "remove", "figure.weights.tail", "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(answer.body()).contains("Heron that hangs up").contains("left as it was");
        assertThat(files()).isEqualTo(before);
        view("spoiled/heron-hangs-up");
    }

    @Test
    void aNumberOfTheWorkshopWithWhichADesignCannotBeShownIsNotSaved() throws Exception {
        Map<String, String> before = files();
        String base = version(asking.json("api/values"));
        HttpResponse<String> answer = asking.send("POST", "api/values/edit", """
                {"base": "%s", "label": "wide", "kind": "SET", "path": "rods.bamboo-3.diameter", "value": "20",
                 "low": "20", "high": "20", "basis": "measured", "source": "tried"}""".formatted(base));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(answer.body()).contains("left as it was").contains("breaks hub-far apart");
        assertThat(files()).isEqualTo(before);
        view("heron");
    }

    @Test
    void whatWasBrokenByHandIsTakenBackToWhatWasShownLast() throws Exception {
        JsonNode shown = view("heron");
        Map<String, String> before = files();
        Path figure = hut.resolve("heron/figure.yaml");
        Files.writeString(figure, Files.readString(figure).replace("weights:", "weihgts:"));
        HttpResponse<String> refused = asking.send("GET", "api/designs/heron", "");
        assertThat(refused.statusCode()).isEqualTo(422);
        JsonNode standing = asking.json("api/standing/heron");
        assertThat(standing.path("problem").asString()).contains("figure.yaml").contains("weihgts");
        assertThat(standing.path("undo").asString()).isEqualTo("a change made outside");
        assertThat(standing.path("last").path("scene")).isEqualTo(shown.path("scene"));
        HttpResponse<String> back = undo(version(standing));
        assertThat(back.statusCode()).as(back.body()).isEqualTo(200);
        assertThat(files()).isEqualTo(before);
        // What was written by hand is not lost either.
        JsonNode now = view("heron");
        assertThat(now.path("redo").asString()).isEqualTo("a change made outside");
    }

    @Test
    void whatWasSavedBeforeItWasTriedWholeIsTakenBackAfterAStart() throws Exception {
        JsonNode saved = JsonMapper.shared()
                .readTree(edit(version(view("heron")), "set", WIDTH, "155").body());
        assertThat(version(saved)).isNotEmpty();
        Map<String, String> before = files();
        server.stop();
        Path design = hut.resolve("heron/design.yaml");
        Files.writeString(design, Files.readString(design).replace(WIDTH + ": 155", "figure.pins.hip.at: [900, 900]"));
        serve();
        assertThat(asking.send("GET", "api/designs/heron", "").statusCode()).isEqualTo(422);
        JsonNode standing = asking.json("api/standing/heron");
        assertThat(standing.path("problem").asString()).isNotEmpty();
        assertThat(standing.path("last").isNull()).isTrue();
        assertThat(undo(version(standing)).statusCode()).isEqualTo(200);
        assertThat(files()).isEqualTo(before);
        view("heron");
    }
}
