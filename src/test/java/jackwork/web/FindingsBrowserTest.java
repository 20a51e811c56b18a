package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import jackwork.check.NotInTheModel;
import java.net.http.HttpResponse;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the page says of findings is what the server found: in millimetres, in inches, and between which ends. */
@Tag("browser")
@Tag("quick")
class FindingsBrowserTest extends DemoOnThePage {

    @Test
    void sentencesAndEndsAreTheServersOwn() throws Exception {
        HttpResponse<String> answer = new Asking(server.address()).send("GET", "api/designs/heron", "");
        JsonNode findings = JsonMapper.builder()
                .build()
                .readTree(answer.body())
                .path("report")
                .path("findings");
        Page page = browser.open(server.address() + "#heron", 1400, 1000);
        page.waitForSelector("jackwork-page[data-ready='heron']");
        int ends = 0;
        for (boolean inches : new boolean[] {false, true}) {
            for (JsonNode finding : findings) {
                Locator shown =
                        page.locator("[data-finding='" + finding.path("id").asString() + "']");
                assertThat(text(shown)).contains(sentence(finding.path("worded").path("why"), inches));
                JsonNode margins = finding.path("margins");
                if (margins.isObject()) {
                    boolean length = inches && finding.path("unit").asString().equals("mm");
                    assertThat(text(shown.locator(".range")))
                            .contains(end(margins.path("low"), length) + " to " + end(margins.path("high"), length));
                    ends++;
                }
            }
            page.locator(".lengths").click();
        }
        assertThat(ends).isGreaterThan(20);
        page.close();
    }

    /** Beside the verdict, by hand or by keys, and nothing of it stands out of a narrow page. */
    @ParameterizedTest
    @ValueSource(ints = {1200, 390})
    void whatIsNotInTheModelIsOneStepFromTheVerdict(int width) {
        Page page = browser.open(server.address() + "#heron", width, 900);
        page.waitForSelector("jackwork-page[data-ready='heron']");
        assertThat(text(page.locator("h2.verdict"))).isEqualTo("Nothing found against it.");
        Locator list = page.locator(".left-out li");
        assertThat(list.first().isVisible()).isFalse();
        page.locator(".left-out summary").focus();
        page.keyboard().press("Enter");
        list.first().waitFor();
        assertThat(list.count()).isEqualTo(NotInTheModel.all().size());
        for (int i = 0; i < list.count(); i++) {
            NotInTheModel one = NotInTheModel.all().get(i);
            assertThat(text(list.nth(i))).contains(one.what(), one.instead());
        }
        page.locator(".left-out").scrollIntoViewIfNeeded();
        Browser.keep(page, "left-out-" + width);
        assertThat(page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
                .isEqualTo(true);
        assertThat(
                        page.evaluate(
                                "[...document.querySelectorAll('.verdict, .left-out, .left-out li')]"
                                        + ".every(e => e.getBoundingClientRect().right <= innerWidth && e.scrollWidth <= e.clientWidth + 1)"))
                .isEqualTo(true);
        page.close();
    }

    private static String text(Locator locator) {
        return String.valueOf(locator.textContent()).replaceAll("\\s+", " ");
    }

    private static String sentence(JsonNode why, boolean inches) {
        StringBuilder words = new StringBuilder();
        for (JsonNode piece : why.path("pieces")) {
            boolean other = inches && piece.path("inches").isString();
            words.append(piece.path(other ? "inches" : "words").asString());
        }
        return words.substring(1).replaceAll("\\s+", " ");
    }

    private static String end(JsonNode value, boolean inches) {
        String text = String.format(Locale.ROOT, "%.3f", value.asDouble() / (inches ? 25.4 : 1));
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
