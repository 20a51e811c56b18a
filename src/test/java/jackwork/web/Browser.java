package jackwork.web;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The system's own Chromium, driven for tests; keeps what the console and the network complained of. */
public final class Browser implements AutoCloseable {

    /** The one without windows does the same in two thirds of the time. */
    private static final List<Path> PLACES = List.of(
            Path.of("/usr/bin/chromium-headless-shell"),
            Path.of("/usr/bin/chromium"),
            Path.of("/usr/bin/chromium-browser"));

    /** Windows narrower than this are a phone's, px. */
    private static final int PHONE = 500;

    /** Whatever else the machine does meanwhile, ms. */
    private static final int PATIENCE = 90_000;

    /** One for all tests of a thread, since whoever drives it has to stay on one: to start one takes as long as most tests do. */
    private static final ThreadLocal<com.microsoft.playwright.Browser> RUNNING = new ThreadLocal<>();

    private final com.microsoft.playwright.Browser browser;
    private final List<String> complaints = new ArrayList<>();

    public Browser() {
        browser = running();
    }

    private static com.microsoft.playwright.Browser running() {
        com.microsoft.playwright.Browser now = RUNNING.get();
        if (now == null || !now.isConnected()) {
            now = start();
            RUNNING.set(now);
        }
        return now;
    }

    private static com.microsoft.playwright.Browser start() {
        Path chromium = PLACES.stream()
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no Chromium at " + PLACES
                        + "; install it (Debian: apt install chromium-headless-shell) or run ./check as root"));
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
        return playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium)
                        .setHeadless(true)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    public Page open(String address, int width, int height) {
        // A context of its own, in which a second page can be opened beside the first.
        Page page = browser.newContext(
                        new com.microsoft.playwright.Browser.NewContextOptions().setViewportSize(width, height))
                .newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") || message.type().equals("warning")) {
                complaints.add(message.type() + ": " + message.text());
            }
        });
        page.onPageError(complaints::add);
        page.onRequestFailed(request -> {
            // What the page gave up by itself, since it asked anew or was left, is no fault.
            if (!"net::ERR_ABORTED".equals(request.failure())) {
                complaints.add("failed: " + request.url() + ": " + request.failure());
            }
        });
        page.setDefaultTimeout(PATIENCE);
        page.navigate(address);
        return page;
    }

    /** Errors and warnings of every page since this was asked last. */
    public List<String> complaints() {
        List<String> said = List.copyOf(complaints);
        complaints.clear();
        return said;
    }

    /** For the next test: no page is left open, and nothing was complained of. */
    void closePages() {
        List.copyOf(browser.contexts()).forEach(BrowserContext::close);
        complaints.clear();
    }

    static void keep(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions().setPath(Path.of("target", "screenshots", name + ".png")));
    }

    /**
     * What the accessibility checker calls serious or critical, and nothing wider than the window: by day on a phone and by
     * night at a desk, since colours hang on the hour and hardly on the width, and to ask for them takes longest.
     */
    static List<String> seriousFaults(Page page) throws IOException {
        int width = page.viewportSize().width;
        page.emulateMedia(
                new Page.EmulateMediaOptions().setColorScheme(width < PHONE ? ColorScheme.LIGHT : ColorScheme.DARK));
        try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
            page.evaluate(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        List<?> faults = (List<?>) page.evaluate("""
                async () => (await axe.run(document, {resultTypes: ["violations"]})).violations
                    .filter(v => v.impact === "serious" || v.impact === "critical")
                    .map(v => v.id + ": " + v.nodes.slice(0, 3).map(n => n.target + " " + n.failureSummary).join(" | "))""");
        List<String> all = new ArrayList<>();
        faults.forEach(fault -> all.add(String.valueOf(fault)));
        Number wide = (Number) page.evaluate("document.documentElement.scrollWidth");
        if (wide.intValue() > width) {
            all.add(wide + " px wide in a window of " + width);
        }
        return all;
    }

    /** For the next class: as {@link #closePages}. */
    @Override
    public void close() {
        closePages();
    }
}
