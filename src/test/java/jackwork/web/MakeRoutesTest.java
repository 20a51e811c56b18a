package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.drawing.Paper;
import jackwork.drawing.PdfPictures;
import jackwork.geometry.Mesh;
import jackwork.make.Pack;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Can I make it?, through the real server: what is shown is what the pack holds. */
class MakeRoutesTest {

    @RegisterExtension
    static final Serving SERVING = Serving.copy();

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String PLAIN = making(1, "", "");

    @TempDir
    static Path folder;

    private static String making(int quantity, String paper, String measured) {
        return "{\"quantity\": %d, \"paper\": \"%s\", \"measured\": {%s}}".formatted(quantity, paper, measured);
    }

    private static HttpResponse<byte[]> ask(String method, String path, String body) throws Exception {
        return SERVING.asking().bytes(method, path, body);
    }

    private static HttpResponse<byte[]> asked(String what, String making, String more) throws Exception {
        return ask("GET", "api/" + what + "?of=" + URLEncoder.encode(making, StandardCharsets.UTF_8) + more, "");
    }

    private static JsonNode get(String what, String making) throws Exception {
        return JSON.readTree(asked(what, making, "").body());
    }

    private static JsonNode finished(HttpResponse<byte[]> begun) throws Exception {
        assertThat(begun.statusCode()).isEqualTo(200);
        return SERVING.asking().finished(JSON.readTree(begun.body()));
    }

    private static Map<String, byte[]> written(String into, int quantity, Paper paper, Map<String, Double> measured)
            throws IOException {
        Design design = DesignReader.read(SERVING.folder().resolve("heron")).withMeasured(measured);
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (Path file : Pack.write(design, folder.resolve(into), new Pack.Wish(quantity, paper), name -> {})) {
            files.put("heron/" + file.getFileName(), Files.readAllBytes(file));
        }
        return files;
    }

    @Test
    void onlyWhatConcernsMakingIsTold() throws Exception {
        JsonNode view = get("make/heron", PLAIN);
        assertThat(view.path("verdict").asString()).isEqualTo("works");
        assertThat(view.path("findings")
                        .valueStream()
                        .map(finding -> finding.path("id").asString()))
                .contains("fits-sheet")
                .doesNotContain("full-stroke", "comes-back");
        assertThat(view.path("stocks")
                        .valueStream()
                        .map(stock -> stock.path("stock").asString()))
                .containsExactlyInAnyOrder("birch-3", "birch-2");
        double thick = 0;
        for (JsonNode layer : view.path("layers")) {
            assertThat(layer.path("back").asDouble()).isCloseTo(thick, within(1e-3));
            thick = layer.path("front").asDouble();
        }
        assertThat(view.path("thickness").asDouble()).isCloseTo(thick, within(0.01));
    }

    @Test
    void theSheetInHandIsToldBesideTheWorkshopsOwn() throws Exception {
        String making = making(1, "", "\"birch-2\": 1.87");
        for (JsonNode stock : get("make/heron", making).path("stocks")) {
            boolean measured = stock.path("stock").asString().equals("birch-2");
            assertThat(stock.path("thickness").asDouble()).isEqualTo(measured ? 1.95 : 2.95);
            assertThat(stock.path("measured").isNull()).isEqualTo(!measured);
        }
    }

    @Test
    void theSheetsShownAreTheFilesOfThePack() throws Exception {
        Map<String, byte[]> files = written("sheets", 1, Paper.A4, Map.of("birch-3", 3.1));
        JsonNode shown = get("sheets/heron", making(1, "", "\"birch-3\": 3.1"));
        assertThat(shown.path("sheets").size()).isGreaterThan(1);
        for (JsonNode sheet : shown.path("sheets")) {
            String file = "heron/" + sheet.path("name").asString() + ".svg";
            assertThat(sheet.path("svg").asString().getBytes(StandardCharsets.UTF_8))
                    .isEqualTo(files.get(file));
            assertThat(sheet.path("share").asDouble()).isBetween(0.05, 1.0);
        }
        String bill = new String(files.get("heron/bill-of-materials.csv"), StandardCharsets.UTF_8);
        assertThat(shown.path("needs").size()).isEqualTo(bill.split("\r\n").length - 1);
        String otherwise = get("sheets/heron", PLAIN).path("sheets").toString();
        assertThat(otherwise).isNotEqualTo(shown.path("sheets").toString());
    }

    @Test
    void thePackFetchedIsThePackWritten() throws Exception {
        Map<String, byte[]> files = written("pack", 2, Paper.LETTER, Map.of("birch-2", 1.87));
        String making = making(2, "Letter", "\"birch-2\": 1.87");
        JsonNode first = finished(ask("POST", "api/pack/heron", making));
        assertThat(first.path("state").asString()).as(first.toString()).isEqualTo("done");
        assertThat(first.path("done").asInt()).isEqualTo(files.size());
        assertThat(first.path("lines").get(0).asString())
                .contains("laid out in")
                .contains("min at the laser");
        HttpResponse<byte[]> zip =
                ask("GET", "api/packs/" + first.path("number").asInt(), "");
        assertThat(zip.headers().firstValue("content-type")).contains("application/zip");
        assertThat(zip.headers().firstValue("content-disposition")).contains("attachment; filename=\"heron-pack.zip\"");
        assertThat(zip.body()).hasSize(first.path("packed").path("bytes").asInt());
        Map<String, byte[]> unzipped = Unzipped.of(zip.body());
        assertThat(List.copyOf(unzipped.keySet())).isSorted().containsExactlyInAnyOrderElementsOf(files.keySet());
        unzipped.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(files.get(name)));

