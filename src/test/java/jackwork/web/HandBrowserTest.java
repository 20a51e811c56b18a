package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is in the hand stays under it, and what was begun is not lost. */
@Tag("browser")
class HandBrowserTest {

    private static final String KITE = """
            <svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">
              <path id="kite" d="M50,10 L80,40 L50,90 L20,40 Z"/>
              <circle id="pivot" cx="50" cy="40" r="1.5"/>
            </svg>""";

    private static final String HIP = "figure.pins.hip.at";
    private static final String TOP = "document.querySelector('svg.scene').getBoundingClientRect().top";

    /** One square, as a drawing program for machines writes it. */
    private static final String DXF = """
              0
            SECTION
              2
            ENTITIES
              0
            LINE
              8
            cut
             10
            0.0
             20
            0.0
             11
            40.0
             21
            0.0
              0
            ENDSEC
              0
            EOF
            """;

    private Path hut;
    private PageServer server;
    private Browser browser;

    @BeforeEach
    void open() throws IOException {
        hut = DemoCopy.here("heron");
        server = PageServer.start(Benches.at(hut), 0);
        browser = new Browser();
    }

    @AfterEach
    void close() {
        browser.close();
        server.stop();
    }

    private Page page() {
        Page page = browser.open(server.address() + "#heron", 1280, 860);
        page.waitForSelector("jackwork-page[data-ready=heron]");
        return page;
    }

    private Page bringing(String name, String text) {
        Page page = page();
        page.locator(".open-bring").click();
        page.waitForSelector(".start img");
        page.locator(".drop-zone input")
                .setInputFiles(new FilePayload(name, "", text.getBytes(StandardCharsets.UTF_8)));
        return page;
    }

    private static Page atItsName(Page page) {
        page.locator(".is-new-design").click();
        page.waitForSelector(".next:not([disabled])");
        page.locator(".next").click();
        Locator field = page.locator(".panel .name");
        field.fill("paper-kite");
        field.press("Tab");
        return page;
    }

    private static Point shift(Page page) {
        List<?> at = (List<?>)
                page.evaluate(
                        "document.querySelector('g.on-box').getAttribute('transform').match(/-?[0-9.]+(e-?\\d+)?/g).map(Number)");
        return new Point(((Number) at.get(0)).doubleValue(), ((Number) at.get(1)).doubleValue());
    }

    private static double millimetre(Page page, String drawing) {
        return ((Number) page.evaluate("document.querySelector('" + drawing + "').getScreenCTM().a")).doubleValue();
    }

    @Test
    void aFigureDraggedOnItsBoxStaysUnderTheHand() {
        Page page = atItsName(bringing("kite.svg", KITE));
        page.locator(".steps button").nth(3).click();
        page.waitForSelector("g.on-box");
        page.waitForCondition(() -> page.locator(".waiting").count() == 0);
        Point before = shift(page);
        double scale = millimetre(page, "svg.stand");
        BoundingBox kite = page.locator("g.on-box path").first().boundingBox();
        double x = kite.x + kite.width / 2;
        double y = kite.y + kite.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        double far = 45 * scale;
        // Slowly enough that whatever is tried meanwhile is answered.
        for (int i = 1; i <= 15; i++) {
            page.mouse().move(x + far * i / 15, y - far / 3 * i / 15);
            page.waitForTimeout(40);
        }
        page.waitForTimeout(600);
        Point held = shift(page).minus(before);
        Browser.keep(page, "hand-1-figure-on-its-box");
        page.mouse().up();
        assertThat(held.x()).isCloseTo(45, within(1.0));
        assertThat(held.y()).isCloseTo(15, within(1.0));
        page.waitForTimeout(800);
        Point laid = shift(page).minus(before);
        assertThat(laid.x()).isCloseTo(45, within(1.0));
        assertThat(laid.y()).isCloseTo(15, within(1.0));
    }

