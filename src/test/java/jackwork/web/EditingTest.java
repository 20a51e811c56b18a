package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.app.core.Benches;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Designs changed through the real server: the files follow at once, keep what is not meant, and come back. */
class EditingTest {

    @RegisterExtension
    private final Serving serving = Serving.copy();

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String TAIL = "figure.weights.tail.mass";

    private static final List<String> HOSTILE = List.of(
            "head, mass: 500",
            "head}\nchange: {figure.weights.tail.mass: 1",
            "5\nchange: 1",
            "5 # light",
            "\"head\"",
            "'head",
            "{head}",
            "[head]",
            "&a head",
            "*a",
            "!!int 5",
            "| head",
            "? head",
            "head: 5",
            "k\u00f6pf\u2028mass: 5",
            "\u0085head",
            "\ufeffhead",
            "null",
            "~");

    private HttpResponse<String> ask(String path, String body) throws Exception {
        return serving.asking().send(body.isEmpty() ? "GET" : "POST", path, body);
    }

    private JsonNode view(String id) throws Exception {
        return JSON.readTree(ask("api/designs/" + id, "").body());
    }

    /** @param value as JSON */
    private HttpResponse<String> edit(String base, String kind, String path, String value) throws Exception {
        return ask("api/edit/heron", """
                {"base": "%s", "label": "%s %s", "steps": [{"kind": "%s", "path": "%s", "value": %s}]}""".formatted(base, kind, path, kind, path, value));
    }

