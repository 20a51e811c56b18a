package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A maker who never opens a text file: a drawing or picture dropped on the page becomes a moving design. */
@Tag("browser")
class BringBrowserTest {

    /** A nodding bird in pixels, no ids, its body under transforms and drawn twice, the wing a mirrored copy. */
    private static final String BIRD = """
            <svg xmlns="http://www.w3.org/2000/svg" width="900" height="760">
              <defs><path id="w" d="M0,0 C40,-30 100,-30 150,10 C100,40 40,40 0,0 Z"/></defs>
              <g transform="translate(50 40)">
                <path d="M330,300 L370,300 L374,560 L440,560 L440,640 L270,640 L270,560 L328,560 Z" fill="#b08a4a"/>
                <g transform="translate(100 150) scale(2)">
                  <path d="M0,70 C30,40 90,40 150,60 C190,50 200,20 230,10 L280,20 L240,34 C220,80 190,110 130,112 C80,112 30,90 0,70 Z"
                    fill="#9aa7b0"/>
                  <path d="M0,70 C30,40 90,40 150,60 C190,50 200,20 230,10 L280,20 L240,34 C220,80 190,110 130,112 C80,112 30,90 0,70 Z"
                    fill="none" stroke="#222"/>
                </g>
                <use href="#w" transform="translate(420 300) scale(-1 1)" fill="#6f7f8c"/>
                <circle cx="350" cy="330" r="6"/>
                <circle cx="250" cy="318" r="6"/>
                <circle cx="330" cy="312" r="5"/>
                <circle cx="300" cy="296" r="5"/>
              </g>
            </svg>""";

    private Path hut;
    private PageServer server;
    private Browser browser;

    @BeforeEach
    void open() throws IOException {
        hut = DemoCopy.here();
        server = PageServer.start(Benches.at(hut), 0);
        browser = new Browser();
    }

    @AfterEach
    void close() {
        // Chromium notes every refusal; those that are meant are looked at where they are shown.
        assertThat(browser.complaints()).allMatch(complaint -> complaint.contains("status of 422"));
        browser.close();
        server.stop();
    }

    private Page page(int width, int height) {
        Page page = browser.open(server.address() + "#heron", width, height);
        page.waitForSelector("jackwork-page[data-ready=heron]");
        page.locator(".open-bring").click();
        page.waitForSelector(".start img");
        return page;
    }

    private static void bring(Page page, String name, String type, byte[] bytes) {
        page.locator(".drop-zone input").setInputFiles(new FilePayload(name, type, bytes));
    }

    private static void bringSvg(Page page, String svg) {
        bring(page, "bird.svg", "image/svg+xml", svg.getBytes(StandardCharsets.UTF_8));
    }

    private static void choosePart(Page page, int number) {
        page.locator("[aria-label=Parts] button").nth(number).click();
    }

    private static void name(Page page, String name) {
        Locator field = page.locator(".panel .name");
        field.fill(name);
        field.press("Tab");
    }

    private static void point(Page page, int number, String name, String role) {
        page.locator("[aria-label=Points] button").nth(number).click();
        name(page, name);
        page.locator(".panel .role").selectOption(role);
    }

    /** From the file to the last step. */
    private static void describe(Page page) {
        page.waitForSelector(".known input");
        Browser.keep(page, "bring-1-size");
        page.locator(".known input").fill("45");
        page.locator(".known input").press("Tab");
        page.waitForSelector(".next:not([disabled])");
        page.locator(".next").click();
        choosePart(page, 0);
        name(page, "Perch");
        page.locator(".glued").selectOption("box");
        choosePart(page, 1);
        name(page, "body");
        choosePart(page, 2);
        name(page, "wing");
        page.locator(".glued")
                .selectOption(new com.microsoft.playwright.options.SelectOption().setLabel("is glued to body"));
        Browser.keep(page, "bring-2-parts");
        page.locator(".next").click();
        point(page, 0, "hip", "pin");
        page.locator("fieldset label", new Page.LocatorOptions().setHasText("wing"))
                .locator("input")
                .uncheck();
        point(page, 1, "crank", "lift");
        point(page, 2, "wing-dowel-1", "none");
        point(page, 3, "wing-dowel-2", "none");
        Browser.keep(page, "bring-3-points");
    }

