package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A design changed at the page: dragged, written, taken back, by two people at once, with the server gone. */
@Tag("browser")
class ChangeBrowserTest {

    private static final String HIP = "figure.pins.crank.at";
    /** To measure, ask for 260: a server that has run for a while answers sooner, its first answers wait for the compiler. */
    private static final int ANSWERS = Integer.getInteger("jackwork.answers", 20);

    private static final int LAST = 60;
    private static final String TAIL = "figure.weights.tail.mass";

    private static Path demo;
    private static PageServer server;
    private static Browser browser;

    @BeforeAll
    static void open() throws IOException {
        demo = DemoCopy.here();
        server = PageServer.start(Benches.at(demo), 0);
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        browser.close();
        server.stop();
    }

    private static Page page(String design) {
        Page page = browser.open(server.address() + "#" + design, 1400, 1000);
        page.waitForSelector("jackwork-page[data-ready='" + design + "']");
        page.locator(".change-switch").click();
        page.waitForSelector("jackwork-change");
        return page;
    }

    private static String text(String file) throws IOException {
        return Files.readString(demo.resolve(file));
    }

    private static double millimetre(Page page) {
        return ((Number) page.evaluate("document.querySelector('svg.scene').getScreenCTM().a")).doubleValue();
    }

    /** Glimpses answered and drawn so far. */
    private static int answers(Page page) {
        return ((Number) page.evaluate("performance.getEntriesByName('glimpse').length")).intValue();
    }

    private static void write(Page page, String path, String number) {
        Locator field = page.locator("[data-setting='" + path + "']");
        field.fill(number);
        field.press("Enter");
    }

    private static String field(Page page, String path) {
        return page.locator("[data-setting='" + path + "']").inputValue();
    }

    private static void takeBack(Page page) {
        page.locator("[data-step=undo]").click();
    }

    @Test
    void aPivotIsDraggedUntilAFindingFlipsThenLetGoAndTakenBack() throws IOException {
        String before = text("heron/design.yaml");
        Page page = page("heron");
        BoundingBox grip = page.locator("[data-grip='" + HIP + "'] .mark").boundingBox();
        double x = grip.x + grip.width / 2;
        double y = grip.y + grip.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        for (int i = 1; i <= 30 && page.locator(".verdict.fails").count() == 0; i++) {
            page.mouse().move(x + 0.4 * i * millimetre(page), y - 0.1 * i * millimetre(page));
            int asked = i;
            page.waitForCondition(() -> answers(page) >= asked);
        }
        page.waitForSelector(".verdict.fails");
        assertThat(page.locator(".stale").first().textContent()).contains("while you drag");
        assertThat(text("heron/design.yaml")).as("not saved while dragging").isEqualTo(before);
        Browser.keep(page, "heron-pivot-dragged");
        page.mouse().up();
        page.waitForSelector("[data-step=undo]:not([disabled])");
        assertThat(text("heron/design.yaml")).contains(HIP + ": [");
        takeBack(page);
        page.waitForSelector(".verdict.works");
        assertThat(text("heron/design.yaml")).isEqualTo(before);
        page.close();
    }

