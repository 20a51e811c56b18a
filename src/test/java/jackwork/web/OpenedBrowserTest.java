package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import jackwork.app.core.Workbench;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page opened with its key and without, and a design that was broken by hand, in real Chromium. */
@Tag("browser")
class OpenedBrowserTest {

    private static Browser browser;

    @TempDir
    Path folder;

    private Path hut;
    private PageServer server;

    @BeforeAll
    static void open() {
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @BeforeEach
    void start() throws IOException {
        hut = DemoCopy.here("heron");
        server = PageServer.start(Benches.at(hut), 0, List::of);
    }

    @AfterEach
    void stop() {
        browser.closePages();
        server.stop();
    }

    private Page page(String address) {
        return browser.open(address, 1280, 900);
    }

    @Test
    void theKeyLeavesTheAddressAndNoScriptReadsThePass() {
        Page page = page(server.address() + "#heron");
        page.waitForSelector("jackwork-page[data-ready=heron]");
        assertThat(page.url()).isEqualTo(server.home() + "#heron");
        assertThat(page.evaluate("document.cookie")).isEqualTo("");
        page.reload();
        page.waitForSelector("jackwork-page[data-ready=heron]");
        assertThat(browser.complaints()).isEmpty();
    }

    /** The same design asked for anew while it is on its way: what was given up for that is no fault to tell. */
    @Test
    void anotherPlaceChosenWhileADesignLoadsTellsNoFault() {
        server.stop();
        // Nothing is known yet, so that it takes a while.
        server = PageServer.start(new Workbench(hut), 0, List::of);
        Page page = page(server.address() + "#heron");
        page.waitForSelector("jackwork-page");
        page.evaluate("""
                window.told = [];
                new MutationObserver(() => {
                  const problem = document.querySelector(".problem");
                  if (problem) window.told.push(problem.textContent);
                }).observe(document.body, { childList: true, subtree: true, characterData: true });
                for (const room of ["make", "pay", "make"]) location.hash = `#heron&${room}`;
                """);
        page.waitForSelector("jackwork-page[data-ready=heron]");
        assertThat(page.evaluate("window.told.join()")).isEqualTo("");
    }

    @Test
    void whoeverHasNoKeyIsToldWhatToDoAndThenThePageGoesOn() {
        Page page = page(server.home() + "#heron");
        page.waitForSelector(".problem:has-text('Open the address that')");
        Page beside = page.context().newPage();
        beside.navigate(server.address().toString());
        page.waitForSelector("jackwork-page[data-ready=heron]");
        assertThat(page.locator(".problem").count()).isZero();
    }

    /** Like the file that the browser is started with: a page of this machine's own that leads on. */
    @Test
    void aFileThatLeadsToTheAddressOpensThePage() throws IOException {
        Path file = folder.resolve("open.html");
        Files.writeString(
                file, "<meta http-equiv=\"refresh\" content=\"0; url=" + server.address() + "\"><title>-</title>");
        Page page = page(file.toUri().toString());
        page.waitForSelector("jackwork-page[data-ready=heron]");
    }

    @Test
    void aDesignBrokenByHandIsShownAsItWasAndTakenBack() throws IOException {
        Path figure = hut.resolve("heron/figure.yaml");
        String before = Files.readString(figure);
        Page page = page(server.address() + "#heron");
        page.waitForSelector("jackwork-page[data-ready=heron]");
        Files.writeString(figure, before.replace("weights:", "weihgts:"));
        page.waitForSelector(".problem:has-text('weihgts')");
        page.waitForSelector("[data-last=heron] svg path");
        assertThat(page.locator(".take-back").textContent()).contains("a change made outside");
        Browser.keep(page, "broken-by-hand");
        page.locator(".take-back").click();
        page.waitForSelector("jackwork-page[data-ready=heron]");
        assertThat(page.locator(".problem").count()).isZero();
        assertThat(Files.readString(figure)).isEqualTo(before);
    }

    @Test
    void aDesignMendedByHandIsShownByItself() throws IOException {
        Path figure = hut.resolve("heron/figure.yaml");
        String before = Files.readString(figure);
        Page page = page(server.address() + "#heron");
        page.waitForSelector("jackwork-page[data-ready=heron]");
        Files.writeString(figure, before.replace("weights:", "weihgts:"));
        page.waitForSelector(".take-back");
        Files.writeString(figure, before);
        page.waitForSelector("jackwork-page[data-ready=heron]");
    }
}
