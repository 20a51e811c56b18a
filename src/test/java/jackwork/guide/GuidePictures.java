package jackwork.guide;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Clip;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.ReducedMotion;
import com.microsoft.playwright.options.SelectOption;
import jackwork.app.Workbench;
import jackwork.web.Browser;
import jackwork.web.PageServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How each picture of the guide comes about, by its file's name, in the order of the guide: what a maker's hand does on
 * the page until it looks so. Drawings are the program's own files, byte for byte.
 */
final class GuidePictures implements AutoCloseable {

    private static final int WIDTH = 1180;
    private static final int HEIGHT = 860;

    private interface Maker {
        /** Writes the picture; returns what the page says in it, empty for a drawing. */
        String make(Path file) throws IOException;
    }

    private final Path hut;
    private final PageServer server;
    private final Browser browser;
    private final Page page;
    private final Map<String, Maker> makers = new LinkedHashMap<>();

    GuidePictures(Path hut) {
        this.hut = hut;
        server = PageServer.start(new Workbench(hut), 0);
        browser = new Browser();
        page = browser.open(server.address() + "#heron", WIDTH, HEIGHT);
        page.setDefaultTimeout(60_000);
        page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        page.waitForSelector("[data-handle=lever]");
        page.locator(".tour .enough").click();
        makers.put("parts.png", this::parts);
        makers.put("points.png", this::points);
        makers.put("on-its-box.png", this::onItsBox);
        makers.put("hangs.png", this::hangs);
        makers.put("settled.png", this::settled);
        makers.put("moves.png", this::moves);
        makers.put("coin.png", this::coin);
        makers.put("sheet.svg", file -> copied("out/birch-3-sheet-1.svg", file));
        makers.put("layers.png", this::layers);
        makers.put("glue-hen.svg", file -> gluing("hen", file));
        makers.put("glue-works.svg", file -> gluing("lever", file));
        makers.put("ladder.png", this::ladder);
        makers.put("swings.svg", file -> copied("swings.svg", file));
        makers.put("replay.svg", file -> copied("replay.svg", file));
        makers.put("tries.png", this::tries);
    }

    String make(String name, Path file) throws IOException {
        Maker maker = makers.get(name);
        if (maker == null) {
            throw new IllegalStateException("the guide shows pictures/" + name + ", and nothing here makes it; known: "
                    + makers.keySet());
        }
        return maker.make(file);
    }

    void nothingComplained() {
        if (!browser.complaints().stream().allMatch(said -> said.contains("WebGL"))) {
            throw new IllegalStateException("the page complained: " + browser.complaints());
        }
    }

    private String copied(String from, Path file) throws IOException {
        Files.copy(hut.resolve(from), file, StandardCopyOption.REPLACE_EXISTING);
        return "";
    }

