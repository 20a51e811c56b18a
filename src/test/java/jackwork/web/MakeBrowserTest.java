package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ReducedMotion;
import jackwork.app.core.Benches;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.drawing.Paper;
import jackwork.make.Pack;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** *Can I make it?* as a maker meets it: real server, real designs, real Chromium, solids drawn without a graphics card. */
@Tag("browser")
class MakeBrowserTest {

    private static final Path HERON = Path.of("demo/heron");

    private static PageServer server;
    private static Browser browser;

    @TempDir
    Path folder;

    @BeforeAll
    static void open() {
        server = PageServer.start(Benches.at(Path.of("demo")), 0);
        browser = new Browser();
    }

    /** Chromium notes that it draws solids by software, and the refusal that is meant; nothing else may be said. */
    @AfterEach
    void nothingElseComplained() {
        assertThat(browser.complaints())
                .allMatch(complaint -> complaint.contains("WebGL") || complaint.contains("status of 422"));
    }

    @AfterAll
    static void close() {
        browser.close();
        server.stop();
    }

    private static Page page(String design, int width, int height) {
        Page page = browser.open(server.address() + "#" + design, width, height);
        page.waitForSelector("jackwork-page[data-ready='" + design + "']");
        page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        return page;
    }

    private static void go(Page page, String design) {
        page.evaluate("to => location.hash = to", design + "&make");
        laid(page);
    }

    private static Page making(String design) {
        Page page = page(design, 1280, 900);
        go(page, design);
        return page;
    }

    private static void laid(Page page) {
        page.waitForSelector("section.sheets:not(.old) .sheet-drawing");
    }

    private static Map<String, String> lines(String svg) {
        Map<String, String> lines = new LinkedHashMap<>();
        var matcher = Pattern.compile("<path id=\"([^\"]+)\" d=\"([^\"]+)\"").matcher(svg);
        while (matcher.find()) {
            lines.put(matcher.group(1), matcher.group(2));
        }
        return lines;
    }

    @Test
    void theSheetsDrawnAreTheFilesOfThePack() throws IOException {
        Page page = making("heron");
        List<Path> written =
                Pack.write(DesignReader.read(HERON), folder.resolve("pack"), new Pack.Wish(1, Paper.A4), name -> {});
        List<Path> files = written.stream()
                .filter(file -> file.getFileName().toString().matches(".*-sheet-\\d+\\.svg"))
                .toList();
        assertThat(page.locator(".laid-sheet").count()).isEqualTo(files.size());
        for (Path file : files) {
            String name = file.getFileName().toString().replace(".svg", "");
            Map<String, String> cut = lines(Files.readString(file));
            assertThat(cut.size()).isGreaterThan(3);
            @SuppressWarnings("unchecked")
            Map<String, String> drawn = (Map<String, String>) page.evaluate("""
                    name => Object.fromEntries([...document.querySelectorAll(
                        `[data-sheet="${name}"] path[data-cut]`)].map(line => [line.dataset.cut, line.getAttribute("d")]))""", name);
            assertThat(drawn).isEqualTo(cut);
        }
        Browser.keep(page, "make-heron");
        page.close();
    }

    @Test
    void piecesAreNamedUnderThePointerAndByKeys() {
        Page page = making("heron");
        Locator sheet = page.locator(".laid-sheet").first();
        Locator head = page.locator("[data-piece=head]").first();
        head.scrollIntoViewIfNeeded();
        BoundingBox box = head.boundingBox();
        // Wherever the layout has turned it: some place in the box around it is its wood.
        for (int i = 1; i < 25 && page.locator(".piece-name strong").count() == 0; i++) {
            page.mouse().move(box.x + (i % 5) * 0.2 * box.width, box.y + (i / 5) * 0.2 * box.height);
            page.waitForTimeout(50);
        }
        page.waitForSelector(".piece-name strong");
        sheet.locator(".sheet-frame").focus();
        page.mouse().move(1, 1);
        page.keyboard().press("Home");
        page.waitForSelector(".lying.chosen");
        String first = sheet.locator(".piece-name").textContent().trim();
        page.keyboard().press("ArrowRight");
        page.waitForFunction("first => document.querySelector('.piece-name').textContent.trim() !== first", first);
        assertThat(sheet.locator(".sheet-frame").getAttribute("aria-activedescendant"))
                .isEqualTo(sheet.locator(".lying.chosen").getAttribute("id"));
        page.close();
    }

    @Test
    void kindsOfLinesDifferByTheirPattern() {
        Page page = making("heron");
        List<Object> dashes = new ArrayList<>();
        for (String kind : List.of("engrave", "inside-cuts", "outside-cuts")) {
            dashes.add(page.evaluate(
                    "kind => getComputedStyle(document.querySelector(`.sheet-drawing .cut-${kind} > path`)).strokeDasharray",
                    kind));
        }
        assertThat(dashes).doesNotHaveDuplicates();
        page.close();
    }

