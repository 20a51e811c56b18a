package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import jackwork.app.bench.Bench;
import jackwork.app.pay.Pricing;
import jackwork.bench.Kinds;
import jackwork.bench.RevisionName;
import jackwork.bench.Stamp;
import jackwork.bench.Timing;
import jackwork.price.Backwards;
import jackwork.price.PriceReport;
import jackwork.price.Timed;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Will it pay? as a maker meets it: what is slid, what follows, held against what {@link Pricing} answers for the same. */
@Tag("browser")
class PayBrowserTest extends PayOnThePage {

    private static int drawn(Page page) {
        return ((Number) page.evaluate("document.querySelector('jackwork-pay-draw progress')?.value ?? 0")).intValue();
    }

    @Test
    void theFloorFollowsTheBatch() {
        for (int width : List.of(DESK, PHONE)) {
            Page page = page(width);
            String floor = page.locator(".floor-row .amount").textContent();
            assertThat(floor).isEqualTo(same(10, null, Map.of()).floor() + " EUR");
            slide(page, "batch", "40");
            String then = page.locator(".floor-row .amount").textContent();
            assertThat(then)
                    .isNotEqualTo(floor)
                    .isEqualTo(same(40, null, Map.of()).floor() + " EUR");
            assertThat(page.locator(".verdict").textContent()).contains(then);
            assertThat(page.locator("[data-slider=batch] .value input").inputValue())
                    .isEqualTo("40");
            write(page, "wage", "21.5");
            assertThat(page.locator(".floor-row .amount").textContent())
                    .isEqualTo(same(40, null, Map.of("wage", 21.5)).floor() + " EUR");
            page.locator(".all-back").click();
            answered(page);
            assertThat(page.locator(".floor-row .amount").textContent()).isEqualTo(floor);
            page.close();
        }
    }

    @Test
    void theKeyboardSlides() {
        Page page = page(DESK);
        page.locator("#pay-batch").focus();
        page.keyboard().press("ArrowRight");
        answered(page);
        page.waitForSelector("#pay-batch[aria-valuetext='11 pieces']");
        answered(page);
        assertThat(page.locator(".floor-row .amount").textContent())
                .isEqualTo(same(11, null, Map.of()).floor() + " EUR");
        page.close();
    }

    @Test
    void theShelfPriceSaysHowManyMinutes() {
        Page page = page(DESK);
        write(page, "shelf", "34.90");
        PriceReport report = same(10, "34.90", Map.of());
        assertThat(report.verdict()).isEqualTo("fails");
        assertThat(page.locator(".verdict").textContent()).contains("It does not pay");
        for (Backwards back : report.backwards()) {
            String said = page.locator("[data-back='" + back.channel() + "']").textContent();
            assertThat(said)
                    .contains(
                            back.mayTake().signum() < 0
                                    ? "stock, machines and fees alone cost more"
                                    : "may take " + Math.round(back.mayTake().doubleValue()) + " minutes");
            assertThat(said).contains("✗ too little");
            assertThat(page.locator("[data-back='" + back.channel() + "'] .may-cost")
                            .textContent())
                    .isEqualTo(back.mayCost().toPlainString().replace('-', '−'));
        }
        assertThat(page.locator(".steps-in-the-way li").count()).isEqualTo(5);
        page.close();
    }

    @Test
    void minutesOfAPieceAndOfAStepMoveIt() {
        Page page = page(DESK);
        unfold(page, ".sliders details");
        write(page, "pivot", "0.4");
        PriceReport quick = same(10, null, Map.of("times.pivot", 0.4));
        assertThat(page.locator(".floor-row .amount").textContent()).isEqualTo(quick.floor() + " EUR");
        page.locator("[data-slider=pivot] .back").click();
        answered(page);
        slide(page, "minutes", "100");
        PriceReport then = pricing.answer(new Pricing.Ask(10, null, 100.0, Map.of(), Map.of()));
        assertThat(page.locator(".floor-row .amount").textContent()).isEqualTo(then.floor() + " EUR");
        page.close();
    }

