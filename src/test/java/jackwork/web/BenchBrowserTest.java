package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import jackwork.DemoCopy;
import jackwork.app.Bench;
import jackwork.app.BenchJson;
import jackwork.app.BenchReport;
import jackwork.app.Workbench;
import jackwork.bench.Kinds;
import jackwork.bench.Score;
import jackwork.design.WorkshopReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page Bench on the real server in real Chromium, at the desk and beside the laser. */
@Tag("browser")
class BenchBrowserTest {

    private static final Instant DAY = Instant.parse("2026-03-01T09:30:00Z");
    private static final List<String> PARTS =
            List.of("tries", "revisions", "times", "measured", "pieces", "log", "phone");

    @TempDir
    Path folder;

    private Path hut;
    private Bench bench;
    private PageServer server;
    private Browser browser;

    @BeforeEach
    void open() throws IOException {
        hut = DemoCopy.at(folder.resolve("hut"));
        bench = Bench.in(hut);
        server = PageServer.start(new Workbench(hut), 0, () -> List.of(InetAddress.getLoopbackAddress()));
        browser = new Browser();
    }

    @AfterEach
    void close() {
        browser.close();
        server.stop();
    }

    private Page page(String part, int width) {
        Page page = browser.open(server.address() + "#heron&bench&" + part, width, width < 500 ? 740 : 900);
        page.setDefaultTimeout(90_000);
        ready(page, part);
        return page;
    }

    private static void ready(Page page, String part) {
        page.waitForSelector(".bench[data-state=ready][data-part=" + part + "]");
    }

    private static void go(Page page, String part) {
        page.locator(".parts a[href$='&" + part + "']").click();
        ready(page, part);
    }