    /** A picture of a place of the page, from its top, and what is written there. */
    private String shot(String place, int height, Path file) {
        Locator shown = page.locator(place).first();
        shown.scrollIntoViewIfNeeded();
        page.mouse().move(1, 1);
        shown.evaluate("place => window.scrollBy(0, place.getBoundingClientRect().top - 8)");
        page.evaluate("new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))");
        BoundingBox box = shown.boundingBox();
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(file)
                .setClip(new Clip(
                        box.x, Math.max(0, box.y), box.width, Math.min(height, Math.min(box.height, HEIGHT - box.y)))));
        return (String) shown.evaluate("""
                place => {
                  const fields = [...place.querySelectorAll("input, select")].filter(field => field.checkVisibility())
                      .map(field => [field.type === "checkbox" || field.type === "radio" ? field.checked
                          : field.selectedOptions?.[0]?.textContent.trim() ?? field.value,
                          field.ariaLabel ?? field.labels?.[0]?.innerText.trim().split("\\n")[0] ?? ""]);
                  return [...place.innerText.split("\\n"), ...fields.map(([value, label]) => `[${label}: ${value}]`)]
                      .map(line => line.replace(/\\s+/g, " ").trim()).filter(line => line !== "").join("\\n") + "\\n";
                }""");
    }

    private void rename(String name) {
        Locator field = page.locator(".panel .name");
        field.fill(name);
        field.press("Tab");
    }

    private void part(int number, String name) {
        page.locator("[aria-label=Parts] button").nth(number).click();
        rename(name);
    }

    private void point(int number, String name, String role) {
        page.locator("[aria-label=Points] button").nth(number).click();
        rename(name);
        page.locator(".panel .role").selectOption(role);
    }

    private String parts(Path file) throws IOException {
        page.locator(".open-bring").click();
        page.locator(".drop-zone input")
                .setInputFiles(new FilePayload(
                        "moorhen.svg", "image/svg+xml", Files.readAllBytes(GuideWalk.GUIDE.resolve("moorhen.svg"))));
        page.locator(".is-new-design").click();
        page.waitForSelector(".next:not([disabled])");
        page.locator(".next").click();
        part(0, "post");
        page.locator(".glued").selectOption("box");
        part(1, "hen");
        part(2, "wing");
        page.locator(".glued").selectOption(new SelectOption().setLabel("is glued to hen"));
        return shot("dialog.bring", HEIGHT, file);
    }

    private String points(Path file) {
        page.locator(".next").click();
        point(2, "wing-dowel-1", "pin");
        point(3, "wing-dowel-2", "pin");
        point(4, "tail", "weight");
        page.locator(".panel .grams").fill("12");
        page.locator(".panel .grams").press("Tab");
        point(0, "hip", "pin");
        point(1, "crank", "lift");
        return shot("dialog.bring", HEIGHT, file);
    }

    private String onItsBox(Path file) {
        page.locator(".next").click();
        page.waitForSelector(".make:not([disabled])");
        page.locator("input.title").fill("Moorhen");
        page.locator("input.title").press("Tab");
        page.waitForSelector(".make:not([disabled])");
        page.locator(".press input").fill("50");
        String said = shot("dialog.bring", HEIGHT, file);
        page.locator(".make").click();
        page.waitForSelector("jackwork-page[data-ready=moorhen]");
        page.waitForSelector("[data-handle=lever]");
        return said;
    }

    private void press(double stroke) {
        page.locator("[data-handle=lever]").focus();
        page.keyboard().press(stroke == 1 ? "End" : "Home");
        for (int step = 0; stroke < 1 && step < stroke * 50; step++) {
            page.keyboard().press("ArrowDown");
        }
        page.locator("[data-handle=lever]").evaluate("handle => handle.blur()");
    }

    private String hangs(Path file) {
        press(1);
        return shot("main", HEIGHT, file);
    }

    private String settled(Path file) {
        page.locator("[data-finding=comes-back] .look").click();
        page.waitForSelector("[data-finding=comes-back] .apply");
        return shot("[data-finding=comes-back]", HEIGHT, file);
    }

    private String moves(Path file) {
        page.locator("[data-finding=comes-back] .apply").click();
        page.waitForSelector(".verdict.works");
        press(0.5);
        return shot("main", HEIGHT, file);
    }

    private String coin(Path file) {
        page.locator("[data-coin='EUR-1']").click();
        page.waitForSelector(".play:has-text('Play')");
        page.locator(".stages button").nth(2).click();
        String said = shot("main", HEIGHT, file);
        page.locator(".away").click();
        return said;
    }

    private void go(String place) {
        page.evaluate("to => location.hash = to", "moorhen&" + place);
    }

    private String layers(Path file) {
        go("make");
        page.waitForSelector("section.sheets:not(.old) .sheet-drawing");
        Locator slider = page.locator(".taking-apart input");
        slider.focus();
        page.keyboard().press("End");
        page.waitForTimeout(200);
        return shot("section.stack", HEIGHT, file);
    }

    /** The picture of the step whose stack has that name, as the server gives it to the page. */
    private String gluing(String stack, Path file) throws IOException {
        String source = page.locator(".glue-step:has-text('" + stack + "') img").first().getAttribute("src");
        Files.write(file, page.request().get(server.address().resolve(source).toString()).body());
        return "";
    }

    private String ladder(Path file) {
        go("pay");
        page.waitForSelector("jackwork-pay[data-answered]");
        return shot("main", HEIGHT, file);
    }

    private String tries(Path file) {
        page.setViewportSize(420, HEIGHT);
        go("bench&tries");
        page.waitForSelector(".bench[data-state=ready][data-part=tries]");
        return shot("main", HEIGHT, file);
    }

    @Override
    public void close() {
        browser.close();
        server.stop();
    }
}
