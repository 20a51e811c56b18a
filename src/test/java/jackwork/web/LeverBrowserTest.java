package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.rest.PoseSolver;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The page as a visitor meets it: real server, real designs, real Chromium. */
@Tag("browser")
class LeverBrowserTest extends DemoOnThePage {

    private static final Point BEAK = new Point(150, 222);

    private Page page(String design) {
        Page page = browser.open(server.address() + "#" + design.replace("/", "%2F"), 1400, 1000);
        page.waitForSelector("jackwork-page[data-ready='" + design + "']");
        page.waitForSelector("[data-handle=lever]");
        return page;
    }

    /** Where the beak's tip is on the screen, px. */
    @SuppressWarnings("unchecked")
    private static Point beakOnScreen(Page page) {
        List<Number> xy = (List<Number>) page.evaluate("""
                ([x, y]) => {
                  const matrix = document.querySelector("[data-part=head]").getScreenCTM();
                  const point = new DOMPoint(x, y).matrixTransform(matrix);
                  return [point.x, point.y];
                }""", List.of(BEAK.x(), BEAK.y()));
        return new Point(xy.get(0).doubleValue(), xy.get(1).doubleValue());
    }

    private static double pixelsPerMillimetre(Page page) {
        return ((Number) page.evaluate("document.querySelector('svg.scene').getScreenCTM().a")).doubleValue();
    }

    private static double stroke(Page page) {
        return ((Number) page.evaluate("document.querySelector('jackwork-work').stroke")).doubleValue();
    }