    @Test
    void aDrawingInPixelsWithoutIdsBecomesAMovingDesignAndIsDrawnAgain() {
        Page page = page(1280, 860);
        Browser.keep(page, "bring-0-begin");
        bringSvg(page, BIRD);
        page.locator(".is-new-design").click();
        describe(page);
        // A weight that brings it back: a point of the maker's own, set with the keyboard.
        page.locator(".set-point").click();
        page.locator(".buttons .plain", new Page.LocatorOptions().setHasText("middle"))
                .click();
        name(page, "tail");
        page.locator(".panel .role").selectOption("weight");
        page.locator(".panel .grams").fill("30");
        page.locator(".panel .grams").press("Tab");
        page.locator(".next").click();
        page.waitForSelector(".make:not([disabled])");
        page.locator(".press input").fill("100");
        Browser.keep(page, "bring-4-box");
        page.locator("input.title").fill("Perched bird");
        page.locator("input.title").press("Tab");
        page.waitForSelector(".make:not([disabled])");
        page.locator(".make").click();
        page.waitForSelector("jackwork-page[data-ready=perched-bird]");
        page.waitForSelector("[data-handle=lever]");
        assertThat(bodyTurns(page)).isGreaterThan(3);
        Browser.keep(page, "bring-5-moves");
        drawnAgain(page);
        page.close();
    }

    /** Pulls the lever all the way; how far the body's drawing turns, degrees. */
    private static double bodyTurns(Page page) {
        page.locator("[data-handle=lever]").focus();
        page.keyboard().press("End");
        page.waitForTimeout(100);
        Object angle = page.evaluate("""
                () => {
                  const m = document.querySelector("[data-part=body]").getScreenCTM();
                  return Math.abs(Math.atan2(m.b, m.a) * 180 / Math.PI);
                }""");
        return ((Number) angle).doubleValue();
    }