    /** The design is changed elsewhere while a pivot is in the hand: told without shifting the drawing. */
    @Test
    void whatIsToldWhileDraggingShiftsNothing() {
        Page page = page();
        page.locator(".change-switch").click();
        page.waitForSelector("jackwork-change");
        Locator grip = page.locator("[data-grip='" + HIP + "']");
        Point before = place(page);
        double scale = millimetre(page, "svg.scene");
        BoundingBox at = grip.locator(".mark").boundingBox();
        double x = at.x + at.width / 2;
        double y = at.y + at.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x + scale, y, new Mouse.MoveOptions().setSteps(4));
        double top = ((Number) page.evaluate(TOP)).doubleValue();
        page.evaluate("""
                () => {
                  const { desk } = document.querySelector("jackwork-page");
                  desk.note = "Two lines that\\nare told in the midst of it.\\nAnd a third.";
                  desk.changed();
                }""");
        page.waitForSelector(".told");
        Browser.keep(page, "hand-2-told-while-dragging");
        assertThat(((Number) page.evaluate(TOP)).doubleValue()).isCloseTo(top, within(0.5));
        page.mouse().move(x + 2 * scale, y, new Mouse.MoveOptions().setSteps(4));
        page.mouse().up();
        page.waitForSelector("[data-step=undo]:not([disabled])");
        Point moved = place(page).minus(before);
        assertThat(moved.x()).isCloseTo(2, within(0.2));
        assertThat(moved.y()).isCloseTo(0, within(0.2));
    }

    /** Where the hip is drawn, mm. */
    private static Point place(Page page) {
        List<?> at = (List<?>) page.evaluate("document.querySelector(\"[data-grip='" + HIP
                + "']\").getAttribute('transform').match(/-?[0-9.]+/g).map(Number)");
        return new Point(((Number) at.get(0)).doubleValue(), ((Number) at.get(1)).doubleValue());
    }

    @Test
    void escapeKeepsWhatWasBegun() {
        Page page = atItsName(bringing("kite.svg", KITE));
        page.keyboard().press("Escape");
        assertThat(page.locator("dialog.bring[open]").count()).isZero();
        Locator again = page.locator(".open-bring");
        assertThat(again.textContent()).contains("Go on with kite.svg");
        Browser.keep(page, "hand-3-kept");
        again.click();
        assertThat(page.locator(".panel .name").inputValue()).isEqualTo("paper-kite");
        // Another file is not taken instead without a question.
        page.evaluate("""
                (svg) => {
                  const carried = new DataTransfer();
                  carried.items.add(new File([svg], "other.svg", {type: "image/svg+xml"}));
                  window.dispatchEvent(new DragEvent("drop", {dataTransfer: carried, bubbles: true, cancelable: true}));
                }""", KITE);
        page.waitForSelector(".go-on");
        Browser.keep(page, "hand-4-question");
        page.locator(".go-on").click();
        assertThat(page.locator(".panel .name").inputValue()).isEqualTo("paper-kite");
        page.locator(".anew").click();
        page.waitForSelector(".start img");
        page.keyboard().press("Escape");
        assertThat(page.locator(".open-bring").textContent()).contains("New design or drawing");
    }

    @Test
    void aDxfIsCalledOne() {
        Page page = bringing("square.dxf", DXF);
        Locator said = page.locator(".problem");
        said.waitFor();
        Browser.keep(page, "hand-5-dxf");
        assertThat(said.textContent())
                .contains("square.dxf is a DXF drawing; that is not read yet", "save it as plain SVG")
                .doesNotContain("XML");
    }

    @Test
    void whatIsNotComputedIsNotClaimed() {
        Page page = browser.open(server.address() + "#heron&make", 1280, 860);
        page.waitForSelector("[data-finding=jam-reached]");
        Locator finding = page.locator("article[data-finding=jam-reached]");
        assertThat(finding.getAttribute("class")).contains("open").doesNotContain("pass");
        assertThat(finding.textContent()).contains("screws hold the works", "is not computed yet");
        assertThat(page.locator(".making .verdict").textContent()).isEqualTo("Nothing was found against making it.");
        assertThat(page.locator(".not-computed").textContent()).contains("put together");
        Browser.keep(page, "hand-6-not-computed");
    }
}
