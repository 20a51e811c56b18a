package jackwork.guide;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;

/** Pictures of the page as it stands, each with what is to be read there. */
final class Shots {

    private static final int MARGIN = 12;

    private final Page page;

    Shots(Page page) {
        this.page = page;
    }

    /** The whole page from its top; and what is written in its main part, below what is to be seen as well. */
    String place(Path file) {
        page.evaluate("window.scrollTo(0, 0)");
        still();
        page.screenshot(new Page.ScreenshotOptions().setPath(file));
        return words(page.locator("main, .bench").first());
    }

    /** A part of the page, as high as the window at most. */
    String part(String selector, Path file) {
        Locator shown = page.locator(selector).first();
        shown.evaluate("place => window.scrollBy(0, place.getBoundingClientRect().top - " + MARGIN + ")");
        still();
        BoundingBox box = shown.boundingBox();
        double left = Math.max(0, box.x - MARGIN);
        double top = Math.max(0, box.y - MARGIN);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(file)
                .setClip(
                        left,
                        top,
                        Math.min(page.viewportSize().width, box.x + box.width + MARGIN) - left,
                        Math.min(page.viewportSize().height, box.y + box.height + MARGIN) - top));
        return words(shown);
    }

    /** Nothing pointed at, and drawn to the end. */
    private void still() {
        page.mouse().move(1, 1);
        page.evaluate("new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))");
    }

    /**
     * What is to be read there, line by line, then what stands in its fields. Findings that pass stand below what is
     * pictured and are left out: every new question would change them.
     */
    private static String words(Locator shown) {
        return (String) shown.evaluate("""
                place => {
                  const below = [...place.querySelectorAll("details.finding.pass, h3")]
                      .filter(part => part.matches(".finding") || part.textContent.startsWith("Passed,"));
                  below.forEach(part => part.style.display = "none");
                  const fields = [...place.querySelectorAll("input:not([type=file]), select")]
                      .filter(field => field.checkVisibility())
                      .map(field => [
                          field.ariaLabel ?? field.labels?.[0]?.innerText.trim().split("\\n")[0] ?? "",
                          field.type === "checkbox" || field.type === "radio" ? (field.checked ? "yes" : "no")
                              : field.selectedOptions?.[0]?.textContent.trim() ?? field.value]);
                  const said = place.innerText;
                  below.forEach(part => part.style.display = "");
                  return [...said.split("\\n"), ...fields.map(([label, value]) => `[${label}: ${value}]`)]
                      .map(line => line.replace(/\\s+/g, " ").trim()).filter(line => line !== "").join("\\n") + "\\n";
                }""");
    }
}