    private void drawnAgain(Page page) {
        Design before = DesignReader.read(hut.resolve("perched-bird"));
        double hip = before.figureDrawing().circle("hip").orElseThrow().centre().y();
        page.locator(".open-bring").click();
        bringSvg(
                page,
                BIRD.replace("height=\"760\"", "height=\"800\"")
                        .replace("L280,20 L240,34", "L290,24 L240,36")
                        .replace("cx=\"350\" cy=\"330\"", "cx=\"350\" cy=\"324\""));
        page.locator(".is-redrawn").click();
        page.waitForSelector(".changes");
        assertThat(page.locator("[data-changed=body]").textContent()).contains("reshaped");
        assertThat(page.locator("[data-changed=hip]").textContent()).contains("moved by");
        assertThat(page.locator("[data-changed=perch]").count()).isZero();
        Browser.keep(page, "bring-6-redrawn");
        page.locator(".accept").click();
        page.waitForCondition(() -> DesignReader.read(hut.resolve("perched-bird"))
                        .figureDrawing()
                        .circle("hip")
                        .orElseThrow()
                        .centre()
                        .y()
                > hip + 0.5);
        page.waitForSelector(
                "dialog.bring:not([open])",
                new Page.WaitForSelectorOptions()
                        .setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED));
        Design after = DesignReader.read(hut.resolve("perched-bird"));
        assertThat(after.figure().works().pins().keySet())
                .isEqualTo(before.figure().works().pins().keySet());
        assertThat(bodyTurns(page)).isGreaterThan(3);
        page.locator("[data-step=undo]").click();
        page.waitForCondition(() -> Math.abs(DesignReader.read(hut.resolve("perched-bird"))
                                .figureDrawing()
                                .circle("hip")
                                .orElseThrow()
                                .centre()
                                .y()
                        - hip)
                < 1e-6);
    }

    /** A blue fish, as a child would paint it. */
    private static byte[] fish() throws IOException {
        BufferedImage image = new BufferedImage(480, 240, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(60, 110, 170));
        pen.fill(new Ellipse2D.Double(20, 40, 340, 160));
        pen.fillPolygon(new int[] {330, 460, 460}, new int[] {120, 40, 200}, 3);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    @Test
    void aPictureBecomesAPartThatTurnsOnAPost() throws IOException {
        Page page = page(1280, 860);
        bring(page, "blue fish.png", "image/png", fish());
        page.waitForSelector(".known input");
        page.locator(".known input").fill("110");
        page.locator(".known input").press("Tab");
        page.waitForSelector(".next:not([disabled])");
        page.locator(".next").click();
        name(page, "fish");
        page.locator(".next").click();
        clickOn(page, 0.5, 0.5);
        name(page, "pivot");
        page.locator(".panel .role").selectOption("post");
        clickOn(page, 0.35, 0.5);
        name(page, "crank");
        page.locator(".panel .role").selectOption("lift");
        clickOn(page, 0.15, 0.5);
        name(page, "ballast");
        page.locator(".panel .role").selectOption("weight");
        page.locator(".panel .grams").fill("25");
        page.locator(".panel .grams").press("Tab");
        Browser.keep(page, "bring-fish-points");
        page.locator(".next").click();
        page.waitForSelector(".make:not([disabled])");
        Browser.keep(page, "bring-fish-box");
        page.locator(".make").click();
        page.waitForSelector("jackwork-page[data-ready=blue-fish]");
        Design design = DesignReader.read(hut.resolve("blue-fish"));
        assertThat(design.figure().works().parts()).containsOnlyKeys("fish", "stand", "crank-rod");
        assertThat(design.figureDrawing().outline("fish").orElseThrow().bounds().width())
                .isCloseTo(110, within(0.5));
        page.close();
    }

    /** Sets a point at a share of the part's breadth and height. */
    private static void clickOn(Page page, double across, double down) {
        page.locator(".set-point").click();
        BoundingBox box = page.locator(".sheet .outline").first().boundingBox();
        page.mouse().click(box.x + across * box.width, box.y + down * box.height);
        page.waitForSelector("[data-panel=point]");
    }

    @Test
    void beginsFromABareBoardAndRefusesKindly() {
        Page page = page(1280, 860);
        page.locator("[data-start='bare/nodding']").click();
        page.locator(".start .title").fill("../escape");
        page.locator(".start form button").click();
        page.waitForSelector(".problem:has-text('letters, digits')");
        page.locator(".start .title").fill("First board");
        page.locator(".start form button").click();
        page.waitForSelector("jackwork-page[data-ready=first-board]");
        page.locator(".open-bring").click();
        bringSvg(page, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10\" height=\"10\"/>");
        page.locator(".is-new-design").click();
        page.waitForSelector(".problem:has-text('no closed outline')");
        page.close();
    }

    /** A file let go anywhere over the page, and everything after it by the keyboard. */
    @Test
    void aDroppedDrawingIsDescribedByKeys() {
        Page page = browser.open(server.address() + "#heron", 1280, 860);
        page.waitForSelector("jackwork-page[data-ready=heron]");
        page.evaluate("""
                (svg) => {
                  const carried = new DataTransfer();
                  carried.items.add(new File([svg], "bird.svg", {type: "image/svg+xml"}));
                  document.querySelector("footer").dispatchEvent(
                      new DragEvent("drop", {dataTransfer: carried, bubbles: true, cancelable: true}));
                }""", BIRD);
        page.waitForSelector(".is-new-design");
        page.locator(".is-new-design").press("Enter");
        page.locator(".known input").waitFor();
        page.locator(".sheet .outline").nth(1).press("Enter");
        page.locator(".known input").fill("120");
        page.locator(".known input").press("Enter");
        page.waitForCondition(() -> page.locator(".known input").inputValue().equals("120.0"));
        page.locator(".next").press("Enter");
        page.locator(".sheet .outline").nth(1).press("Enter");
        assertThat(page.locator(".panel .quiet").textContent())
                .contains("120 ×")
                .contains("drawn 2 times");
        page.locator(".next").press("Enter");
        page.locator("[data-point=point-2]").press("Enter");
        assertThat(page.locator(".panel .name").inputValue()).isEqualTo("point-2");
        page.keyboard().press("Escape");
        assertThat(page.locator("dialog.bring[open]").count()).isZero();
        page.close();
    }

    @Test
    void fitsAPhone() {
        Page page = page(360, 740);
        Browser.keep(page, "bring-phone-begin");
        bringSvg(page, BIRD);
        page.locator(".is-new-design").click();
        page.waitForSelector(".known input");
        for (int step = 0; step < 3; step++) {
            Browser.keep(page, "bring-phone-" + step);
            double wide = ((Number) page.evaluate("document.querySelector('dialog.bring').scrollWidth")).doubleValue();
            assertThat(wide).as("step " + step).isLessThanOrEqualTo(360);
            page.locator(".next").click();
        }
        page.waitForSelector(".complaint");
        Browser.keep(page, "bring-phone-3");
        page.close();
    }
}
