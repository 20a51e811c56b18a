package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import jackwork.OldWorkshop;
import jackwork.app.core.Workbench;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workshop of release 0.1 opened on the page: what the step would do, the step, and the way back. */
@Tag("browser")
class RenewalBrowserTest {

    private static Browser browser;

    @TempDir
    private Path folder;

    @BeforeAll
    static void open() {
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @Test
    void lookedAtMadeAndTakenBack() throws IOException {
        Path hut = OldWorkshop.at(folder.resolve("hut"));
        Map<String, String> before = OldWorkshop.bytes(hut);
        PageServer server = PageServer.start(new Workbench(hut), 0);
        Page page = browser.open(server.address().toString(), 1280, 900);
        page.waitForSelector(".earlier-format[data-files='18']");
        String told = page.locator(".earlier-format").textContent();
        assertThat(told)
                .contains("18 files of this workshop are of an earlier format", "bucket.clearance 0.20 is gone")
                .contains("stops the lever fully pressed (throw 14)");
        assertThat(page.locator("pre.problem").count()).isZero();
        assertThat(Browser.seriousFaults(page)).isEmpty();
        Browser.keep(page, "earlier-format");
        assertThat(OldWorkshop.bytes(hut)).isEqualTo(before);

        page.locator("button.renew").click();
        page.waitForSelector(".earlier-format[data-done]");
        page.waitForSelector("[data-ready]");
        assertThat(page.locator(".earlier-format").textContent())
                .contains("18 files changed to today's format", "bucket.clearance 0.20 is gone");
        assertThat(Browser.seriousFaults(page)).isEmpty();
        assertThat(Files.readString(hut.resolve("heron/design.yaml"))).startsWith("format: 2\n");
        page.locator(".earlier-format[data-done] button:has-text('Close')").click();
        page.waitForCondition(() -> page.locator(".earlier-format").count() == 0);

        // Found again in My workshop, also by whoever opens the page anew.
        page.locator("a.aside:has-text('My workshop')").click();
        page.waitForSelector("main.workshop[data-ready]");
        page.locator("[data-last-step] > summary").click();
        assertThat(page.locator("[data-last-step]").textContent()).contains("bucket.clearance 0.20 is gone");
        // What was changed since keeps it from being taken back, and is named.
        Path design = hut.resolve("heron/design.yaml");
        String text = Files.readString(design);
        Files.writeString(design, text + "# mine\n");
        page.locator("[data-last-step] button.renew-back").click();
        page.waitForSelector(".told .as-told:has-text('heron/design.yaml: was changed since the step')");
        Files.writeString(design, text);
        page.waitForSelector("[data-last-step] > summary");
        if (page.locator("[data-last-step][open]").count() == 0) {
            page.locator("[data-last-step] > summary").click();
        }
        page.locator("[data-last-step] button.renew-back").click();
        page.waitForSelector(".earlier-format[data-files='18']");
        assertThat(OldWorkshop.bytes(hut)).isEqualTo(before);
        page.close();
        server.stop();
        // Refused on purpose: a workshop that cannot be opened yet, a step that cannot be taken back.
        assertThat(browser.complaints()).allMatch(complaint -> complaint.contains("status of 422"));
    }
}