    /** Width of the lid's slots for its walls, as most of its openings of four corners have it; one is the coins'. */
    private static double slot(Page page) {
        return ((Number) page.evaluate("""
                () => { const narrow = [...document.querySelectorAll('[data-cut^="case-lid.opening"]')].flatMap(line => {
                        const n = line.getAttribute("d").match(/-?[\\d.]+/g).map(Number);
                        const side = i => Math.hypot(n[2 * i] - n[2 * i + 2], n[2 * i + 1] - n[2 * i + 3]);
                        return n.length === 8 ? [Math.min(side(0), side(1))] : [];
                    }).sort((a, b) => a - b);
                    return narrow[Math.floor(narrow.length / 2)]; }""")).doubleValue();
    }

    private static void type(Page page, String stock, String thickness) {
        Locator field = page.locator("[data-stock='" + stock + "']");
        field.fill(thickness);
        field.press("Enter");
    }

    @Test
    void aThicknessTypedMovesEverySlotAndGoesIntoThePack() throws IOException {
        Page page = making("heron");
        double before = slot(page);
        Design design = DesignReader.read(HERON);
        double fit = design.workshop().fits().pushOrGuess().value()
                - design.workshop().laser().kerf().value();
        assertThat(before).isCloseTo(2.95 + fit, within(0.001));
        type(page, "birch-3", "3.2");
        page.waitForSelector(".says:has-text('Cut for 3.2 mm')");
        laid(page);
        assertThat(slot(page)).isCloseTo(3.2 + fit, within(0.001));
        assertThat(page.locator("#in-hand-birch-3-says").textContent()).contains("My workshop says 2.95 mm");
        Browser.keep(page, "make-heron-measured");

        page.locator(".lengths").click();
        assertThat(page.locator("[data-stock=birch-3]").inputValue()).isEqualTo("0.126");
        type(page, "birch-3", "1/8");
        page.waitForSelector(".says:has-text('Cut for 0.125 in')");
        laid(page);
        assertThat(slot(page)).isCloseTo(3.175 + fit, within(0.001));
        page.locator(".lengths").click();

        Download zip = page.waitForDownload(() -> page.locator(".make-pack").click());
        assertThat(zip.suggestedFilename()).isEqualTo("heron-pack.zip");
        Map<String, byte[]> packed = Unzipped.of(Files.readAllBytes(zip.path()));
        Map<String, Double> measured = Map.of("birch-3", 3.175);
        List<Path> written = Pack.write(
                design.withMeasured(measured), folder.resolve("pack"), new Pack.Wish(1, Paper.A4), name -> {});
        assertThat(packed).hasSize(written.size());
        for (Path file : written) {
            assertThat(packed.get("heron/" + file.getFileName()))
                    .as(file.toString())
                    .isEqualTo(Files.readAllBytes(file));
        }
        assertThat(page.locator(".packing a.packed").getAttribute("href")).startsWith("/api/packs/");
        Browser.keep(page, "make-heron-packed");
        type(page, "birch-3", "14");
        page.waitForSelector(".making-head .problem:has-text('use a thinner sheet')");
        assertThat(page.locator(".making-head .verdict").textContent()).contains("cannot be made");
        assertThat(page.locator(".make-pack").isDisabled()).isTrue();
        page.reload(); // what was measured is of this sitting alone
        laid(page);
        assertThat(slot(page)).isCloseTo(before, within(1e-9));
        page.close();
    }

    @Test
    void whatIsUnderWayIsStoppedAndTheBestSoFarTaken() {
        Page page = making("lamplighter");
        page.locator(".how-long").selectOption("300");
        page.locator(".look-tighter").click();
        page.locator(".tighter .stop").click();
        page.waitForSelector(".look-tighter");
        assertThat(page.locator(".tighter [role=status]").textContent()).contains("laid out in");

        page.locator(".quantity").fill("8");
        page.waitForSelector(".tighter .stop");
        page.locator(".tighter .stop").click();
        page.waitForSelector(".make-pack:has-text('8 pieces')");
        laid(page);
        assertThat(page.locator(".laid-sheet").count()).isGreaterThan(5);
        page.locator(".make-pack").click();
        page.locator(".packing .stop").click();
        page.waitForSelector(".packing :text('nothing was kept')");
        assertThat(page.locator(".packing a.packed").count()).isZero();
        page.close();
    }

    private static BoundingBox front(Page page, int layer) {
        return page.locator("[data-layer='" + layer + "'] .part").first().boundingBox();
    }

    @Test
    void theLayersComeApartUnderTheSlider() {
        Page page = making("heron");
        Locator slider = page.locator(".taking-apart input");
        slider.scrollIntoViewIfNeeded();
        BoundingBox back = front(page, 0);
        BoundingBox near = front(page, 10);
        double together = (back.x - near.x) / near.width;
        slider.focus();
        page.keyboard().press("End");
        page.waitForCondition(() -> (front(page, 0).x - front(page, 10).x) / front(page, 10).width > together + 0.5);
        assertThat(page.locator(".stack-drawing [data-rod]").count()).isGreaterThan(20);
        Browser.keep(page, "make-heron-layers");
        page.keyboard().press("Home");
        page.waitForCondition(() ->
                Math.abs((front(page, 0).x - front(page, 10).x) / front(page, 10).width - together) < 0.01);
        page.locator("[data-show-layer='5']").click();
        page.waitForSelector("[data-layer='10'].faded");
        assertThat(page.locator("[data-layer='5'].faded").count()).isZero();
        page.close();
    }