    private static void changed(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    private Score score() {
        return Score.of(bench.log().counting(Kinds.TRIALS));
    }

    private void assertNoComplaint() {
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void frozenTwiceAndLaidBesideEachOther() throws IOException {
        Page page = page("revisions", 1280);
        page.locator(".freeze-note").fill("the first");
        page.locator(".freeze .apply").click();
        page.waitForSelector("[data-revision='1']");
        assertThat(page.locator(".since").textContent()).contains("Nothing has changed since revision 1");
        changed(hut.resolve("boxes/marsh-box/box.yaml"), "throw: 14", "throw: 13");
        changed(hut.resolve("heron/figure.svg"), "L150,28", "L156,31");
        page.waitForSelector(".changes-since .value");
        assertThat(page.locator(".changes-since").textContent()).contains("lever.throw: 14 -> 13");
        page.locator(".freeze-note").fill("a shorter throw");
        page.locator(".freeze .apply").click();
        page.waitForSelector("[data-revision='2']");
        page.waitForSelector(".pair[data-before='1'][data-after='2']");
        assertThat(page.locator(".changed-parts li").allTextContents()).containsExactly("head: another outline");
        assertThat(page.locator(".changed-values").textContent()).contains("lever throw: 14 → 13");
        assertThat(page.locator(".moved-findings").textContent()).contains("throw EUR-1 out", "✓ pass", "✗ fail");
        assertThat(page.locator("figcaption").allTextContents())
                .containsExactly("Revision 1: works", "Revision 2: fails");
        for (Locator picture : page.locator(".pair img").all()) {
            page.waitForCondition(() -> ((Number) picture.evaluate("image => image.naturalWidth")).intValue() > 0);
        }
        Browser.keep(page, "bench-revisions");
        assertNoComplaint();
    }

    /** What the page shows is what the command line's JSON says, to its last place. */
    @ParameterizedTest
    @ValueSource(ints = {1280, 360})
    void triesAreLoggedWithFewTouchesAndScoredAsTheCommandLineScores(int width) throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("tries", width);
        page.locator(".coin-row button", text("EUR-1")).click();
        page.locator(".worked").click();
        page.waitForCondition(() -> score().tries() == 1);
        page.locator(".failed").click();
        page.locator("[data-cause=thrown]").click();
        page.waitForCondition(() -> score().tries() == 2);
        page.locator(".trial-count").fill("48");
        page.locator(".trial-count").press("Tab");
        page.locator(".failed").click();
        page.locator("[data-cause=lands]").click();
        page.locator("[data-cause=lands]").click();
        page.locator(".log-failed").click();
        page.waitForCondition(() -> score().tries() == 50);
        page.waitForSelector("[data-cause=lands][data-tries='2']");
        JsonNode said = JsonMapper.shared()
                .readTree(BenchJson.report(
                        BenchReport.of(bench.log(), "heron", new BenchReport.Wish(0.99, 0.95)), bench.log()))
                .get("revisions")
                .get(0);
        Locator interval = page.locator("[data-coin=EUR-1] .interval");
        JsonNode expected = said.get("coins").get(0).get("measured").get("interval95");
        assertThat(number(interval, "data-low")).isEqualTo(expected.get("low").asDouble());
        assertThat(number(interval, "data-high")).isEqualTo(expected.get("high").asDouble());
        assertThat(interval.textContent()).contains("47 of 50 passed, 94\u00a0%");
        assertThat(number(page.locator(".needed"), "data-needed"))
                .isEqualTo(said.get("all").get("cleanCoinsNeeded").asDouble());
        page.locator(".wish summary").click();
        page.locator(".wish-rate").fill("90");
        page.locator(".wish-rate").press("Tab");
        int needed = score().cleanNeeded(0.9, 0.95);
        page.waitForSelector(".needed[data-needed='" + needed + "']");
        page.locator(".take-back").click();
        page.waitForCondition(() -> score().tries() == 2);
        Browser.keep(page, "bench-tries-" + width);
        assertNoComplaint();
    }

    private static Page.LocatorOptions text(String words) {
        return new Page.LocatorOptions().setHasText(words);
    }

    private static double number(Locator of, String attribute) {
        return Double.parseDouble(of.getAttribute(attribute));
    }

    @Test
    void predictedBuildsStandBesideTheTries() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("tries", 1280);
        page.locator(".predict").click();
        page.waitForSelector(".predicting progress");
        page.locator(".predicting .stop").click();
        page.waitForSelector(".predict");
        assertThat(bench.log().counting(Kinds.PREDICTIONS))
                .as("stopped, nothing kept")
                .isEmpty();
        assertThat(page.locator(".predicting").textContent()).contains("nothing was kept");
        page.locator(".predict").click();
        page.waitForSelector(".coin-score .built", new Page.WaitForSelectorOptions().setTimeout(240_000));
        int predicted = bench.log().counting(Kinds.PREDICTIONS).get(0).coins().get("EUR-2");
        assertThat(page.locator("[data-coin=EUR-2]").textContent()).contains("Predicted: " + predicted + " of 1000");
        page.locator(".coin-row button", text("EUR-2")).click();
        page.locator(".trial-count").fill("40");
        page.locator(".trial-count").press("Tab");
        page.locator(".failed").click();
        for (int i = 0; i < 8; i++) {
            page.locator("[data-cause=frees]").click();
        }
        page.locator(".log-failed").click();
        page.waitForSelector("[data-coin=EUR-2] .gap");
        assertThat(page.locator("[data-coin=EUR-2] .gap").textContent())
                .contains("less than once in 100 times", "look for what the workshop's numbers miss");
        Browser.keep(page, "bench-predicted");
        assertNoComplaint();
    }