        JsonNode second = finished(ask("POST", "api/pack/heron", making));
        assertThat(ask("GET", "api/packs/" + second.path("number").asInt(), "").body())
                .as("the same bytes again")
                .isEqualTo(zip.body());
        HttpResponse<byte[]> gone =
                ask("GET", "api/packs/" + first.path("number").asInt(), "");
        assertThat(gone.statusCode()).isEqualTo(400);
        assertThat(new String(gone.body(), StandardCharsets.UTF_8)).contains("make it again");
    }

    @Test
    void aPackCanBeStopped() throws Exception {
        HttpResponse<byte[]> begun = ask("POST", "api/pack/heron", making(60, "", ""));
        int number = JSON.readTree(begun.body()).path("number").asInt();
        assertThat(ask("DELETE", "api/jobs/" + number, "").statusCode()).isEqualTo(200);
        JsonNode stopped = finished(begun);
        assertThat(stopped.path("state").asString()).as(stopped.toString()).isEqualTo("stopped");
        assertThat(stopped.path("packed").isNull()).isTrue();
        assertThat(ask("GET", "api/packs/" + number, "").statusCode()).isEqualTo(400);
        assertThat(get("sheets/heron", making(60, "", "")).path("laid").asBoolean())
                .as("what it had so far is not taken for the sheets")
                .isFalse();
    }

    @Test
    void manyPiecesAreLaidOutAsLongWork() throws Exception {
        String making = making(5, "", "");
        assertThat(get("sheets/heron", making).path("laid").asBoolean()).isFalse();
        JsonNode laid = finished(ask("POST", "api/lay/heron", "{\"making\": " + making + ", \"seconds\": 0}"));
        assertThat(laid.path("state").asString()).as(laid.toString()).isEqualTo("done");
        JsonNode shown = get("sheets/heron", making);
        assertThat(shown.path("laid").asBoolean()).isTrue();
        assertThat(shown.path("sheets").size()).isGreaterThan(3);
    }

    @Test
    void tighterSheetsAreNeverLooserAndTheBestSoFarIsTaken() throws Exception {
        JsonNode before = get("sheets/lamplighter", PLAIN).path("sheets");
        HttpResponse<byte[]> begun =
                ask("POST", "api/lay/lamplighter", "{\"making\": " + PLAIN + ", \"seconds\": 600}");
        String address =
                "api/jobs/" + JSON.readTree(begun.body()).path("number").asInt();
        long start = System.nanoTime();
        while (JSON.readTree(ask("GET", address, "").body()).path("lines").size() < 2) {
            Thread.sleep(50);
        }
        ask("DELETE", address, "");
        assertThat(finished(begun).path("state").asString()).isEqualTo("done");
        assertThat((System.nanoTime() - start) / 1e9)
                .as("long before its time is over")
                .isLessThan(120);
        JsonNode after = get("sheets/lamplighter", PLAIN).path("sheets");
        assertThat(after.size()).isLessThanOrEqualTo(before.size());
        if (after.size() == before.size()) {
            assertThat(lastUsed(after)).isLessThanOrEqualTo(lastUsed(before));
        }
    }

    private static double lastUsed(JsonNode sheets) {
        Map<String, Double> used = new LinkedHashMap<>();
        sheets.forEach(sheet -> used.put(
                sheet.path("stock").asString(), sheet.path("offcutWidth").asDouble()));
        return used.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    @Test
    void pagesAreShownAsTheyArePrinted() throws Exception {
        Map<String, byte[]> files = written("pages", 1, Paper.A3, Map.of());
        String making = making(1, "A3", "");
        JsonNode papers = get("papers/heron", making);
        assertThat(papers.path("papers").size()).isGreaterThanOrEqualTo(3);
        for (JsonNode paper : papers.path("papers")) {
            byte[] pdf = files.get("heron/" + paper.path("file").asString());
            String kind = paper.path("kind").asString();
            for (int page = 0; page < paper.path("pages").size(); page++) {
                byte[] png = asked("paper/heron", making, "&kind=" + kind + "&page=" + page + "&width=400")
                        .body();
                assertThat(png).as(kind + page).isEqualTo(PdfPictures.png(pdf, page, 400));
                BufferedImage picture = ImageIO.read(new ByteArrayInputStream(png));
                assertThat(picture.getWidth()).isCloseTo(400, within(1));
                assertThat(dark(picture)).as("something is drawn").isGreaterThan(100);
            }
        }
        for (JsonNode test : papers.path("tests")) {
            assertThat(test.path("svg").asString().getBytes(StandardCharsets.UTF_8))
                    .isEqualTo(files.get("heron/" + test.path("name").asString() + ".svg"));
        }
        String form = new String(files.get("heron/test-pieces.txt"), StandardCharsets.UTF_8);
        papers.path("measures")
                .forEach(
                        measure -> assertThat(form).contains(measure.path("how").asString()));
    }

    private static int dark(BufferedImage picture) {
        int count = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                count += (picture.getRGB(x, y) & 0xff) < 160 ? 1 : 0;
            }
        }
        return count;
    }

    @Test
    void thePrintedPartsWeighWhatTheirSurfacesHold() throws Exception {
        double density = DesignReader.read(SERVING.folder().resolve("heron"))
                .workshop()
                .printerOrGuess()
                .density()
                .value();
        JsonNode kinds = get("make/heron", PLAIN).path("printed");
        JsonNode solids = get("solids/heron", PLAIN).path("solids");
        assertThat(solids.size()).isEqualTo(kinds.size()).isGreaterThan(0);
        for (int i = 0; i < solids.size(); i++) {
            JsonNode solid = solids.get(i);
            Mesh mesh = new Mesh(
                    solid.path("vertices")
                            .valueStream()
                            .mapToDouble(JsonNode::asDouble)
                            .toArray(),
                    solid.path("triangles")
                            .valueStream()
                            .mapToInt(JsonNode::asInt)
                            .toArray());
            assertThat(mesh.volume() * density / 1000)
                    .isCloseTo(kinds.get(i).path("grams").asDouble(), within(0.01));
        }
    }

    @Test
    void stepsHaveTheirPictures() throws Exception {
        JsonNode steps = get("make/heron", PLAIN).path("steps");
        int pictures = 0;
        for (int i = 0; i < steps.size(); i++) {
            HttpResponse<byte[]> answer = asked("glue-step/heron", PLAIN, "&number=" + i);
            boolean picture = steps.get(i).path("picture").asBoolean();
            assertThat(answer.statusCode()).isEqualTo(picture ? 200 : 400);
            if (picture) {
                pictures++;
                assertThat(new String(answer.body(), StandardCharsets.UTF_8))
                        .startsWith("<svg")
                        .contains("<path")
                        .doesNotContain("NaN");
            }
        }
        assertThat(pictures).isGreaterThan(5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "make/heron | {\"quantity\": 0, \"paper\": \"\", \"measured\": {}} | 400 | 1 to 100",
                "make/heron | {\"quantity\": 101, \"paper\": \"\", \"measured\": {}} | 400 | --quantity",
                "make/heron | {\"quantity\": 1, \"paper\": \"A9\", \"measured\": {}} | 400 | A4, A3, Letter",
                "make/heron | {\"quantity\": 1} | 400 | expected JSON with quantity, paper, measured",
                "make/heron | {\"quantity\": 1, \"paper\": \"\", \"measured\": {\"oak\": 3}} | 422 | workshop.yaml",
                "sheets/heron | {\"quantity\": 1, \"paper\": \"\", \"measured\": {\"birch-3\": 80}} | 422 | 0.2 to 50 mm",
                "make/heron | {\"quantity\": 1, \"paper\": \"\", \"measured\": {\"birch-3\": 14}} | 422 | use a thinner sheet",
                "make/none | {\"quantity\": 1, \"paper\": \"\", \"measured\": {}} | 404 | none",
            })
    void whatCannotBeMadeIsRefusedInWords(String what, String making, int status, String words) throws Exception {
        HttpResponse<byte[]> answer = asked(what, making, "");
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains(words);
    }

    @Test
    void pagesThatAreNotThereAreRefused() throws Exception {
        for (String more : List.of(
                "&kind=artwork&page=9&width=400",
                "&kind=artwork&page=0&width=5000",
                "&kind=artwork&page=-1&width=400",
                "&kind=cloth&page=0&width=400",
                "&kind=../etc&page=0&width=400")) {
            assertThat(asked("paper/heron", PLAIN, more).statusCode()).as(more).isEqualTo(400);
        }
        assertThat(ask("POST", "api/lay/heron", "{\"making\": " + PLAIN + ", \"seconds\": 1e9}")
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void aPartThatNoSheetHoldsIsToldByName() throws Exception {
        Path small = DemoCopy.at(folder.resolve("small"));
        Path file = small.resolve("workshop.yaml");
        String text = Files.readString(file);
        assertThat(text).contains("bed: [600, 400]");
        Files.writeString(file, text.replace("bed: [600, 400]", "bed: [120, 120]"));
        PageServer other = PageServer.start(Benches.at(small), 0);
        try {
            HttpResponse<String> answer = HttpClient.newHttpClient()
                    .send(
                            new Asking(other.address())
                                    .request("api/sheets/heron?of=" + URLEncoder.encode(PLAIN, StandardCharsets.UTF_8))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).contains("use a larger sheet");
        } finally {
            other.stop();
        }
    }
}
