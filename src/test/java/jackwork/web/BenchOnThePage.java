package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import jackwork.DemoCopy;
import jackwork.app.bench.Bench;
import jackwork.app.core.Benches;
import jackwork.bench.Kinds;
import jackwork.bench.Score;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;

/** The page Bench of a workshop of its own, on the real server in real Chromium. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class BenchOnThePage {

    static final Instant DAY = Instant.parse("2026-03-01T09:30:00Z");

    private Browser browser;

    Path hut;
    Bench bench;
    PageServer server;

    @BeforeAll
    void open() {
        browser = new Browser();
    }

    @AfterAll
    void close() {
        browser.close();
    }

    @BeforeEach
    void start() throws IOException {
        hut = DemoCopy.here("heron");
        bench = Bench.in(hut);
        server = PageServer.start(Benches.at(hut), 0, () -> List.of(InetAddress.getLoopbackAddress()));
    }

    @AfterEach
    void stop() {
        browser.closePages();
        server.stop();
    }

    Browser browser() {
        return browser;
    }

    Page page(String part, int width) {
        Page page = browser.open(server.address() + "#heron&bench&" + part, width, width < 500 ? 740 : 900);
        ready(page, part);
        return page;
    }

    static void ready(Page page, String part) {
        page.waitForSelector(".bench[data-state=ready][data-part=" + part + "]");
    }

    static void go(Page page, String part) {
        page.locator(".parts a[href$='&" + part + "']").click();
        ready(page, part);
    }

    static void changed(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    Score score() {
        return Score.of(bench.log().counting(Kinds.TRIALS));
    }

    void assertNoComplaint() {
        assertThat(browser.complaints()).isEmpty();
    }

    static Page.LocatorOptions text(String words) {
        return new Page.LocatorOptions().setHasText(words);
    }

    static void happened(Page page, String what) {
        page.locator("[data-serial=MH-001] .log-piece[aria-expanded=false]").click();
        page.locator(".happening").selectOption(what);
    }
}