    @Test
    void theLaddersAmountsAreThoseOfTheCommand() {
        Page page = page(DESK);
        unfold(page, ".amounts");
        JsonNode report = JsonMapper.shared().readTree(Pricing.json(same(10, null, Map.of())));
        for (JsonNode ladder : report.path("ladders")) {
            Locator table =
                    page.locator("[data-channel='" + ladder.path("channel").asString() + "']");
            List<String> reaches = table.locator("tbody td:last-child").allTextContents();
            assertThat(reaches).hasSize(ladder.path("rungs").size());
            for (int i = 0; i < reaches.size(); i++) {
                assertThat(new BigDecimal(reaches.get(i)))
                        .isEqualByComparingTo(
                                ladder.at("/rungs/" + i + "/reaches").decimalValue());
            }
            assertThat(new BigDecimal(table.locator(".shelf").textContent().replace(" EUR", "")))
                    .isEqualByComparingTo(ladder.path("shelf").decimalValue());
        }
        Browser.keep(page, "pay-ladder-amounts");
        page.locator(".vat").check();
        answered(page);
        PriceReport registered = same(10, null, Map.of("vat.registered", 1.0));
        assertThat(page.locator("[data-channel='post'] .shelf").textContent())
                .isEqualTo(registered.ladders().get(2).shelf() + " EUR");
        page.close();
    }

    /** The line of the price asked is pulled with the pointer: to half of the picture's width, a whole amount. */
    @Test
    void theAskedPriceIsPulled() {
        Page page = page(DESK);
        BoundingBox grip = page.locator(".pull .mark").boundingBox();
        BoundingBox picture = page.locator("svg.ladder").boundingBox();
        page.mouse().move(grip.x + grip.width / 2, grip.y + grip.height / 2);
        page.mouse().down();
        page.mouse()
                .move(
                        picture.x + picture.width / 2,
                        grip.y,
                        new com.microsoft.playwright.Mouse.MoveOptions().setSteps(4));
        page.mouse().up();
        while (page.locator("[data-slider=shelf] .value input").inputValue().startsWith("150")) {
            page.waitForTimeout(50);
        }
        answered(page);
        String asked = page.locator("[data-slider=shelf] .value input").inputValue();
        assertThat(asked).matches("\\d+");
        BoundingBox then = page.locator(".pull .mark").boundingBox();
        assertThat(then.x).isLessThan(grip.x - 20);
        assertThat(page.locator(".verdict").textContent()).contains(asked + ".00 EUR");
        page.close();
    }

