package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import jackwork.DemoCopy;
import jackwork.app.Bench;
import jackwork.app.Pricing;
import jackwork.app.Workbench;
import jackwork.bench.Kinds;
import jackwork.bench.RevisionName;
import jackwork.bench.Stamp;
import jackwork.bench.Timing;
import jackwork.price.Timed;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was timed at the bench, on Will it pay?: taken, told, and left aside where asked. */
@Tag("browser")
class PayTimedBrowserTest {

    private static final int LAID_OUT = 10;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void whatWasTimedIsTaken() throws IOException {
        Path demo = DemoCopy.at(folder.resolve("demo"));
        Path heron = demo.resolve("heron");
        Pricing pricing = Pricing.of(heron, LAID_OUT, line -> {});
        Bench bench = Bench.in(demo);
        RevisionName frozen = bench.freeze(heron, "as drawn", Instant.now()).name();
        bench.log().add(Kinds.TIMINGS, new Timing(Stamp.of(Instant.now(), ""), frozen, "build", 190, 2));
        String supposed = floor(pricing, Map.of());
        String timed = floor(pricing, Map.of("build", Timed.said(95, "here")));
        assertThat(timed).isNotEqualTo(supposed);

        PageServer server = PageServer.start(new Workbench(demo), 0);
        try (Browser browser = new Browser()) {
            for (int width : List.of(1280, 360)) {
                Page page = browser.open(server.address() + "#heron&pay", width, 900);
                page.setDefaultTimeout(300_000);
                answered(page);
                Locator amount = page.locator(".floor-row .amount");
                assertThat(amount.textContent()).isEqualTo(timed);
                assertThat(page.locator(".timed-work").textContent())
                        .containsIgnoringWhitespaces("glue and put together: 95 min, on 2 pieces of revision 1");
                Browser.keep(page, "pay-timed-" + width);
                page.locator(".as-timed").uncheck();
                answered(page);
                assertThat(amount.textContent()).isEqualTo(supposed);
                page.locator(".all-back").click();
                answered(page);
                assertThat(amount.textContent()).isEqualTo(timed);
                assertThat(page.locator(".as-timed").isChecked()).isTrue();
                page.close();
            }
            assertThat(browser.complaints()).isEmpty();
        } finally {
            server.stop();
        }
    }

    private static String floor(Pricing pricing, Map<String, Timed> timed) {
        BigDecimal floor = pricing.answer(new Pricing.Ask(LAID_OUT, null, null, Map.of(), timed))
                .floor();
        return floor + " EUR";
    }

    private static void answered(Page page) {
        page.waitForSelector("jackwork-pay[data-answered]");
    }
}
