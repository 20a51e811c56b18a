package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import jackwork.DemoCopy;
import jackwork.app.bench.BenchJson;
import jackwork.app.bench.BenchReport;
import jackwork.bench.Kinds;
import jackwork.design.WorkshopReader;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Tries, revisions, times and measured values at the page Bench, at the desk and beside the laser. */
@Tag("browser")
class BenchBrowserTest extends BenchOnThePage {

    private static final List<String> PARTS =
            List.of("tries", "revisions", "times", "measured", "pieces", "log", "phone");

    @Test
    void frozenTwiceAndLaidBesideEachOther() throws IOException {
        Page page = page("revisions", 1280);
        page.locator(".freeze-note").fill("the first");
        page.locator(".freeze .apply").click();
        page.waitForSelector("[data-revision='1']");
        assertThat(page.locator(".since").textContent()).contains("Nothing has changed since revision 1");
        changed(hut.resolve("boxes/marsh-box/box.yaml"), "throw: 14", "throw: 8");
        changed(hut.resolve("heron/figure.svg"), "L150,28", "L156,31");
        page.waitForSelector(".changes-since .value");
        assertThat(page.locator(".changes-since").textContent()).contains("lever.throw: 14 -> 8");
        page.locator(".freeze-note").fill("a shorter throw");
        page.locator(".freeze .apply").click();
        page.waitForSelector("[data-revision='2']");
        page.waitForSelector(".pair[data-before='1'][data-after='2']");
        // The post that ends the throw stands elsewhere, and so do its holes.
        assertThat(page.locator(".changed-parts li").allTextContents())
                .containsExactly("box: back: other holes", "box: front: other holes", "head: another outline");
        assertThat(page.locator(".changed-values").textContent()).contains("lever throw: 14 → 8");
        assertThat(page.locator(".moved-findings").textContent()).contains("throw EUR-1 out", "✓ pass", "✗ fail");
        assertThat(page.locator("figcaption").allTextContents())
                .containsExactly("Revision 1: nothing found against it", "Revision 2: fails");
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

    private static double number(Locator of, String attribute) {
        return Double.parseDouble(of.getAttribute(attribute));
    }

    @Test
    void predictedBuildsStandBesideTheTries() throws IOException {
        DemoCopy.withCoin(hut.resolve("heron"), "EUR-2");
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
        page.locator(".friction-slope").fill("48 48 47,5 49 48");
        page.locator(".measuring form button").click();
        page.waitForSelector(".outcome-measured");
        double mean = DoubleStream.of(48, 48, 47.5, 49, 48)
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
        assertThat(page.locator("[data-design=heron] h4").textContent())
                .contains("nothing found against it", "then", "fails");
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
    void timesStandBesideTheUsualOnes() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("times", 1280);
        page.locator(".timing-operation").selectOption("build");
        page.locator(".timing-minutes").fill("168");
        page.locator(".timing-pieces").fill("2");
        page.locator("form .apply").click();
        // What is timed and what is supposed come each by itself.
        page.waitForSelector("[data-operation=build] .small:has-text('timed, on'):has-text('min supposed')");
        assertThat(page.locator("[data-operation=build]").textContent())
                .contains("84 min timed, on 2 pieces of revision 1", "min supposed");
        assertNoComplaint();
    }

    // Both classes let phones in at the usual port, which has room for one.
    @ResourceLock("the phones' usual port")
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
                Browser.keep(page, "bench-" + part + "-" + width);
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
