package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import jackwork.design.WorkshopReader;
import jackwork.stock.Basis;
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

/** The workshop's numbers looked at and changed at the page, against the real file. */
@Tag("browser")
class WorkshopBrowserTest {

    private static Browser browser;

    private Path demo;
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
        demo = DemoCopy.here("heron", "lamplighter");
        server = PageServer.start(Benches.at(demo), 0);
    }

    @AfterEach
    void stop() {
        server.stop();
        // What was refused on purpose.
        assertThat(browser.complaints()).allMatch(complaint -> complaint.contains("status of 422"));
    }

    private Page page(int width) {
        Page page = browser.open(server.address() + "#heron&workshop", width, 900);
        page.waitForSelector("main.workshop[data-ready]");
        page.waitForSelector("[data-design=heron][data-known=yes]");
        return page;
    }

    private static Locator opened(Page page, String section, String path) {
        page.locator("[data-section=" + section + "] > summary").click();
        Locator row = page.locator("[data-value='" + path + "']");
        row.locator("summary").click();
        return row;
    }

    /** Its ends follow the value when that is left, so they come after it. */
    private static void write(Locator row, String value, String low, String high) {
        row.locator("[name=value]").fill(value);
        row.locator("[name=value]").blur();
        row.locator("[name=low]").fill(low);
        row.locator("[name=high]").fill(high);
        row.locator("button[type=submit]").click();
    }

    private String text() throws IOException {
        return Files.readString(demo.resolve("workshop.yaml"));
    }

    @Test
    void aNumberIsMeasuredAndTheFileSaysSo() throws IOException {
        String before = text();
        Page page = page(1280);
        Locator row = opened(page, "laser", "laser.kerf");
        assertThat(row.locator(".basis").textContent()).isEqualTo("guess");
        row.locator("[name=value]").fill("0.18");
        row.locator("[name=value]").blur();
        // The interval that was not touched goes along.
        assertThat(row.locator("[name=low]").inputValue()).isEqualTo("0.12");
        row.locator("[name=low]").fill("0.17");
        row.locator("[name=high]").fill("0.19");
        row.locator("[name=basis]").selectOption("measured");
        row.locator("[name=source]").fill("kerf piece, ten strips");
        row.locator("button[type=submit]").click();
        page.waitForSelector("[data-value='laser.kerf'] .basis:has-text('measured here')");
        assertThat(WorkshopReader.parse(text()).laser().kerf().basis()).isEqualTo(Basis.MEASURED);
        assertThat(text())
                .isEqualTo(before.replace(
                        "{value: 0.16, low: 0.10, high: 0.22, basis: guess,"
                                + " source: \"usual for 3 mm plywood, common practice, no source\"}",
                        "{value: 0.18, low: 0.17, high: 0.19, basis: measured, source: \"kerf piece, ten strips\"}"));
        page.waitForSelector(".turned");
        Browser.keep(page, "workshop-measured");
        page.locator("[data-step=undo]").click();
        page.waitForSelector("[data-value='laser.kerf'] .basis:has-text('guess')");
        assertThat(text()).isEqualTo(before);
        page.locator("[data-step=redo]").click();
        page.waitForSelector("[data-value='laser.kerf'] .basis:has-text('measured here')");
        page.close();
    }

    @Test
    void whatIsGuessedForTheMakerCanBeWrittenAndGivenBack() throws IOException {
        String before = text();
        Page page = page(1280);
        Locator row = opened(page, "use", "handling.tilt");
        assertThat(row.locator(".basis").textContent()).isEqualTo("our guess");
        row.locator("[name=high]").fill("2.5");
        row.locator("button[type=submit]").click();
        page.waitForSelector("[data-value='handling.tilt'] button:has-text('Go back')");
        assertThat(WorkshopReader.parse(text()).handlingOrGuess().tilt().high()).isEqualTo(2.5);
        row.locator("button:has-text('Go back')").click();
        page.waitForSelector("[data-value='handling.tilt'] .basis:has-text('our guess')");
        assertThat(text()).isEqualTo(before + System.lineSeparator());
        page.close();
    }

    @Test
    void aSheetComesAndGoesButNotOneThatADesignIsCutFrom() throws IOException {
        Page page = page(1280);
        page.locator("[data-section=sheets] > summary").click();
        page.locator("[data-add=sheets]").click();
        Locator form = page.locator("[data-section=sheets] form.adding");
        form.locator("[name=name]").fill("poplar-4");
        form.locator("[name=kind]").selectOption("poplar-ply");
        form.locator("[name=thickness]").fill("4");
        form.locator("[name=width]").fill("600");
        form.locator("[name=height]").fill("400");
        form.locator("button[type=submit]").click();
        page.waitForSelector("[data-value='sheets.poplar-4.thickness']");
        assertThat(WorkshopReader.parse(text()).sheets()).containsKey("poplar-4");
        page.getByLabel("Take out Sheets: poplar-4").click();
        page.waitForCondition(
                () -> page.locator("[data-value='sheets.poplar-4.thickness']").count() == 0);
        String before = text();
        page.getByLabel("Take out Sheets: birch-3").click();
        page.waitForSelector(".problem");
        assertThat(page.locator(".problem").textContent()).contains("left as it was", "birch-3");
        assertThat(text()).isEqualTo(before);
        Browser.keep(page, "workshop-refused");
        page.close();
    }

    @Test
    void whatIsWrongIsToldAndWhatIsChangedOutsideIsSeen() throws IOException {
        Page page = page(1280);
        Locator row = opened(page, "fits", "fits.running");
        row.locator("[name=value]").fill("wide");
        row.locator("button[type=submit]").click();
        page.waitForSelector(".problem");
        assertThat(page.locator(".problem").textContent()).contains("read \"wide\"", "number of mm");
        Files.writeString(
                demo.resolve("workshop.yaml"), text().replace("value: 0.20, low: 0.10", "value: 0.22, low: 0.10"));
        page.waitForSelector("[data-value='fits.running'] .stands:has-text('0.22')");
        page.close();
    }

    @Test
    void aVerdictThatTurnsIsToldAndWhatItHangsOn() throws IOException {
        Page page = page(1280);
        assertThat(page.locator("[data-design=heron]").textContent()).contains("Heron");
        Locator row = opened(page, "finger", "finger.comfortable");
        write(row, "0.1", "0.05", "0.15");
        page.waitForSelector(".turned:has-text('fails now')");
        // The design on the desk follows; nobody else changed it.
        page.waitForTimeout(2500);
        assertThat(page.locator(".all-told").textContent()).doesNotContain("changed elsewhere");
        Browser.keep(page, "workshop-verdict-turned");
        page.close();
    }

    @Test
    void lengthsInInchesAndNumbersFound() throws IOException {
        Page page = page(1280);
        page.locator(".lengths").click();
        page.locator(".sift input[type=search]").fill("kerf");
        Locator row = page.locator("[data-value='laser.kerf']");
        assertThat(row.locator(".stands").textContent()).contains("0.006 in");
        row.locator("summary").click();
        write(row, "0.007", "0.005", "0.009");
        page.waitForSelector("[data-value='laser.kerf'] .stands:has-text('0.007')");
        assertThat(WorkshopReader.parse(text()).laser().kerf().value()).isEqualTo(0.178);
        page.locator(".lengths").click();
        page.close();
    }

    @Test
    void forEveryone() throws IOException {
        for (int width : List.of(360, 1280)) {
            Page page = page(width);
            page.locator(".sift input[type=checkbox]").check();
            for (Locator section : page.locator(".group:not([open]) > summary").all()) {
                section.click();
            }
            page.locator("[data-value='laser.kerf'] > summary").click();
            Browser.keep(page, "workshop-" + width);
            assertThat(Browser.seriousFaults(page)).as(width + " wide").isEmpty();
            page.close();
        }
    }
}