    /** Dots of a solid's picture that are not bare paper, and its picture as text. */
    private static int drawn(Page page) {
        return ((Number) page.evaluate("""
                () => { const c = document.querySelector("canvas[data-solid]");
                    const copy = new OffscreenCanvas(c.width, c.height).getContext("2d", {willReadFrequently: true});
                    copy.drawImage(c, 0, 0);
                    const d = copy.getImageData(0, 0, c.width, c.height).data;
                    let n = 0; for (let i = 3; i < d.length; i += 4) n += d[i] > 128 ? 1 : 0; return n; }""")).intValue();
    }

    private static String picture(Page page) {
        return (String) page.evaluate("document.querySelector('canvas[data-solid]').toDataURL()");
    }

    @Test
    void aPrintedPartTurnsByKeysAndByHandAndGivesItsContextBack() {
        Page page = page("heron", 1280, 900);
        page.evaluate("""
                () => { const get = HTMLCanvasElement.prototype.getContext; window.contexts = [];
                    HTMLCanvasElement.prototype.getContext = function (kind, ...more) {
                        const context = get.call(this, kind, ...more);
                        if (kind === "webgl2") window.contexts.push(context);
                        return context; }; }""");
        assertThat(page.evaluate("performance.getEntriesByType('resource').some(r => r.name.endsWith('solids.js'))"))
                .as("fetched only where it is looked at")
                .isEqualTo(false);
        go(page, "heron");
        Locator canvas = page.locator("canvas[data-solid]").first();
        canvas.scrollIntoViewIfNeeded();
        page.waitForCondition(() -> drawn(page) > 1000);
        String before = picture(page);
        page.waitForTimeout(300);
        assertThat(picture(page)).as("stands still where motion is not wanted").isEqualTo(before);
        canvas.focus();
        page.keyboard().press("ArrowRight");
        page.waitForCondition(() -> !picture(page).equals(before));
        assertThat(drawn(page)).isGreaterThan(1000);
        String turned = picture(page);
        BoundingBox box = canvas.boundingBox();
        page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
        page.mouse().down();
        page.mouse().move(box.x + box.width / 2 + 60, box.y + box.height / 2 + 20);
        page.mouse().up();
        page.waitForCondition(() -> !picture(page).equals(turned));
        Browser.keep(page, "make-heron-printed");
        assertThat(page.evaluate("window.contexts.length")).isEqualTo(1);
        page.evaluate("location.hash = 'heron'");
        page.waitForSelector("[data-handle=lever]");
        page.waitForCondition(() -> (Boolean) page.evaluate("window.contexts.every(c => c.isContextLost())"));
        page.close();
    }

    @Test
    void printedPartsAreToldInWordsWhereNoSolidCanBeDrawn() {
        Page page = page("heron", 1280, 900);
        page.evaluate("""
                () => { const get = HTMLCanvasElement.prototype.getContext;
                    HTMLCanvasElement.prototype.getContext = function (kind, ...more) {
                        return kind.startsWith("webgl") ? null : get.call(this, kind, ...more); }; }""");
        go(page, "heron");
        page.waitForSelector(".printed :text('told in words')");
        assertThat(page.locator("canvas").count()).isZero();
        assertThat(page.locator(".printed-kind").first().textContent())
                .contains(" g each")
                .contains("mm");
        page.close();
    }

    @Test
    void pagesAndStepsHaveTheirPictures() {
        Page page = making("heron");
        page.waitForSelector(".paper-page img");
        for (String pictures : List.of(".paper-page img", ".glue-step img")) {
            Locator all = page.locator(pictures);
            assertThat(all.count()).isGreaterThan(3);
            for (int i = 0; i < Math.min(4, all.count()); i++) {
                Locator picture = all.nth(i);
                picture.scrollIntoViewIfNeeded();
                page.waitForCondition(
                        () -> (Boolean) picture.evaluate("image => image.complete && image.naturalWidth > 10"));
                assertThat(picture.getAttribute("alt")).isNotBlank();
            }
        }
        assertThat(page.locator(".rods tbody tr").count()).isGreaterThan(5);
        assertThat(page.locator(".needs tbody tr").count()).isGreaterThan(5);
        assertThat(page.locator(".tests dt").count()).isEqualTo(4);
        page.close();
    }

    @Test
    void fitsAPhoneAndKeepsNobodyOut() throws IOException {
        for (int width : List.of(360, 1280)) {
            Page page = page("lamplighter", width, 900);
            go(page, "lamplighter");
            page.waitForSelector(".paper-page img");
            page.waitForSelector("canvas[data-solid]");
            assertThat(Browser.seriousFaults(page)).as(width + " wide").isEmpty();
            Browser.keep(page, "make-" + width);
            page.close();
        }
    }
}