    @Test
    void quickerWaysSayWhatTheFindingsSay() throws IOException {
        Page page = page(DESK);
        Locator printed = page.locator("[data-offer^='printed-']").first();
        assertThat(page.locator("[data-offer='larger-batch'] .findings-say").textContent())
                .contains("so do its findings");
        assertThat(page.locator(".findings-say:has-text('Not asked yet')").count())
                .isGreaterThanOrEqualTo(2);
        page.locator(".ask-again").click();
        page.waitForSelector(
                ".offers .findings-say:has-text('Not asked yet')",
                new Page.WaitForSelectorOptions()
                        .setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
        assertThat(printed.textContent())
                .containsAnyOf("Still nothing found against it", "not for certain", "It fails then");
        theDesignIsChangedSoAndBack(page);
        page.close();
    }

    private void theDesignIsChangedSoAndBack(Page page) throws IOException {
        answered(page);
        Path file = demo.resolve("heron/design.yaml");
        String before = Files.readString(file);
        String version = page.locator("jackwork-pay").getAttribute("data-answered");
        Locator way = page.locator("[data-offer^='printed-']:has(.take-way)").first();
        String offer = "[data-offer='" + way.getAttribute("data-offer") + "']";
        String name = way.locator(".offer-name").textContent().trim();
        Browser.keep(page, "pay-quicker");
        way.locator(".take-way").click();
        page.waitForSelector("[data-step=undo][aria-label*=\"" + name + "\"]");
        page.waitForSelector("jackwork-pay[data-answered]:not([data-answered='" + version + "'])");
        assertThat(page.locator(offer).count()).as("done already").isZero();
        assertThat(Files.readString(file)).isNotEqualTo(before).contains("-printed");
        page.locator("[data-step=undo]").click();
        page.waitForSelector(offer);
        assertThat(Files.readString(file)).isEqualTo(before);
    }

    @Test
    void waysStandSideBySide() {
        Page page = page(DESK);
        PriceReport report = same(10, null, Map.of());
        assertThat(page.locator(".way").count()).isEqualTo(report.ways().size());
        report.ways().forEach(way -> {
            String summary =
                    page.locator("[data-way='" + way.id() + "'] > summary").textContent();
            assertThat(summary).contains(way.left().abs().toPlainString() + " EUR");
            assertThat(summary).contains(way.left().signum() < 0 ? "short" : "left");
        });
        unfold(page, "[data-way='sale-or-return']");
        assertThat(page.locator("[data-way='sale-or-return'] .months svg").isVisible())
                .isTrue();
        assertThat(page.locator("[data-way='sale-or-return'] figcaption").textContent())
                .contains(report.ways().get(1).tiedUp() + " EUR");
        unfold(page, "[data-way='charity']");
        assertThat(page.locator("[data-way='charity'] .purse").count()).isEqualTo(2);
        assertThat(page.locator("[data-way='charity'] .hangs-on li").count()).isEqualTo(4);
        Browser.keep(page, "pay-ways");
        page.close();
    }

    @Test
    void whatMovesItMostStandsFirst() {
        Page page = page(PHONE);
        PriceReport report = same(10, null, Map.of());
        List<String> names = page.locator(".sensitivity").first().locator("[data-swing]").all().stream()
                .map(row -> row.getAttribute("data-swing"))
                .toList();
        assertThat(names)
                .isEqualTo(report.sensitivity().get(0).swings().stream()
                        .map(swing -> swing.name())
                        .toList());
        assertThat(page.locator(".rests-count").textContent()).contains(report.guesses() + " of ");
        page.close();
    }

    /** Taken, told, and left aside where asked; struck at the end, since the other tests know nothing of it. */
    @Test
    void whatWasTimedAtTheBenchIsTaken() throws IOException {
        Bench bench = Bench.in(demo);
        RevisionName frozen =
                bench.freeze(demo.resolve("heron"), "as drawn", Instant.now()).name();
        Stamp stamp = Stamp.of(Instant.now(), "");
        bench.log().add(Kinds.TIMINGS, new Timing(stamp, frozen, "build", 190, 2));
        String supposed = same(10, null, Map.of()).floor() + " EUR";
        String timed =
                pricing.answer(new Pricing.Ask(10, null, null, Map.of(), Map.of("build", Timed.said(95, "here"))))
                                .floor()
                        + " EUR";
        assertThat(timed).isNotEqualTo(supposed);
        for (int width : List.of(DESK, PHONE)) {
            Page page = page(width);
            Locator amount = page.locator(".floor-row .amount");
            assertThat(amount.textContent()).isEqualTo(timed);
            assertThat(page.locator(".timed-work").textContent())
                    .containsIgnoringWhitespaces("glue and put together: 95 min, on 2 pieces of revision 1");
            Browser.keep(page, "pay-timed-" + width);
            page.locator(".as-timed").uncheck();
            answered(page);
            assertThat(amount.textContent()).isEqualTo(supposed);
            page.locator(".all-back").click();
            answered(page);
            assertThat(amount.textContent()).isEqualTo(timed);
            assertThat(page.locator(".as-timed").isChecked()).isTrue();
            page.close();
        }
        bench.log().strike(Kinds.TIMINGS, stamp.key(), "of this test alone");
    }

    /** Of another design than the other tests', since what is drawn stays with it. */
    @Test
    void buildsAreDrawnAndStopped() {
        Page page = page("spoiled%2Fkicker-short", DESK);
        assertThat(page.locator(".good-share").textContent()).contains("is a guess");
        page.locator(".draw").nth(1).click();
        while (drawn(page) == 0) {
            page.waitForTimeout(50);
        }
        page.locator("jackwork-pay-draw .stop").click();
        page.waitForSelector("jackwork-pay-draw .progress:has-text('stopped')");
        assertThat(page.locator(".good-share").textContent()).contains("is a guess");
        String floor = page.locator(".floor-row .amount").textContent();
        page.locator(".draw").first().click();
        page.waitForSelector(".good-share:has-text('sample pieces pass')");
        answered(page);
        assertThat(page.locator(".good-share").textContent()).contains("of 200 sample pieces");
        assertThat(page.locator(".floor-row .amount").textContent()).isNotEqualTo(floor);
        page.close();
    }

    @Test
    void noSeriousFaultForThoseWhoSeeOrHearOtherwise() throws IOException {
        for (int width : List.of(PHONE, DESK)) {
            Page page = page(width);
            page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
            assertThat(Browser.seriousFaults(page)).as(width + " wide").isEmpty();
            Browser.keep(page, "pay-" + width);
            page.close();
        }
    }
}
