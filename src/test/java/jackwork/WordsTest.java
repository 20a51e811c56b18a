package jackwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What docs/words.md says, as far as a test can hold it: phrases that are not written any more stand nowhere that a maker
 * reads (texts in the code, the page, the tables, the documents). Old places are listed with how many they have; the
 * list must be shortened when one goes. It knows nothing of grammar.
 */
class WordsTest {

    private static final Path OLD = Path.of("src/test/resources/jackwork/words/old-places.txt");
    private static final Path WORDS = Path.of("docs/words.md");
    private static final Map<String, Pattern> FORBIDDEN = new TreeMap<>(Map.of(
            "to first order", phrase("to first order"),
            "of its own", phrase("of (its|their) own"),
            "is none", phrase("(?<!there )(is|are|was|were) none"),
            "virtual build", phrase("virtual builds?"),
            "sample piece", phrase("sample pieces?")));

    /** A comment, a letter, or a text; texts that are put together with + are one. */
    private static final Pattern JAVA = Pattern.compile(
            "//[^\\n]*|/\\*.*?\\*/|'(?:\\\\.|[^'\\\\])+'"
                    + "|(?<text>\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"(?:\\s*\\+\\s*\"(?:\\\\.|[^\"\\\\\\n])*\")*)",
            Pattern.DOTALL);

    private static final Pattern PAGE_COMMENT =
            Pattern.compile("/\\*.*?\\*/|(?<![:\"'`])//[^\\n]*|<!--.*?-->", Pattern.DOTALL);

    private static Pattern phrase(String words) {
        return Pattern.compile("\\b" + words.replace(" ", "\\s+") + "\\b", Pattern.CASE_INSENSITIVE);
    }

    @Test
    void wordsThatWeDoNotUseStandInOldPlacesOnly() throws IOException {
        Map<String, Integer> found = new TreeMap<>();
        List<Path> files = files();
        for (Path file : files) {
            String read = readByMakers(file);
            FORBIDDEN.forEach((name, phrase) -> {
                int count = (int) phrase.matcher(read).results().count();
                if (count > 0) {
                    found.put(file.toString().replace('\\', '/') + ": " + name, count);
                }
            });
        }
        assertThat(files).hasSizeGreaterThan(600);
        String now = found.entrySet().stream()
                .map(place -> place.getKey() + " " + place.getValue())
                .collect(Collectors.joining("\n", "", "\n"));
        assertThat(now)
                .as("docs/words.md says what to write instead; a place that is mended goes from " + OLD)
                .isEqualTo(Files.readString(OLD));
    }

    @Test
    void whatIsReadByMakersIsFoundAndCommentsAreNot() {
        String java =
                "// of its own\nString s = \"a box of \" + \"its own\"; char c = '\"'; /* is none */ f(\"it is none\");";
        assertThat(ofJava(java)).contains("a box of its own", "it is none").doesNotContain("// of");
        assertThat(phrase("to first order").matcher("To first\n  order").find()).isTrue();
        String page = "/** is none */ html`<p>It is ${none}</p>`; // of its own\n const a = \"https://x is none\"";
        assertThat(ofPage(page))
                .contains("https://x is none")
                .doesNotContain("of its own")
                .doesNotContain("/** is none");
    }

    private static String readByMakers(Path file) throws IOException {
        String text = Files.readString(file);
        String name = file.toString();
        return name.endsWith(".java")
                ? ofJava(text)
                : name.endsWith(".ts") || name.endsWith(".html") ? ofPage(text) : text;
    }

    private static String ofJava(String source) {
        return JAVA.matcher(source).results().map(WordsTest::text).collect(Collectors.joining("\n"));
    }

    private static String text(MatchResult found) {
        String text = found.group(1);
        return text == null ? "" : text.replaceAll("\"\\s*\\+\\s*\"", "");
    }

    private static String ofPage(String source) {
        return PAGE_COMMENT.matcher(source).replaceAll("");
    }

    private static List<Path> files() throws IOException {
        List<Path> all = new ArrayList<>(List.of(Path.of("README.md")));
        for (String root : List.of("src/main", "web", "docs", "demo")) {
            try (Stream<Path> files = Files.walk(Path.of(root))) {
                files.filter(file -> file.toString().matches(".*\\.(java|ts|html|md|csv|yaml)"))
                        .filter(file -> !file.equals(WORDS))
                        .sorted()
                        .forEach(all::add);
            }
        }
        return all;
    }
}
