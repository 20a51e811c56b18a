package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.bench.Bench;
import jackwork.app.core.Benches;
import jackwork.bench.Kinds;
import jackwork.design.WorkshopReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The bench's routes on the real server: what is logged, refused, taken out and let in. */
class BenchRoutesTest {

    private static final String ID = "0f8fad5b-d9cb-469f-a165-70867728950";

    private Path hut;
    private PageServer server;

    @BeforeEach
    void start() throws IOException {
        hut = DemoCopy.here();
        server = PageServer.start(Benches.at(hut), 0, () -> List.of(InetAddress.getLoopbackAddress()));
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    private HttpResponse<String> send(String method, String path, String body, String... headers) throws Exception {
        return new Asking(server.address()).send(method, path, body, headers);
    }

    private JsonNode get(String path) throws Exception {
        HttpResponse<String> answer = send("GET", path, "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JsonMapper.shared().readTree(answer.body());
    }

    private JsonNode post(String path, String body) throws Exception {
        HttpResponse<String> answer = send("POST", path, body);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return JsonMapper.shared().readTree(answer.body());
    }

    private void freeze(String design) throws Exception {
        post("api/bench/freeze", "{\"design\":\"" + design + "\",\"note\":\"\"}");
    }

    private static String entry(int number, String kind, String fields) {
        return "{\"id\":\"" + ID + number + "\",\"kind\":\"" + kind
                + "\",\"at\":\"2026-03-01T09:30:00Z\",\"note\":\"\",\"fields\":{" + fields + "}}";
    }

    private JsonNode log(String... entries) throws Exception {
        return post("api/bench/log", "{\"entries\":[" + String.join(",", entries) + "]}")
                .get("results");
    }

    private static String trial(int number, String rest) {
        return entry(
                number, "trials", "\"design\":\"heron\",\"revision\":\"1\",\"tries\":\"50\",\"failures\":\"\"," + rest);
    }

    private JsonNode view() throws Exception {
        return get("api/bench?design=heron&rate=0.99&confidence=0.95");
    }

    @Test
    void theSameEntryAgainIsLoggedOnceAndABadOneHoldsUpNoOther() throws Exception {
        freeze("heron");
        String good = trial(1, "\"coin\":\"EUR-1\"");
        JsonNode results =
                log(good, trial(2, "\"coin\":\"EUR-7\""), trial(3, "\"coin\":\"EUR-1\",\"colour\":\"red\""), good);
        assertThat(results.get(0).get("logged").asBoolean()).isTrue();
        assertThat(results.get(1).get("problem").asString()).contains("EUR-7");
        assertThat(results.get(2).get("problem").asString()).contains("read the field \"colour\"");
        assertThat(results.get(3).get("logged").asBoolean()).isTrue();
        log(good);
        assertThat(Bench.in(hut).log().list(Kinds.TRIALS)).hasSize(1);
        JsonNode all = view().get("revisions").get(0).get("all");
        assertThat(all.get("tries").asInt()).isEqualTo(50);
        assertThat(all.get("cleanCoinsNeeded").asInt()).isEqualTo(249);
    }

    @Test
    void struckByTheKeyOfWhatWasLogged() throws Exception {
        freeze("heron");
        log(trial(1, "\"coin\":\"EUR-1\""));
        String strike = entry(2, "strike", "\"of\":\"trials\",\"key\":\"page-" + ID + "1\",\"why\":\"the wrong coin\"");
        assertThat(log(strike).get(0).get("logged").asBoolean()).isTrue();
        assertThat(log(strike).get(0).get("logged").asBoolean())
                .as("once more is no fault")
                .isTrue();
        JsonNode view = view();
        assertThat(view.get("entries").get(0).get("struck").asString()).isEqualTo("the wrong coin");
        assertThat(view.get("revisions").get(0).get("all").get("tries").asInt()).isZero();
        String bare = entry(3, "strike", "\"of\":\"trials\",\"key\":\"page-" + ID + "1\",\"why\":\" \"");
        assertThat(log(bare).get(0).get("problem").asString()).contains("why is empty");
    }

    /** Another program's entry makes another word, and so does nothing else. */
    @Test
    void thePulseChangesWithTheLogAlone() throws Exception {
        String none = get("api/bench/pulse").get("state").asString();
        freeze("heron");
        String frozen = get("api/bench/pulse").get("state").asString();
        assertThat(frozen).isNotEqualTo(none);
        view();
        assertThat(get("api/bench/pulse").get("state").asString()).isEqualTo(frozen);
        Bench.in(hut).log().strike(Kinds.TRIALS, logged(), "elsewhere");
        assertThat(get("api/bench/pulse").get("state").asString()).isNotEqualTo(frozen);
    }

    private String logged() throws Exception {
        log(trial(1, "\"coin\":\"EUR-1\""));
        return "page-" + ID + "1";
    }

    @Test
    void twoRevisionsDifferInOutlineNumberAndFinding() throws Exception {
        freeze("heron");
        Path box = hut.resolve("boxes/marsh-box/box.yaml");
        Files.writeString(box, Files.readString(box).replaceFirst("throw: 14", "throw: 8"));
        Path drawing = hut.resolve("heron/figure.svg");
        Files.writeString(drawing, Files.readString(drawing).replace("L150,28", "L156,31"));
        JsonNode pair = get("api/bench/pair?design=heron&before=1&after=0");
        // The post that ends the throw stands elsewhere.
        assertThat(pair.get("parts")).hasSize(3);
        assertThat(pair.get("parts").get(0).get("part").asString()).isEqualTo("box: back");
        assertThat(pair.get("parts").get(2).get("part").asString()).isEqualTo("head");
        assertThat(pair.get("files").get(0).get("values").get(0).get("path").asString())
                .isEqualTo("lever.throw");
        assertThat(pair.get("verdictBefore").asString()).isEqualTo("works");
        assertThat(pair.get("verdictAfter").asString()).isEqualTo("fails");
        String then = send("GET", "api/bench/picture?design=heron&before=1&after=0&of=before", "")
                .body();
        String now = send("GET", "api/bench/picture?design=heron&before=1&after=0&of=after", "")
                .body();
        assertThat(then).startsWith("<svg").contains(">1</text>").isNotEqualTo(now);
        assertThat(frame(then)).as("one frame and scale for both").isEqualTo(frame(now));
    }

    private static String frame(String svg) {
        return svg.replaceAll("(?s).*?viewBox=\"([^\"]*)\".*", "$1");
    }

    @Test
    void measuredIsLookedAtThenKeptThenUsed() throws Exception {
        String fields = "\"kind\":\"friction\",\"about\":\"coin,wood\",\"readings\":\"slope=17;slope=18;step=0.5\"";
        JsonNode looked = post("api/bench/measured", "{\"kind\":\"measured\",\"fields\":{" + fields + "}}");
        assertThat(looked.get("alone").get("value").asDouble()).isBetween(0.30, 0.33);
        assertThat(Bench.in(hut).log().list(Kinds.MEASURED))
                .as("only looked at")
                .isEmpty();
        log(entry(1, "measured", fields));
        JsonNode use = get("api/bench/use?what=friction:coin,wood");
        assertThat(use.get("designs").size()).isGreaterThanOrEqualTo(4);
        String before = WorkshopReader.text(hut);
        HttpResponse<String> stale = send("POST", "api/bench/use", "{\"wanted\":[],\"text\":\"other\"}");
        assertThat(stale.statusCode()).isEqualTo(409);
        assertThat(WorkshopReader.text(hut)).isEqualTo(before);
        post("api/bench/use", "{\"wanted\":[],\"text\":\"" + use.get("text").asString() + "\"}");
        assertThat(WorkshopReader.text(hut)).contains("tilted until it slid");
    }

    @Test
    void csvOutAndInAllOfItOrNothing() throws Exception {
        freeze("heron");
        log(trial(1, "\"coin\":\"EUR-1\""));
        HttpResponse<String> out = send("GET", "api/bench/csv/trials", "");
        assertThat(out.headers().firstValue("Content-Disposition")).contains("attachment; filename=\"trials.csv\"");
        String name = URLEncoder.encode("trials (1).csv", StandardCharsets.UTF_8);
        assertThat(post("api/bench/csv?file=" + name, out.body()).get("already").asInt())
                .isEqualTo(1);
        String more = "at,design,revision,coin,tries\n2026-03-02,heron,1,EUR-2,10\n2026-03-02,heron,1,EUR-2,many\n";
        HttpResponse<String> bad = send("POST", "api/bench/csv?file=trials.csv", more);
        assertThat(bad.statusCode()).isEqualTo(422);
        assertThat(bad.body()).contains("trials.csv:3:26");
        assertThat(Bench.in(hut).log().list(Kinds.TRIALS)).hasSize(1);
        HttpResponse<String> other = send("POST", "api/bench/csv?file=..%2Fworkshop.yaml", "a,b\n");
        assertThat(other.statusCode()).isEqualTo(422);
        assertThat(send("GET", "api/bench/csv/..%2Fworkshop", "").statusCode()).isBetween(400, 404);
    }

    @Test
    void aRevisionsFilesComeAsAZipFile() throws Exception {
        freeze("heron");
        HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                .send(
                        new Asking(server.address())
                                .request("api/bench/files?design=heron&revision=1")
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        List<String> names = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(answer.body()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                assertThat(zip.readAllBytes()).isEqualTo(Files.readAllBytes(hut.resolve(entry.getName())));
                names.add(entry.getName());
            }
        }
        assertThat(names).contains("workshop.yaml", "heron/figure.svg", "boxes/marsh-box/box.yaml");
    }

    /** From the page alone, with its own origin; and the phone's own server knows no way to it. */
    @Test
    void onlyThePageLetsAPhoneIn() throws Exception {
        String none = "{\"address\":\"\"}";
        assertThat(send("POST", "api/bench/phone", none).statusCode()).isEqualTo(400);
        assertThat(send("POST", "api/bench/phone", none, "Origin", "http://elsewhere.example")
                        .statusCode())
                .isEqualTo(403);
        String own = server.home().toString().replaceAll("/$", "");
        HttpResponse<String> answer = send("POST", "api/bench/phone", none, "Origin", own);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        JsonNode phone = JsonMapper.shared().readTree(answer.body());
        URI link = URI.create(phone.get("link").asString());
        assertThat(send("GET", "api/bench/phone-code.svg", "").body()).startsWith("<svg");
        HttpResponse<String> there = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(link.resolve("/api/bench/phone"))
                                .header("Origin", link.resolve("/").toString().replaceAll("/$", ""))
                                .POST(HttpRequest.BodyPublishers.ofString(none))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(there.statusCode()).isEqualTo(404);
        assertThat(send("DELETE", "api/bench/phone", "", "Origin", own).body()).contains("\"on\":false");
        assertThat(send("GET", "api/bench/phone-code.svg", "").statusCode()).isEqualTo(400);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "api/bench?design=heron&rate=2&confidence=0.95",
                "api/bench?design=heron&rate=NaN&confidence=0.95",
                "api/bench?design=heron",
                "api/bench/pair?design=heron&before=1&after=2",
                "api/bench/pair?design=../../etc&before=1&after=0",
                "api/bench/files?design=heron&revision=-1",
                "api/bench/use?what=nothing",
                "api/bench/effect?what=&design=nowhere",
                "api/bench/csv/nothing"
            })
    void whatCannotBeIsRefusedInWords(String path) throws Exception {
        HttpResponse<String> answer = send("GET", path, "");
        assertThat(answer.statusCode()).as(answer.body()).isBetween(400, 422);
        assertThat(JsonMapper.shared().readTree(answer.body()).get("problem").asString())
                .isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{\"entries\":1}",
                "{\"entries\":[{\"id\":\"x\"}]}",
                "{\"entries\":[null]}",
                "{\"more\":1}"
            })
    void whatIsNoEntryIsRefused(String body) throws Exception {
        assertThat(send("POST", "api/bench/log", body).statusCode()).isBetween(400, 422);
        assertThat(Files.exists(hut.resolve("workshop.db"))).isFalse();
    }
}
