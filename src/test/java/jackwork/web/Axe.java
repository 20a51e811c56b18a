package jackwork.web;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Looks for what keeps people out of a page. */
final class Axe {

    private Axe() {}

    /** Serious and critical faults, in words. */
    static List<?> faults(Page page) throws IOException {
        try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
            page.evaluate(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        return (List<?>) page.evaluate("""
                async () => (await axe.run(document, {resultTypes: ["violations"]})).violations
                    .filter(v => v.impact === "serious" || v.impact === "critical")
                    .map(v => v.id + ": " + v.nodes.slice(0, 3).map(n => n.target + " " + n.failureSummary).join(" | "))""");
    }
}