    @Test
    void measuredFrictionIsSeenBeforeItIsKeptAndTurnsAFinding() throws IOException {
        Page page = page("measured", 1280);
        page.locator(".form-choice [data-form=friction]").click();
        page.locator(".friction-one").selectOption("bamboo");
        page.locator(".friction-slope").fill("43 44 42,5 44 43");
        page.locator(".measuring form button").click();
        page.waitForSelector(".outcome-measured");
        double mean = DoubleStream.of(43, 44, 42.5, 44, 43)
                .map(slope -> Math.tan(Math.toRadians(slope)))
                .average()
                .orElseThrow();
        assertThat(page.locator(".outcome-measured").textContent())
                .contains(String.format(Locale.ROOT, "%.3f, between", mean));
        assertThat(bench.log().list(Kinds.MEASURED)).as("not kept yet").isEmpty();
        page.locator(".keep").click();
        page.waitForSelector("[data-name='friction:bamboo,wood']");
        String before = WorkshopReader.text(hut);
        page.locator(".see-use").click();
        page.waitForSelector(".write-use:not([disabled])");
        assertThat(page.locator("[data-design=heron] h4").textContent()).contains("works", "then", "fails");
        assertThat(page.locator("[data-design=heron] .moved-findings").textContent())
                .contains("✓ pass →");
        assertThat(WorkshopReader.text(hut)).as("only looked at").isEqualTo(before);
        Browser.keep(page, "bench-use");
        page.locator(".write-use").click();
        page.waitForCondition(() -> !WorkshopReader.text(hut).equals(before));
        assertThat(WorkshopReader.read(hut).friction()).hasSize(1);
        page.locator("header nav a", text("Will it work?")).click();
        page.waitForSelector(".verdict.fails");
        assertNoComplaint();
    }

