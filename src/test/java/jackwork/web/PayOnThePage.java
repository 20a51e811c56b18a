package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import jackwork.app.pay.Pricing;
import jackwork.price.PriceReport;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;

/** Will it pay? of a workshop of its own, on the real server in real Chromium; and what {@link Pricing} answers for the same. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class PayOnThePage {

    static final int DESK = 1280;
    static final int PHONE = 360;
    /** Laying out and whatever else the machine does meanwhile, ms. */
    private static final int PATIENCE = 300_000;

    private PageServer server;
    private Browser browser;
    Path demo;
    Pricing pricing;

    @BeforeAll
    void open() throws IOException {
        demo = DemoCopy.here();
        DemoCopy.withCoin(demo.resolve("spoiled/kicker-short"), "EUR-0.20");
        server = PageServer.start(Benches.at(demo), 0);
        browser = new Browser();
        pricing = Pricing.of(demo.resolve("heron"), 10, line -> {});
    }

    @AfterEach
    void nothingComplained() {
        assertThat(browser.complaints()).isEmpty();
    }

    @AfterAll
    void close() {
        browser.close();
        server.stop();
    }

    Page page(int width) {
        return page("heron", width);
    }

    Page page(String design, int width) {
        Page page = browser.open(server.address() + "#" + design + "&pay", width, 900);
        page.setDefaultTimeout(PATIENCE);
        answered(page);
        return page;
    }

    static void answered(Page page) {
        page.waitForSelector("jackwork-pay[data-answered]");
    }

    PriceReport same(int quantity, @Nullable String shelf, Map<String, Double> numbers) {
        BigDecimal asked = shelf == null ? null : new BigDecimal(shelf);
        return pricing.answer(new Pricing.Ask(quantity, asked, null, numbers, Map.of()));
    }

    static void slide(Page page, String slider, String value) {
        page.locator("#pay-" + slider).fill(value);
        answered(page);
    }

    static void write(Page page, String slider, String value) {
        Locator field = page.locator("[data-slider='" + slider + "'] .value input");
        field.fill(value);
        field.press("Tab");
        answered(page);
    }

    static void unfold(Page page, String details) {
        page.locator(details + " > summary").click();
    }
}
