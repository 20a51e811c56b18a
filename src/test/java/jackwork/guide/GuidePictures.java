package jackwork.guide;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.ReducedMotion;
import com.microsoft.playwright.options.SelectOption;
import jackwork.app.core.Workbench;
import jackwork.web.Browser;
import jackwork.web.PageServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
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
    private final Shots shots;
    private final Map<String, Maker> makers = new LinkedHashMap<>();

    GuidePictures(Path hut) {
        this.hut = hut;
        server = PageServer.start(new Workbench(hut), 0);
        browser = new Browser();
        page = browser.open(server.address() + "#heron", WIDTH, HEIGHT);
        shots = new Shots(page);
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
        makers.put("sheet.svg", this::sheet);
        makers.put("layers.png", this::layers);
        makers.put("glue-hen.svg", file -> gluing("Glue up hen", file));
        makers.put("put-on-hen.svg", file -> gluing("Put on hen", file));
        makers.put("ladder.png", this::ladder);
        makers.put("swings.svg", file -> copied("swings.svg", file));
        makers.put("replay.svg", file -> copied("replay.svg", file));
        makers.put("tries.png", this::tries);
    }

    /** Makes the picture of that name; returns what the page says in it, empty for a drawing. */
    String make(Path file) throws IOException {
        String name = file.getFileName().toString();
        Maker maker = makers.get(name);
        if (maker == null) {
            throw new IllegalStateException(
                    "the guide shows pictures/" + name + ", and nothing here makes it; known: " + makers.keySet());
        }
        return maker.make(file);
    }

    /** Chromium may note that it draws solids by software; nothing else may be said. */
    void requireQuiet() {
        List<String> complaints = browser.complaints();
        if (!complaints.stream().allMatch(said -> said.contains("WebGL"))) {
            throw new IllegalStateException("the page complained: " + complaints);
        }
    }

    private String copied(String from, Path file) throws IOException {
        Files.copy(hut.resolve(from), file, StandardCopyOption.REPLACE_EXISTING);
        return "";
    }

    /** The pack's own file, on paper and with lines that are seen at a fifth of their size. */
    private String sheet(Path file) throws IOException {
        String svg = Files.readString(hut.resolve("out/birch-3-sheet-1.svg"));
        Files.writeString(
                file,
                svg.replaceAll("stroke-width=\"[0-9.]+\"", "stroke-width=\"0.7\"")
                        .replace("</title>", "</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#fbfaf6\"/>"));
        return "";
    }

    private void rename(String name) {
        Locator field = page.locator(".panel .name");
        field.fill(name);
        field.press("Tab");
    }

    private void describe(int number, String name) {
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
        describe(0, "post");
        page.locator(".glued").selectOption("box");
        describe(1, "hen");
        describe(2, "wing");
        page.locator(".glued").selectOption(new SelectOption().setLabel("is glued to hen"));
        return shots.part("dialog.bring", file);
    }

    private String points(Path file) {
        page.locator(".next").click();
        point(2, "wing-dowel-1", "pin");
        point(3, "wing-dowel-2", "pin");
        point(4, "tail", "weight");
        page.locator(".panel .grams").fill("3");
        page.locator(".panel .grams").press("Tab");
        point(0, "hip", "pin");
        point(1, "crank", "lift");
        return shots.part("dialog.bring", file);
    }

    private String onItsBox(Path file) {
        page.locator(".next").click();
        page.waitForSelector(".make:not([disabled])");
        page.locator("input.title").fill("Moorhen");
        page.locator("input.title").press("Tab");
        page.waitForSelector(".make:not([disabled])");
        page.locator(".press input").fill("50");
        String said = shots.part("dialog.bring", file);
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
        return shots.place(file);
    }

    private String settled(Path file) {
        page.locator("[data-finding=comes-back] .look").click();
        page.waitForSelector("[data-finding=comes-back] .apply");
        return shots.part("[data-finding=comes-back]", file);
    }

    private String moves(Path file) {
        page.locator(".change-switch").click();
        Locator mass = page.locator("[data-setting='figure.weights.tail.mass']");
        page.waitForSelector("jackwork-change details");
        page.evaluate("document.querySelectorAll('jackwork-change details').forEach(fold => fold.open = true)");
        mass.fill("8");
        mass.press("Tab");
        page.waitForSelector(".verdict.works");
        page.locator(".change-switch").click();
        press(0.5);
        return shots.place(file);
    }

    private String coin(Path file) {
        page.locator("[data-coin='EUR-1']").click();
        page.locator(".stages button").nth(3).click();
        String said = shots.place(file);
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
        return shots.part("section.stack", file);
    }

    /** The picture of a step, as the server gives it to the page. */
    private String gluing(String step, Path file) throws IOException {
        String source =
                page.locator(".glue-step:has-text('" + step + "') img").first().getAttribute("src");
        Files.write(
                file,
                page.request().get(server.address().resolve(source).toString()).body());
        return "";
    }

    private String ladder(Path file) {
        go("pay");
        page.waitForSelector("jackwork-pay[data-answered]");
        return shots.place(file);
    }

    private String tries(Path file) {
        page.setViewportSize(420, HEIGHT);
        go("bench&tries");
        page.waitForSelector(".bench[data-state=ready][data-part=tries]");
        return shots.place(file);
    }

    @Override
    public void close() {
        browser.close();
        server.stop();
    }
}