    @Test
    void numbersAreWrittenAndAllTakenBackAfterTheServerWasAway() throws IOException {
        String before = text("heron/design.yaml");
        Page page = page("heron");
        String throwAngle = "box.lever.throw";
        String first = field(page, throwAngle);
        write(page, "box.coin-works.slot.length", "27.2");
        page.waitForCondition(() -> saved("heron/design.yaml", "slot.length: 27.2"));
        int port = server.port();
        server.stop();
        write(page, "box.coin-works.slot.width", "3.1");
        page.waitForSelector(".told.away");
        server = PageServer.start(Benches.at(demo), port);
        page.waitForSelector(".told.away:has-text('Open the address')");
        Page beside = page.context().newPage();
        beside.navigate(server.address().toString());
        beside.close();
        page.waitForCondition(() -> saved("heron/design.yaml", "slot.width: 3.1"));
        page.waitForSelector(
                ".told.away",
                new Page.WaitForSelectorOptions()
                        .setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
        page.reload();
        page.waitForSelector("[data-step=undo]:not([disabled])");
        takeBack(page);
        page.waitForCondition(() -> !saved("heron/design.yaml", "slot.width"));
        page.waitForSelector("[data-step=redo]:not([disabled])");
        takeBack(page);
        page.waitForCondition(() -> !saved("heron/design.yaml", "slot.length"));
        assertThat(text("heron/design.yaml")).isEqualTo(before);
        page.locator(".change-switch").click();
        assertThat(field(page, throwAngle)).isEqualTo(first);
        page.close();
    }

    private static boolean saved(String file, String words) {
        try {
            return text(file).contains(words);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void twoPagesOnOneDesign() throws IOException {
        String design = "spoiled/heron-hangs-up";
        Page one = page(design.replace("/", "%2F"), design);
        Page two = page(design.replace("/", "%2F"), design);
        two.evaluate("Object.defineProperty(document, 'hidden', {value: true})"); // it does not look by itself
        // Different numbers: both stay.
        write(one, "box.lever.throw", "13.5");
        one.waitForCondition(() -> saved(design + "/design.yaml", "box.lever.throw: 13.5"));
        write(two, TAIL, "24");
        two.waitForCondition(() -> saved(design + "/design.yaml", TAIL + ": 24"));
        assertThat(text(design + "/design.yaml")).contains("box.lever.throw: 13.5");
        // The same number: whoever comes later is asked.
        one.waitForCondition(() -> field(one, TAIL).equals("24"));
        write(one, TAIL, "25");
        one.waitForCondition(() -> saved(design + "/design.yaml", TAIL + ": 25"));
        write(two, TAIL, "26");
        two.waitForSelector(".choice");
        assertThat(two.locator(".choice").textContent())
                .contains("from 24 to 25")
                .contains("You want 26");
        Browser.keep(two, "changed-elsewhere");
        two.locator(".theirs").click();
        two.waitForCondition(() -> field(two, TAIL).equals("25"));
        assertThat(text(design + "/design.yaml")).contains(TAIL + ": 25");
        one.close();
        two.close();
    }

    private static Page page(String address, String design) {
        Page page = browser.open(server.address() + "#" + address, 1400, 1000);
        page.waitForSelector("jackwork-page[data-ready='" + design + "']");
        page.locator(".change-switch").click();
        return page;
    }

    @Test
    void aStopIsDraggedAboutItsPin() throws IOException {
        String before = text("lamplighter/design.yaml");
        Page page = page("lamplighter");
        Locator end = page.locator("[data-grip='figure.stops.shut.from'] .mark");
        BoundingBox grip = end.boundingBox();
        double x = grip.x + grip.width / 2;
        double y = grip.y + grip.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x + 2 * millimetre(page), y + millimetre(page), new Mouse.MoveOptions().setSteps(4));
        Browser.keep(page, "lamplighter-stop-dragged");
        page.mouse().up();
        page.waitForSelector("[data-step=undo][aria-label*='stop shut']");
        assertThat(text("lamplighter/design.yaml")).containsPattern("figure\\.stops\\.shut\\.from: -\\d+(\\.5)?\n");
        takeBack(page);
        page.waitForSelector("[data-step=undo]:not([aria-label*='stop shut'])");
        assertThat(text("lamplighter/design.yaml")).isEqualTo(before);
        page.locator("[data-grip='figure.stops.shut.from']").focus();
        page.keyboard().press("ArrowUp");
        page.waitForCondition(() -> saved("lamplighter/design.yaml", "figure.stops.shut.from: -55.5"));
        page.waitForSelector("[data-step=undo][aria-label*='stop shut']");
        takeBack(page);
        page.waitForCondition(() -> !saved("lamplighter/design.yaml", "stops.shut.from"));
        page.close();
    }

    @Test
    void aPivotMovesByKeysAWeightComesAndGoes() throws IOException {
        String figure = text("lamplighter/figure.yaml");
        Page page = page("lamplighter");
        page.locator("[data-add=weights]").click();
        page.locator("input[name=name]").fill("feather");
        page.locator("select[name=on]").selectOption("pole");
        // What is refused stands there to be mended.
        page.locator("form.adding input[name=count]").fill("3 nuts");
        page.locator("form.adding button[type=submit]").click();
        page.waitForSelector(".all-told:has-text('3 nuts')");
        assertThat(page.locator("form.adding input[name=name]").inputValue()).isEqualTo("feather");
        assertThat(page.locator("form.adding input[name=count]").inputValue()).isEqualTo("3 nuts");
        assertThat(text("lamplighter/figure.yaml")).isEqualTo(figure);
        page.locator("form.adding input[name=count]").fill("5");
        page.locator("form.adding button[type=submit]").click();
        page.waitForSelector("[data-entry='figure.weights.feather']");
        assertThat(text("lamplighter/figure.yaml")).contains("  feather: {on: pole, at: [");
        Locator grip = page.locator("[data-grip='figure.weights.feather.at']");
        grip.focus();
        page.keyboard().press("ArrowUp");
        page.keyboard().press("Shift+ArrowUp");
        page.waitForCondition(() -> saved("lamplighter/design.yaml", "figure.weights.feather.at: ["));
        page.locator("[data-entry='figure.weights.feather'] .rename").click();
        page.locator("[data-rename='figure.weights.feather']").fill("pole-weight");
        page.keyboard().press("Enter");
        page.waitForSelector(".all-told:has-text('pole-weight')");
        assertThat(page.locator("[data-rename='figure.weights.feather']").inputValue())
                .isEqualTo("pole-weight");
        page.locator("[data-rename='figure.weights.feather']").fill("plume");
        page.keyboard().press("Enter");
        page.waitForSelector("[data-entry='figure.weights.plume']");
        assertThat(text("lamplighter/figure.yaml"))
                .contains("  plume: {on: pole, at: [")
                .doesNotContain("feather");
        assertThat(text("lamplighter/design.yaml"))
                .contains("figure.weights.plume.at: [")
                .doesNotContain("feather");
        page.locator("[data-entry='figure.weights.plume'] .take-out").click();
        page.waitForCondition(() -> !saved("lamplighter/figure.yaml", "plume"));
        assertThat(text("lamplighter/figure.yaml")).isEqualTo(figure);
        assertThat(text("lamplighter/design.yaml")).doesNotContain("plume");
        page.close();
    }

    /** Moves what is held to and fro until it was answered so often. */
    private static void wobble(Page page, double x, double y, int answers) {
        for (int i = 0; answers(page) < answers; i++) {
            page.mouse().move(x + 2 * Math.sin(i / 5.0), y + 2 * Math.cos(i / 7.0));
        }
    }

    @Test
    void aDraggedPivotIsAnsweredAsItMoves() {
        Page page = page("heron");
        BoundingBox grip =
                page.locator("[data-grip='figure.pins.hip.at'] .mark").boundingBox();
        double x = grip.x + grip.width / 2;
        double y = grip.y + grip.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        wobble(page, x, y, ANSWERS);
        page.keyboard().press("Escape");
        page.mouse().up();
        @SuppressWarnings("unchecked")
        List<Number> times =
                (List<Number>) page.evaluate("performance.getEntriesByName('glimpse').map(e => e.duration)");
        assertThat(times).hasSizeGreaterThanOrEqualTo(ANSWERS);
        double[] last = times.stream()
                .skip(Math.max(0, times.size() - LAST))
                .mapToDouble(Number::doubleValue)
                .sorted()
                .toArray();
        // Told, not asserted: the aim is 30 ms, and a busy machine is no fault of the page.
        System.err.printf(
                "a dragged pivot: %d answers, median of the last %d: %.1f ms%n",
                times.size(), last.length, last[last.length / 2]);
        page.close();
    }
}