    private JsonNode edited(String base, String kind, String path, String value) throws Exception {
        HttpResponse<String> answer = edit(base, kind, path, value);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    private String text(String file) throws IOException {
        return Files.readString(serving.folder().resolve(file));
    }

    private static JsonNode at(JsonNode view, String path) {
        for (JsonNode spot : view.path("changeable").path("spots")) {
            if (spot.path("paths").get(0).asString().equals(path)) {
                return spot.path("at");
            }
        }
        throw new AssertionError("no point " + path);
    }

    private static String version(JsonNode view) {
        return view.path("version").asString();
    }

    private JsonNode step(String way, JsonNode view) throws Exception {
        HttpResponse<String> answer = ask("api/" + way + "/heron", "{\"version\": \"" + version(view) + "\"}");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }

    @Test
    void aNumberIsSavedAtOnceAndTakenBackByteForByte() throws Exception {
        String before = text("heron/design.yaml");
        JsonNode view = view("heron");
        assertThat(view.path("undo").isNull()).isTrue();
        JsonNode light = edited(version(view), "set", TAIL, "10");
        assertThat(text("heron/design.yaml")).isEqualTo(before + "\nchange:\n  " + TAIL + ": 10\n");
        assertThat(light.path("report").path("verdict").asString()).isEqualTo("fails");
        assertThat(light.path("undo").asString()).isEqualTo("set " + TAIL);
        JsonNode back = step("undo", light);
        assertThat(text("heron/design.yaml")).isEqualTo(before);
        assertThat(version(back)).isEqualTo(version(view));
        assertThat(back.path("undo").isNull()).isTrue();
        step("redo", back);
        assertThat(text("heron/design.yaml")).contains(TAIL + ": 10");
    }

    @Test
    void whatWasDecidedOnOldFilesIsRefused() throws Exception {
        String old = version(view("heron"));
        edited(old, "set", TAIL, "20");
        HttpResponse<String> late = edit(old, "set", TAIL, "30");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(text("heron/design.yaml")).contains(TAIL + ": 20");
    }

    @Test
    void whatCannotBeADesignIsRefusedAndChangesNothing() throws Exception {
        String before = text("heron/design.yaml");
        String base = version(view("heron"));
        assertThat(edit(base, "set", TAIL, "\"heavy\"").body()).contains("heavy");
        assertThat(edit(base, "set", TAIL, "\"heavy\"").statusCode()).isEqualTo(422);
        assertThat(edit(base, "set", "figure.pins.hip.at", "[1e9, 4]").statusCode())
                .isEqualTo(422);
        assertThat(edit(base, "set", "figure.pins.hipp.at", "[1, 4]").statusCode())
                .isEqualTo(422);
        assertThat(edit(base, "set", "box.drawing", "\"../../../etc/passwd\"").statusCode())
                .isEqualTo(422);
        assertThat(edit(base, "add", "figure.weights.Nose!", "{\"on\": \"head\", \"mass\": 2}")
                        .statusCode())
                .isEqualTo(422);
        assertThat(ask("api/edit/heron", "{}").statusCode()).isEqualTo(400);
        assertThat(text("heron/design.yaml")).isEqualTo(before);
        assertThat(version(view("heron"))).isEqualTo(base);
    }

    @Test
    void ofTwoServersOneAloneSavesWhatBothDecidedOnTheSameFiles() throws Exception {
        PageServer other = PageServer.start(Benches.at(serving.folder()), 0);
        ExecutorService both = Executors.newFixedThreadPool(2);
        try {
            for (int i = 1; i <= 4; i++) {
                String body = """
                        {"base": "%s", "label": "x", "steps": [{"kind": "SET", "path": "figure.weights.tail.mass",
                         "value": "3%d"}]}""".formatted(version(view("heron")), i);
                List<Future<Integer>> answers = both.invokeAll(List.of(
                        () -> serving.asking()
                                .send("POST", "api/edit/heron", body)
                                .statusCode(),
                        () -> new Asking(other.address())
                                .send("POST", "api/edit/heron", body)
                                .statusCode()));
                assertThat(List.of(answers.get(0).get(), answers.get(1).get())).containsExactlyInAnyOrder(200, 409);
            }
        } finally {
            both.shutdown();
            other.stop();
        }
        JsonNode view = view("heron");
        for (int i = 0; i < 4; i++) {
            view = step("undo", view);
        }
        assertThat(text("heron/design.yaml")).doesNotContain("tail.mass:");
    }

    @Test
    void aChangeMadeOutsideIsAStepOfItsOwn() throws Exception {
        JsonNode view = edited(version(view("heron")), "set", TAIL, "20");
        String ours = text("heron/design.yaml");
        Files.writeString(
                serving.folder().resolve("heron/design.yaml"), ours.replace("mass: 20", "mass: 25  # weighed"));
        JsonNode seen = view("heron");
        assertThat(seen.path("undo").asString()).isEqualTo("a change made outside");
        assertThat(version(seen)).isNotEqualTo(version(view));
        step("undo", seen);
        assertThat(text("heron/design.yaml")).isEqualTo(ours);
        step("redo", view("heron"));
        assertThat(text("heron/design.yaml")).contains("mass: 25  # weighed");
    }

    /** Killed while it noted a step, within a letter; and after it noted one that never reached the file. */
    @Test
    void whatAKilledProgramLeftOfItsNotesSpoilsNoTakingBack() throws Exception {
        String before = text("heron/design.yaml");
        JsonNode view = edited(version(view("heron")), "set", TAIL, "20");
        Path list = serving.folder().resolve(".jackwork/history/heron/steps.jsonl");
        byte[] torn = "{\"what\":\"did\",\"label\":\"größer".getBytes(StandardCharsets.UTF_8);
        Files.write(list, Arrays.copyOf(torn, torn.length - 4), StandardOpenOption.APPEND);
        restart();
        view = edited(version(view("heron")), "set", TAIL, "21");
        String one = text("heron/design.yaml");
        view = edited(version(view), "set", TAIL, "22");
        Files.writeString(serving.folder().resolve("heron/design.yaml"), one); // as if the last had been noted alone
        restart();
        view = view("heron");
        assertThat(view.path("undo").asString()).isEqualTo("set " + TAIL);
        assertThat(view.path("redo").asString()).isEqualTo("set " + TAIL);
        view = step("undo", view);
        view = step("undo", view);
        assertThat(text("heron/design.yaml")).isEqualTo(before);
        assertThat(view.path("undo").isNull()).isTrue();
    }

    private void restart() {
        serving.startAgain();
    }

    @Test
    void everythingCanBeTakenBackAfterTheServerWasAway() throws Exception {
        String before = text("heron/design.yaml");
        JsonNode view = view("heron");
        for (int mass = 20; mass < 24; mass++) {
            view = edited(version(view), "set", TAIL, String.valueOf(mass));
        }
        restart();
        view = view("heron");
        for (int i = 0; i < 4; i++) {
            view = step("undo", view);
        }
        assertThat(text("heron/design.yaml")).isEqualTo(before);
        assertThat(view.path("undo").isNull()).isTrue();
    }

    @Test
    void entriesComeAndGo() throws Exception {
        String before = text("heron/figure.yaml");
        JsonNode view = edited(
                version(view("heron")),
                "add",
                "figure.weights.nose",
                "{\"on\": \"head\", \"at\": [150, 222], \"what\": \"nut-m3\"}");
        assertThat(text("heron/figure.yaml")).contains("  tail: {on: body, mass: 50}\n  nose: {on: head, at: [");
        view = edited(version(view), "set", "figure.weights.nose.count", "2");
        view = edited(version(view), "remove", "figure.weights.nose", "\"\"");
        assertThat(text("heron/figure.yaml")).isEqualTo(before);
        assertThat(text("heron/design.yaml")).doesNotContain("nose");
    }

    /** Whatever is written into a field is that field's value and nothing more, or is refused. */
    @Test
    void noWordsOfThePageBecomeFields() throws Exception {
        String figure = text("heron/figure.yaml");
        String design = text("heron/design.yaml");
        String base = version(view("heron"));
        for (String hostile : HOSTILE) {
            String words = JSON.writeValueAsString(hostile);
            assertThat(edit(base, "add", "figure.weights.nose", "{\"on\": " + words + ", \"mass\": 2}")
                            .statusCode())
                    .as(hostile)
                    .isIn(400, 422);
            assertThat(edit(base, "set", TAIL, words).statusCode()).as(hostile).isIn(400, 422);
            assertThat(edit(base, "add", "figure.weights.nose", "{\"on\": \"head\", " + words + ": 2}")
                            .statusCode())
                    .as(hostile)
                    .isIn(400, 422);
        }
        assertThat(edit(base, "add", "figure.weights.nose", "\"{on: head, mass: 2}\"")
                        .statusCode())
                .isEqualTo(422);
        assertThat(text("heron/figure.yaml")).isEqualTo(figure);
        assertThat(text("heron/design.yaml")).isEqualTo(design);
    }

    @Test
    void aPartGoesWithAllThatCannotBeWithoutIt() throws Exception {
        JsonNode view = view("heron");
        JsonNode at = at(view, "figure.pins.wing-dowel-1.at");
        String moved = "[" + (at.get(0).asDouble() + 0.5) + ", " + at.get(1) + "]";
        view = edited(version(view), "set", "figure.pins.wing-dowel-1.at", moved);
        edited(version(view), "remove", "figure.parts.wing-near", "\"\"");
        assertThat(text("heron/figure.yaml"))
                .contains("  - [body, wing-far]\n")
                .contains("  wing-dowel-1: {parts: [body, wing-far], rod: bamboo-3}\n")
                .doesNotContain("wing-near");
        assertThat(text("heron/design.yaml")).contains("wing-dowel-1.at");
    }

    @Test
    void aGlimpseSavesNothing() throws Exception {
        JsonNode view = view("heron");
        String before = text("heron/design.yaml");
        HttpResponse<String> answer = ask("api/glimpse/heron", """
                {"base": "%s", "label": "", "steps": [{"kind": "set", "path": "%s", "value": "10"}]}""".formatted(version(view), TAIL));
        JsonNode glimpse = JSON.readTree(answer.body());
        assertThat(glimpse.path("findings").get(0).path("id").asString()).isEqualTo("comes-back");
        assertThat(glimpse.path("findings").get(0).path("status").asString()).isEqualTo("fail");
        assertThat(text("heron/design.yaml")).isEqualTo(before);
        assertThat(Files.exists(serving.folder().resolve(".jackwork"))).isFalse();
    }
}