    private static void pullDown(Page page, double pixels) {
        BoundingBox box = page.locator("[data-handle=lever] .ring").boundingBox();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x, y + pixels / 2);
        page.mouse().move(x, y + pixels);
    }

    /** The solver's own answer: how far the beak's tip has moved from rest at a stroke, mm. */
    private static Point solved(double stroke) {
        Subject subject = Subject.of(DesignReader.read(Path.of("demo/heron")));
        PoseSolver solver = new PoseSolver(subject.mechanism());
        assertThat(solver.moveTo(stroke)).isTrue();
        int head = subject.mechanism().bodyNumber("head");
        Point centre = subject.assembly().bodies().stream()
                .filter(body -> body.name().equals("head"))
                .findFirst()
                .orElseThrow()
                .centre();
        double[] pose = solver.pose();
        return BEAK.minus(centre)
                .turned(pose[3 * head + 2])
                .plus(new Point(pose[3 * head], pose[3 * head + 1]))
                .minus(BEAK);
    }

    /** Face, coat and glow lie on their parts and go along with them; the cape hangs on the coat. */
    @Test
    void picturesAndClothAreSeen() throws Exception {
        Page page = page("lamplighter");
        for (String part : List.of("glow", "head", "coat")) {
            Locator picture = page.locator("image[data-picture='" + part + "']");
            HttpResponse<byte[]> file = HttpClient.newHttpClient()
                    .send(
                            new Asking(server.address())
                                    .request(picture.getAttribute("href").substring(1))
                                    .build(),
                            HttpResponse.BodyHandlers.ofByteArray());
            assertThat(file.statusCode()).isEqualTo(200);
            byte[] own = Files.readAllBytes(
                    Path.of("demo", "lamplighter", part.equals("head") ? "face.png" : part + ".png"));
            assertThat(file.body()).isEqualTo(own);
            assertThat(picture.evaluate("e => e.closest('[clip-path]') !== null"))
                    .isEqualTo(true);
            // On the screen it covers its part, or more, which the edge cuts off.
            assertThat((boolean) picture.evaluate("""
                    e => {
                      const part = document.querySelector(`[data-part="${e.dataset.picture}"]`);
                      const [a, b] = [e.getBoundingClientRect(), part.getBoundingClientRect()];
                      return a.left <= b.left + 1 && a.right >= b.right - 1 && a.top <= b.top + 1 && a.bottom >= b.bottom - 1;
                    }""")).as(part).isTrue();
        }
        assertThat(page.locator("[data-cloth=cape]").count()).isEqualTo(1);
        Browser.keep(page, "lamplighter-pictures");
        page.close();
    }

    @Test
    void pullingTheLeverMovesTheBeakAsSolved() {
        Page page = page("heron");
        double scale = pixelsPerMillimetre(page);
        Point rest = beakOnScreen(page);
        pullDown(page, 8 * scale);
        double stroke = stroke(page);
        assertThat(stroke).isBetween(0.2, 0.9);
        Point moved = beakOnScreen(page).minus(rest).times(1 / scale);
        Point wanted = solved(stroke);
        assertThat(wanted.length()).isGreaterThan(20);
        assertThat(moved.x()).isCloseTo(wanted.x(), within(0.05));
        assertThat(-moved.y()).isCloseTo(wanted.y(), within(0.05));
        Browser.keep(page, "heron-half-pressed");
        page.mouse().up();
        for (int i = 0; i < 100 && stroke(page) > 0; i++) {
            page.waitForTimeout(50);
        }
        assertThat(stroke(page)).isZero();
        assertThat(beakOnScreen(page).distance(rest)).isLessThan(0.01);
        Browser.keep(page, "heron-at-rest");
        page.close();
    }

    @Test
    void aHeronThatHangsUpStaysWhereItIsLetGo() {
        Page page = page("spoiled/heron-hangs-up");
        pullDown(page, 22 * pixelsPerMillimetre(page));
        assertThat(stroke(page)).isGreaterThan(0.9);
        page.mouse().up();
        page.waitForSelector(".hangs");
        assertThat(stroke(page)).isGreaterThan(0.9);
        assertThat(page.locator(".verdict").textContent()).contains("fails");
        assertThat(page.locator(".finding").first().getAttribute("data-finding"))
                .isEqualTo("comes-back");
        Browser.keep(page, "heron-hangs-up");
        page.close();
    }

    @Test
    void theLeverAnswersToKeys() {
        Page page = page("heron");
        Locator handle = page.locator("[data-handle=lever]");
        handle.focus();
        page.keyboard().press("End");
        assertThat(stroke(page)).isEqualTo(1);
        assertThat(handle.getAttribute("aria-valuetext")).startsWith("stroke 100 %");
        page.keyboard().press("ArrowUp");
        assertThat(stroke(page)).isCloseTo(0.98, within(1e-9));
        page.keyboard().press("Home");
        assertThat(stroke(page)).isEqualTo(0);
        page.close();
    }

    @Test
    void turnsDarkWithTheSystemAndFillsAWideScreen() {
        Page page = browser.open(server.address().toString(), 2560, 1440);
        page.waitForSelector("[data-handle=lever]");
        Object light = page.evaluate("getComputedStyle(document.documentElement).backgroundColor");
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        assertThat(page.evaluate("getComputedStyle(document.documentElement).backgroundColor"))
                .isNotEqualTo(light);
        Browser.keep(page, "heron-wide-and-dark");
        page.close();
    }

    @Test
    void theFrontPanelCanBePutOn() {
        Page page = page("heron");
        assertThat(page.locator("[data-part=front].taken-off").count()).isEqualTo(1);
        page.locator(".front input").check();
        assertThat(page.locator("[data-part=front].taken-off").count()).isZero();
        assertThat(page.locator("[data-part=front].part").count()).isEqualTo(1);
        Browser.keep(page, "heron-front-on");
        page.close();
    }

    @Test
    void aFindingShowsItsPlace() {
        Page page = page("spoiled/heron-hangs-up");
        Locator first = page.locator(".finding").first();
        first.locator(".go").click();
        assertThat(stroke(page)).isCloseTo(0.42, within(0.01));
        assertThat(page.locator(".spot").count()).isEqualTo(1);
        page.close();
    }

    @Test
    void theRingRidesOnThePartThatAFindingSpeaksOf() {
        Page page = page("heron");
        Locator beak = page.locator("[data-finding='gesture-reached/beak']");
        beak.locator("summary").click();
        beak.locator(".go").click();
        assertThat(stroke(page)).isEqualTo(1);
        BoundingBox ring = page.locator(".spot .halo").boundingBox();
        Point middle = new Point(ring.x + ring.width / 2, ring.y + ring.height / 2);
        assertThat(middle.distance(beakOnScreen(page))).isLessThan(1);
        Browser.keep(page, "heron-finding-shown");
        page.close();
    }

    @Test
    void theLeverAnswersToAFingerOnGlass() {
        Page page = page("heron");
        BoundingBox box = page.locator("[data-handle=lever] .ring").boundingBox();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        CDPSession glass = page.context().newCDPSession(page);
        touch(glass, "touchStart", x, y);
        touch(glass, "touchMove", x, y + 10);
        touch(glass, "touchMove", x, y + 12 * pixelsPerMillimetre(page));
        // Drawn with the next picture: until then it stands where the finger was before.
        page.waitForCondition(() -> stroke(page) >= 0.4);
        assertThat(stroke(page)).isLessThan(0.95);
        touch(glass, "touchEnd", Double.NaN, Double.NaN);
        page.waitForCondition(() -> stroke(page) == 0);
        page.close();
    }

    private static void touch(CDPSession glass, String type, double x, double y) {
        JsonArray points = new JsonArray();
        if (!Double.isNaN(x)) {
            JsonObject point = new JsonObject();
            point.addProperty("x", x);
            point.addProperty("y", y);
            points.add(point);
        }
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        glass.send("Input.dispatchTouchEvent", event);
    }

    @Test
    void comesBackAtOnceWhereMotionIsNotWanted() {
        Page page = page("heron");
        page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        pullDown(page, 12 * pixelsPerMillimetre(page));
        assertThat(stroke(page)).isGreaterThan(0.4);
        page.mouse().up();
        // Two frames: one to be called in, one to be done.
        page.evaluate("new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))");
        assertThat(stroke(page)).isZero();
        page.close();
    }

    @Test
    void aDesignThatCannotBeReadIsSaidInWordsAndMended() throws IOException {
        Path demo = DemoCopy.here();
        Path file = demo.resolve("heron/design.yaml");
        String sound = Files.readString(file);
        Files.writeString(file, sound + "\nlevver: 3\n");
        PageServer other = PageServer.start(Benches.at(demo), 0);
        try (Browser quiet = new Browser()) {
            Page page = quiet.open(other.address() + "#heron", 1400, 1000);
            page.waitForSelector(".problem");
            assertThat(page.locator(".problem").textContent())
                    .contains("design.yaml")
                    .contains("levver");
            page.locator("select").selectOption("spoiled/heron-hangs-up");
            page.waitForSelector("jackwork-page[data-ready='spoiled/heron-hangs-up']");
            assertThat(page.locator(".problem").count()).isZero();
            page.goBack();
            page.waitForSelector(".problem");
            assertThat(page.locator("select").inputValue()).isEqualTo("heron");
            Browser.keep(page, "heron-cannot-be-read");
            Files.writeString(file, sound);
            // The page also finds out by itself, and takes the button away then.
            page.evaluate("document.querySelector('.again')?.click()");
            page.waitForSelector("jackwork-page[data-ready=heron]");
            page.navigate(other.address() + "#no-such-design");
            page.reload();
            page.waitForSelector(".problem");
            assertThat(page.locator(".problem").textContent()).contains("no-such-design");
            other.stop();
            page.locator("select").selectOption("heron");
            page.waitForSelector(".problem:has-text('does not answer')");
        } finally {
            other.stop();
        }
    }

    @Test
    void fitsAPhone() {
        Page page = browser.open(server.address().toString(), 360, 740);
        page.waitForSelector("[data-handle=lever]");
        double wide = ((Number) page.evaluate("document.documentElement.scrollWidth")).doubleValue();
        assertThat(wide).isLessThanOrEqualTo(360);
        Browser.keep(page, "heron-on-a-phone");
        page.close();
    }
}