    @Test
    void aPieceIsPlacedEmptiedAndSold() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("pieces", 1280);
        page.locator(".piece-serial").fill("MH-001");
        page.locator(".piece-batch").fill("spring");
        page.locator("form .apply").click();
        page.waitForSelector("[data-serial=MH-001]");
        happened(page, "placed");
        page.locator(".happening-who").fill("the hide by the sluice");
        page.locator(".piece-form .apply").click();
        page.waitForSelector("[data-serial=MH-001] .where:has-text('placed at the hide by the sluice')");
        happened(page, "takings");
        page.locator(".taking-amount").fill("41,20");
        page.locator(".taking-counted").fill("Reed");
        page.locator(".taking-witnessed").fill("reed");
        page.locator(".taking-seal").fill("00123");
        page.locator(".piece-form .apply").click();
        page.waitForSelector(".told.away:has-text('expected two people')");
        happened(page, "takings");
        page.locator(".taking-amount").fill("41,20");
        page.locator(".taking-counted").fill("Reed");
        page.locator(".taking-witnessed").fill("Sedge");
        page.locator(".taking-seal").fill("00123");
        page.locator(".piece-form .apply").click();
        page.waitForSelector("[data-serial=MH-001] .taken:has-text('41.20 EUR')");
        happened(page, "sold");
        page.locator(".happening-who").fill("a visitor");
        page.locator(".happening-amount").fill("62");
        page.locator(".piece-form .apply").click();
        page.waitForSelector("[data-serial=MH-001] .where:has-text('sold to a visitor')");
        happened(page, "spare");
        Download files =
                page.waitForDownload(() -> page.locator(".piece-form a").click());
        assertThat(files.suggestedFilename()).isEqualTo("heron-revision-1.zip");
        page.locator(".bench-design").selectOption("");
        page.waitForSelector(".all-takings");
        assertThat(page.locator(".totals").textContent()).contains("1 piece: 1 sold", "41.20 EUR", "Sold for 62 EUR");
        Browser.keep(page, "bench-pieces");
        assertNoComplaint();
    }

    private static void happened(Page page, String what) {
        page.locator("[data-serial=MH-001] .log-piece[aria-expanded=false]").click();
        page.locator(".happening").selectOption(what);
    }

    @Test
    void timesStandBesideTheUsualOnes() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("times", 1280);
        page.locator(".timing-operation").selectOption("build");
        page.locator(".timing-minutes").fill("168");
        page.locator(".timing-pieces").fill("2");
        page.locator("form .apply").click();
        page.waitForSelector("[data-operation=build] .built");
        assertThat(page.locator("[data-operation=build]").textContent())
                .contains("84 min timed, on 2 pieces of revision 1", "min supposed");
        assertNoComplaint();
    }

    @Test
    void anEntryIsStruckAndStaysToBeSeen() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("tries", 360);
        page.locator(".worked").click();
        page.waitForCondition(() -> score().tries() == 1);
        go(page, "log");
        page.locator(".entries .strike").click();
        page.locator(".strike-why").fill("the coin was bent");
        page.locator(".entries .apply").click();
        page.waitForSelector(".entries .struck");
        assertThat(page.locator(".entries .why").textContent()).isEqualTo("struck: the coin was bent");
        assertThat(score().tries()).isZero();
        assertThat(bench.log().list(Kinds.TRIALS)).hasSize(1);
        Browser.keep(page, "bench-struck");
        assertNoComplaint();
    }

    @Test
    void csvGoesOutAndComesInWholeOrNotAtAll() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("tries", 1280);
        page.locator(".worked").click();
        page.waitForCondition(() -> score().tries() == 1);
        go(page, "log");
        Download out = page.waitForDownload(
                () -> page.locator(".csv a", text("trials")).click());
        assertThat(out.suggestedFilename()).isEqualTo("trials.csv");
        String csv = Files.readString(out.path());
        bring(page, csv.replaceFirst("(?s)\r\n$", "\r\nk2,2026-03-02,heron,1,,EUR-2,ten,,\r\n"));
        page.waitForSelector(".csv .problem");
        assertThat(page.locator(".csv .problem").textContent()).contains("trials.csv:3:", "expected a whole number");
        assertThat(score().tries()).isEqualTo(1);
        bring(page, csv.replaceFirst("(?s)\r\n$", "\r\nk2,2026-03-02,heron,1,,EUR-2,10,lands=1,\r\n"));
        page.waitForSelector(".taken-in:has-text('1 entry came in; 1 were there already')");
        assertThat(score().tries()).isEqualTo(11);
        assertThat(browser.complaints()).allMatch(complaint -> complaint.contains("status of 422"));
    }

    private static void bring(Page page, String csv) {
        page.locator(".csv-file")
                .setInputFiles(new FilePayload("trials.csv", "text/csv", csv.getBytes(StandardCharsets.UTF_8)));
    }

    /** Another page, a phone: what they log shows here by itself; turned out, the phone logs no more. */
    @Test
    void aPhoneIsLetInAndWhatItLogsShows() throws Exception {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page desk = page("phone", 1280);
        desk.locator(".let-in").click();
        desk.waitForSelector(".phone[data-on=true] .code");
        desk.waitForCondition(
                () -> ((Number) desk.locator(".code").evaluate("code => code.naturalWidth")).intValue() > 0);
        Browser.keep(desk, "bench-phone");
        String link = desk.locator(".phone-link").textContent();
        assertThat(seen(desk.locator(".code").screenshot()))
                .as("as a camera reads it")
                .isEqualTo(link);
        Page phone = browser.open(link, 360, 740);
        phone.waitForSelector("#bench[data-state=try]");
        desk.waitForSelector(".phone[data-in='1']");
        assertThat(desk.locator(".code").count()).as("the link is used up").isZero();
        go(desk, "tries");
        phone.locator("button.worked").click();
        desk.waitForSelector(".all-coins:has-text('1 of 1')");
        // And the other way: what is tried at the desk is counted on the phone, when it is looked at again.
        desk.locator(".worked").click();
        desk.waitForSelector(".all-coins:has-text('2 of 2')");
        phone.waitForSelector(".count:has-text('2 of 2')");
        go(desk, "phone");
        desk.locator(".turn-out").click();
        desk.waitForSelector(".phone[data-on=false]");
        phone.locator("button.worked").click();
        phone.waitForSelector("#bench[data-waiting='1']");
        assertThat(score().tries()).isEqualTo(2);
        // Let in again, at the same address: what waited there is sent.
        desk.locator(".let-in").click();
        desk.waitForSelector(".phone-link");
        assertThat(desk.locator(".phone-link").textContent()).startsWith(link.replaceAll("#.*", ""));
    }

    /** What a QR code in a picture says. */
    private static String seen(byte[] png) throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        LuminanceSource source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(source)))
                .getText();
    }

    /** Pressed while the connection is down, and with an answer gone astray: nothing is lost, nothing is logged twice. */
    @Test
    void nothingIsLostWhenTheConnectionDrops() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("tries", 360);
        page.context().setOffline(true);
        for (int i = 0; i < 3; i++) {
            page.locator(".worked").click();
        }
        page.waitForSelector(".bench[data-waiting='3'] .unsent:has-text('3 entries wait')");
        page.locator(".take-back").click();
        page.waitForSelector(".bench[data-waiting='2']");
        Browser.keep(page, "bench-offline");
        page.context().setOffline(false);
        page.waitForSelector(".bench[data-waiting='0']");
        page.waitForCondition(() -> score().tries() == 2);
        page.route("**/api/bench/log", route -> {
            route.fetch();
            route.abort();
        });
        page.locator(".worked").click();
        page.waitForCondition(() -> score().tries() == 3);
        page.waitForSelector(".bench[data-waiting='1']");
        page.unroute("**/api/bench/log");
        page.waitForSelector(".bench[data-waiting='0']");
        page.waitForSelector(".all-coins:has-text('3 of 3')");
        assertThat(score().tries()).isEqualTo(3);
    }

    @Test
    void noSeriousFaultForThoseWhoSeeOrHearOtherwiseAndNoScrollingSideways() throws IOException {
        bench.freeze(hut.resolve("heron"), "the first", DAY);
        changed(hut.resolve("heron/figure.svg"), "L150,28", "L156,31");
        Page filled = page("tries", 1280);
        filled.locator(".trial-count").fill("30");
        filled.locator(".trial-count").press("Tab");
        filled.locator(".worked").click();
        filled.waitForCondition(() -> score().tries() == 30);
        go(filled, "pieces");
        filled.locator(".piece-serial").fill("MH-001");
        filled.locator("form .apply").click();
        filled.waitForSelector("[data-serial=MH-001]");
        go(filled, "measured");
        filled.locator("[data-form=rod]").click();
        filled.locator(".rod-size").fill("3.02 3.05 2.98");
        filled.locator(".measuring form button").click();
        filled.locator(".keep").click();
        filled.waitForSelector("[data-name='rod:bamboo-3']");
        filled.close();
        for (int width : List.of(360, 1280)) {
            Page page = page("tries", width);
            for (String part : PARTS) {
                go(page, part);
                unfold(page, part);
                assertThat(Browser.seriousFaults(page))
                        .as(part + ", " + width + " wide")
                        .isEmpty();
                for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                    Browser.keep(
                            page,
                            "bench-" + part + "-" + width + "-" + scheme.name().toLowerCase(Locale.ROOT));
                }
                Number wide = (Number) page.evaluate("document.documentElement.scrollWidth");
                assertThat(wide.intValue()).as(part + " at " + width).isLessThanOrEqualTo(width);
            }
            page.close();
        }
    }

    /** Whatever a part shows only when asked. */
    private static void unfold(Page page, String part) {
        switch (part) {
            case "tries" -> page.locator(".wish summary").click();
            case "revisions" -> page.waitForSelector(".pair");
            case "measured" -> page.locator("[data-form=kerf]").click();
            case "pieces" -> happened(page, "takings");
            case "log" -> page.locator(".entries .strike").first().click();
            case "phone" -> {
                page.locator(".let-in").first().click();
                page.waitForSelector(".phone-link");
            }
            default -> {
                // The whole of it is to be seen as it is.
            }
        }
    }
}
