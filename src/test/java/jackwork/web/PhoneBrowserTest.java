package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import jackwork.DemoCopy;
import jackwork.app.bench.Bench;
import jackwork.app.bench.PhoneLog;
import jackwork.bench.Kinds;
import jackwork.bench.Score;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench on a phone: real server, real Chromium, 360 pixels wide. */
@Tag("browser")
class PhoneBrowserTest {

    private static final int WIDTH = 360;
    private static final int HEIGHT = 740;

    @TempDir
    private static Path folder;

    private static Bench bench;
    private static PhoneServer server;
    private static Browser browser;

    @BeforeAll
    static void open() throws IOException {
        Path workshop = DemoCopy.at(folder.resolve("workshop"));
        bench = Bench.in(workshop);
        Instant day = Instant.parse("2026-03-01T09:30:00Z");
        bench.freeze(workshop.resolve("heron"), "first", day);
        bench.freeze(workshop.resolve("windmill"), "first", day);
        server = PhoneServer.start(
                new PhoneLog(bench, Clock.systemUTC()), InetAddress.getLoopbackAddress(), 0, Clock.systemUTC());
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        browser.close();
        server.stop();
    }

    private static Page page() {
        Page page = browser.open(server.link().toString(), WIDTH, HEIGHT);
        page.waitForSelector("#bench[data-state=try]");
        return page;
    }

    private static void press(Page page, String words) {
        page.getByText(words, new Page.GetByTextOptions().setExact(true)).click();
    }

    private static void allSent(Page page) {
        page.waitForSelector("#bench[data-waiting='0']");
    }

    private static Score score() {
        return Score.of(bench.log().counting(Kinds.TRIALS));
    }

    /** Every button is under a thumb: wide, high, within the screen, and nothing is cut off at the side. */
    @Test
    void itFitsAThumb() {
        Page page = page();
        assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(WIDTH);
        assertThat(page.evaluate("location.hash"))
                .as("the token is gone from the address")
                .isEqualTo("");
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
            Browser.keep(page, "phone-" + scheme.name().toLowerCase(java.util.Locale.ROOT));
            assertThat(contrast(page, "button.worked")).isGreaterThan(4.5);
            assertThat(contrast(page, "button.failed")).isGreaterThan(4.5);
        }
        for (Locator button : page.locator("button").all()) {
            BoundingBox box = button.boundingBox();
            assertThat(box.height).isGreaterThanOrEqualTo(48);
            assertThat(box.x).isGreaterThanOrEqualTo(0);
            assertThat(box.x + box.width).isLessThanOrEqualTo(WIDTH);
        }
        BoundingBox worked = page.locator("button.worked").boundingBox();
        assertThat(worked.y).as("low on the screen").isGreaterThan(HEIGHT / 2.0);
        assertThat(worked.y + worked.height).as("without scrolling").isLessThanOrEqualTo(HEIGHT);
        page.close();
    }

    /** By WCAG 2.2, relative luminance. */
    private static double contrast(Page page, String selector) {
        return ((Number) page.evaluate("""
                (selector) => {
                  const canvas = document.createElement("canvas").getContext("2d");
                  const light = (colour) => {
                    canvas.fillStyle = colour; canvas.fillRect(0, 0, 1, 1);
                    const [r, g, b] = [...canvas.getImageData(0, 0, 1, 1).data].map((c) => c / 255)
                      .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
                    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
                  };
                  const style = getComputedStyle(document.querySelector(selector));
                  const ground = style.backgroundColor === "rgba(0, 0, 0, 0)"
                    ? getComputedStyle(document.documentElement).backgroundColor : style.backgroundColor;
                  const [a, b] = [light(style.color), light(ground)].sort((p, q) => q - p);
                  return (a + 0.05) / (b + 0.05);
                }""", selector)).doubleValue();
    }

    @Test
    void logsWhatIsPressedAndTakesItBack() {
        Page page = page();
        Score before = score();
        press(page, "EUR-2");
        press(page, "It worked");
        allSent(page);
        press(page, "Failed");
        page.waitForSelector("#bench[data-state=cause]");
        assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(WIDTH);
        Browser.keep(page, "phone-causes");
        press(page, "the coin is not thrown into the box");
        page.waitForSelector("#bench[data-state=try]");
        allSent(page);
        press(page, "It worked");
        allSent(page);
        assertThat(score().tries()).isEqualTo(before.tries() + 3);
        assertThat(score().failures()).containsEntry("thrown", 1);
        press(page, "Take back the last");
        allSent(page);
        page.waitForCondition(() -> score().tries() == before.tries() + 2);
        assertThat(bench.log().counting(Kinds.TRIALS))
                .filteredOn(trial -> trial.revision().design().equals("heron"))
                .hasSize(2)
                .allSatisfy(trial -> assertThat(trial.coin()).isEqualTo("EUR-2"));
        page.close();
    }

    @Test
    void timesAJob() {
        Page page = page();
        press(page, "Time a job");
        press(page, "Start");
        press(page, "Done: glue and put together");
        page.waitForCondition(() -> !bench.log().counting(Kinds.TIMINGS).isEmpty());
        assertThat(bench.log().counting(Kinds.TIMINGS).get(0).operation()).isEqualTo("build");
        page.close();
    }

    /** The connection drops in the midst: nothing is lost, and an answer that went astray logs nothing twice. */
    @Test
    void worksWhenTheConnectionDrops() {
        Page page = page();
        page.locator("select").first().selectOption("windmill");
        int before = tries("windmill");
        page.context().setOffline(true);
        for (int i = 0; i < 5; i++) {
            press(page, "It worked");
        }
        page.waitForSelector("#bench[data-waiting='5']");
        assertThat(page.locator("#said").textContent())
                .isEqualTo("No connection: 5 entries wait here and will be sent.");
        Browser.keep(page, "phone-offline");
        assertThat(tries("windmill")).isEqualTo(before);
        // One taken back while it still waits never goes at all.
        press(page, "Take back the last");
        page.waitForSelector("#bench[data-waiting='4']");
        page.context().setOffline(false);
        allSent(page);
        assertThat(tries("windmill")).isEqualTo(before + 4);
        // The server logs, but its answer is lost; what is sent again is the same entry.
        page.route("**/log", route -> {
            route.fetch();
            route.abort();
        });
        press(page, "It worked");
        page.waitForSelector("#bench[data-waiting='1']");
        page.waitForCondition(() -> tries("windmill") == before + 5);
        page.unroute("**/log");
        press(page, "It worked");
        allSent(page);
        assertThat(tries("windmill")).isEqualTo(before + 6);
        page.close();
    }

    private static int tries(String design) {
        return Score.of(bench.log().counting(Kinds.TRIALS).stream()
                        .filter(trial -> trial.revision().design().equals(design))
                        .toList())
                .tries();
    }

    @Test
    void aUsedLinkSaysSo() {
        String link = server.link().toString();
        Page first = browser.open(link, WIDTH, HEIGHT);
        first.waitForSelector("#bench[data-state=try]");
        Page second = browser.open(link, WIDTH, HEIGHT);
        second.waitForSelector("#bench[data-state=locked]");
        assertThat(second.locator("#said").textContent()).contains("has been used");
        assertThat(second.content()).doesNotContain("heron");
        first.close();
        second.close();
    }
}
