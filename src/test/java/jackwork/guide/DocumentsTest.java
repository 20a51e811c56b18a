package jackwork.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the documents show of the program's own sources stands there, and what they point at exists. */
class DocumentsTest {

    private static final Pattern POINTS_AT = Pattern.compile("]\\(([^)#]+)(?:#[^)]*)?\\)");

    private static List<Path> documents() throws IOException {
        List<Path> all = new ArrayList<>(List.of(Path.of("README.md"), Path.of("demo/README.md")));
        try (var files = Files.walk(Path.of("docs"))) {
            files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(all::add);
        }
        return all;
    }

    /** Excerpts name their file after the fence; {@code ...} stands for what is left out. */
    @Test
    void excerptsAreTheCode() throws IOException {
        List<Quote> excerpts = new ArrayList<>();
        for (Path document : documents()) {
            for (GuidePage.Step step : GuidePage.read(document).steps()) {
                if (step instanceof GuidePage.Block block && block.about().startsWith("src/")) {
                    excerpts.add(new Quote(
                            document.toString(),
                            block.about(),
                            block.quoted(),
                            Files.readAllLines(Path.of(block.about()))));
                }
            }
        }
        assertThat(excerpts).hasSizeGreaterThan(10);
        assertThat(excerpts).filteredOn(quote -> !quote.isTrue()).isEmpty();
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        List<String> broken = new ArrayList<>();
        for (Path document : documents()) {
            POINTS_AT
                    .matcher(Files.readString(document))
                    .results()
                    .map(found -> found.group(1))
                    .filter(to -> !to.matches("[a-z]+:.*"))
                    .filter(to -> !Files.exists(document.resolveSibling(to).normalize()))
                    .forEach(to -> broken.add(document + " → " + to));
        }
        assertThat(broken).isEmpty();
    }
}
