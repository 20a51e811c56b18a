package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import jackwork.design.Adjustable;
import jackwork.design.DesignReader;
import jackwork.design.Field;
import jackwork.design.WorkshopNumbers;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Every number of a design, its box and the workshop through the server: times some factors, at the ends of what it may
 * be, and just beyond. A file changes only with an answer of 200, what lies beyond is always refused with its place, and the
 * design opens after each. A few of them in the usual run; {@code -Djackwork.numbers=10000} tries all.
 */
class EveryNumberTest {

    private static final double[] FACTORS = {0.5, 0.9, 1.1, 2, 0, -1};
    private static final int NUMBERS = Integer.getInteger("jackwork.numbers", 6);

    /** One number put to one value. */
    private record Trial(String path, String value, boolean beyond) {}

    private static Map<String, String> files(Path hut) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(hut)) {
            for (Path file : all.filter(Files::isRegularFile)
                    .filter(path -> !path.toString().contains(".jackwork"))
                    .toList()) {
                files.put(hut.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }

    private static JsonNode json(HttpResponse<String> answer) {
        return JsonMapper.shared().readTree(answer.body());
    }

    private static String words(boolean whole, double value) {
        return new BigDecimal(String.valueOf(whole ? Math.rint(value) : value))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static void trials(
            List<Trial> trials, String path, double value, boolean whole, double least, double most) {
        for (double factor : FACTORS) {
            double times = whole ? Math.rint(value * factor) : value * factor;
            trials.add(new Trial(path, words(whole, times), times < least || times > most));
        }
        double step = whole ? 1 : 1e-3 * Math.max(1, Math.abs(most));
        trials.add(new Trial(path, words(whole, least), false));
        trials.add(new Trial(path, words(whole, most), false));
        trials.add(new Trial(path, words(whole, least - step), true));
        trials.add(new Trial(path, words(whole, most + step), true));
    }

    /** At random, but one that must be refused is always among them: chance alone may pick none. */
    private static List<Trial> some(List<Trial> trials, int number) {
        Collections.shuffle(trials, new Random(20261130));
        int beyond = 0;
        while (!trials.get(beyond).beyond()) {
            beyond++;
        }
        Collections.swap(trials, 0, beyond);
        return trials.subList(0, Math.min(number, trials.size()));
    }

    private interface Changing {
        HttpResponse<String> change(String version, Trial trial) throws Exception;
    }

    private interface Showing {
        HttpResponse<String> show() throws Exception;
    }

    /** Tries each, and says how many were refused. */
    private static int tryAll(Path hut, List<Trial> trials, List<Showing> shown, Changing changing, Changing back)
            throws Exception {
        Map<String, String> before = files(hut);
        int refused = 0;
        for (Trial trial : trials) {
            String base = json(shown.get(0).show()).path("version").asString();
            HttpResponse<String> answer = changing.change(base, trial);
            // 503: it took longer than anybody waits, as a ratchet of 200 teeth may.
            assertThat(answer.statusCode()).as(trial + ": " + answer.body()).isIn(200, 422, 503);
            if (answer.statusCode() != 200) {
                refused++;
                assertThat(files(hut)).as(trial.toString()).isEqualTo(before);
                if (trial.beyond()) {
                    assertThat(answer.body()).as(trial.toString()).containsPattern("\\.yaml:\\d+:\\d+: ");
                }
            } else {
                assertThat(trial.beyond()).as(trial + ": " + answer.body()).isFalse();
            }
            String version = "";
            for (Showing each : shown) {
                HttpResponse<String> view = each.show();
                assertThat(view.statusCode()).as(trial + ": " + view.body()).isEqualTo(200);
                version = version.isEmpty() ? json(view).path("version").asString() : version;
            }
            if (!version.equals(base)) {
                assertThat(back.change(version, trial).statusCode())
                        .as(trial.toString())
                        .isEqualTo(200);
            }
            assertThat(files(hut)).as(trial.toString()).isEqualTo(before);
        }
        return refused;
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void ofADesignAndItsBox(String name) throws Exception {
        List<Trial> trials = new ArrayList<>();
        for (Adjustable.Setting number :
                Adjustable.of(DesignReader.read(Path.of("demo", name))).numbers()) {
            Field field = number.field();
            if (Double.isFinite(field.least())) {
                trials(trials, number.path(), number.value(), field.whole(), field.least(), field.most());
            }
        }
        List<Trial> tried = some(trials, NUMBERS);
        Path hut = DemoCopy.here(name);
        PageServer server = PageServer.start(Benches.at(hut), 0);
        try {
            Asking asking = new Asking(server.address());
            int refused = tryAll(
                    hut,
                    tried,
                    List.of(() -> asking.send("GET", "api/designs/" + name, "")),
                    (version, trial) -> asking.send(
                            "POST", "api/edit/" + name, """
                            {"base": "%s", "label": "tried", "steps": [{"kind": "set", "path": "%s", "value": "%s"}]}""".formatted(version, trial.path(), trial.value())),
                    (version, trial) -> asking.send("POST", "api/undo/" + name, "{\"version\": \"" + version + "\"}"));
            told(name, trials.size(), tried.size(), refused);
            assertThat(refused).isBetween(1, tried.size() - 1);
        } finally {
            server.stop();
        }
    }

    /** An interval is put to the one value with both its ends. */
    @Test
    void ofTheWorkshop() throws Exception {
        Map<String, WorkshopNumbers.Bounds> bounds = WorkshopNumbers.of(Path.of("demo"));
        Path hut = DemoCopy.here("heron");
        PageServer server = PageServer.start(Benches.at(hut), 0);
        try {
            Asking asking = new Asking(server.address());
            List<Trial> trials = new ArrayList<>();
            Map<String, Boolean> uncertain = new TreeMap<>();
            for (JsonNode section : asking.json("api/values").path("sections")) {
                for (JsonNode group : section.path("groups")) {
                    for (JsonNode value : group.path("values")) {
                        String path = value.path("path").asString();
                        WorkshopNumbers.Bounds known = bounds.remove(path);
                        if (known == null) {
                            continue;
                        }
                        boolean sure = value.path("number").isNull();
                        uncertain.put(path, !sure);
                        double now = sure
                                ? Double.parseDouble(value.path("words").asString())
                                : value.path("number").path("value").asDouble();
                        trials(trials, path, now, known.whole(), known.least(), known.most());
                    }
                }
            }
            assertThat(bounds).as("numbers that the page does not show").isEmpty();
            List<Trial> tried = some(trials, NUMBERS);
            int refused = tryAll(
                    hut,
                    tried,
                    List.of(
                            () -> asking.send("GET", "api/values", ""),
                            () -> asking.send("GET", "api/designs/heron", "")),
                    (version, trial) -> {
                        boolean interval = Boolean.TRUE.equals(uncertain.get(trial.path()));
                        String ends = interval ? trial.value() : "";
                        return asking.send("POST", "api/values/edit", """
                                {"base": "%s", "label": "tried", "kind": "SET", "path": "%s", "value": "%s",
                                 "low": "%s", "high": "%s", "basis": "%s", "source": "%s"}""".formatted(
                                        version,
                                        trial.path(),
                                        trial.value(),
                                        ends,
                                        ends,
                                        interval ? "measured" : "",
                                        interval ? "tried" : ""));
                    },
                    (version, trial) -> asking.send("POST", "api/values/undo", "{\"version\": \"" + version + "\"}"));
            told("workshop", trials.size(), tried.size(), refused);
            assertThat(refused).isBetween(1, tried.size() - 1);
        } finally {
            server.stop();
        }
    }

    private static void told(String name, int all, int tried, int refused) {
        System.err.println(name + ": " + tried + " of " + all + " tried, " + refused + " refused");
    }
}
