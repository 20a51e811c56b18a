package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every YAML example of the documents is read by the reader of its file. An example names that file after its fence
 * ({@code yaml figure.yaml}), and the section that it is of where it shows the inside of one ({@code yaml box.yaml in
 * coin-works}); the sections that it leaves out are the demo's. Names that it uses need not exist: it is an example.
 */
@Tag("quick")
class YamlExamplesTest {

    private static final Pattern EXAMPLE =
            Pattern.compile("^```yaml(?: (\\S+)(?: in (\\S+))?)?\\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern KEY = Pattern.compile("^ *[^ #-][^:]*:.*");

    private static final Map<String, Path> DEMO = Map.of(
            "workshop.yaml", Path.of("demo/workshop.yaml"),
            "box.yaml", Path.of("demo/boxes/marsh-box/box.yaml"),
            "figure.yaml", Path.of("demo/heron/figure.yaml"),
            "design.yaml", Path.of("demo/heron/design.yaml"));

    record Example(String where, String file, String section, String text) {

        @Override
        public String toString() {
            return where + " " + text.lines().findFirst().orElse("");
        }
    }

    static List<Example> examples() throws IOException {
        List<Example> examples = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("docs"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
                String text = Files.readString(file);
                for (MatchResult found : EXAMPLE.matcher(text).results().toList()) {
                    long line = text.substring(0, found.start()).lines().count() + 1;
                    examples.add(new Example(
                            file + ":" + line,
                            found.group(1) == null ? "" : found.group(1).replaceAll(".*/", ""),
                            found.group(2) == null ? "" : found.group(2),
                            found.group(3)));
                }
            }
        }
        return examples;
    }

    @Test
    void thereAreExamples() throws IOException {
        assertThat(examples()).hasSizeGreaterThan(15);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void exampleIsRead(Example example) throws IOException {
        assertThat(DEMO).as(example.where() + " names no file after its fence").containsKey(example.file());
        String demo = Files.readString(DEMO.get(example.file()));
        String text = example.section().isEmpty()
                ? example.text()
                : example.section() + ":\n"
                        + example.text().indent(example.text().startsWith(" ") ? 0 : 2);
        String whole = completed(text, demo);
        List<Problem> problems = new ArrayList<>();
        YamlFile file = YamlFile.parse(example.where(), whole, problems);
        switch (example.file()) {
            case "workshop.yaml" -> WorkshopReader.parse(whole);
            case "box.yaml" -> new Binder(file).bind(BoxFile.class);
            case "figure.yaml" -> new Binder(file).bind(FigureFile.class);
            default -> new Binder(file).bind(DesignFile.class);
        }
        YamlFile.requireNone(problems);
    }

    /** The example, with what the demo has besides, to the second rank of keys. */
    private static String completed(String example, String demo) {
        Map<String, String> whole = new LinkedHashMap<>(sections(example, 0));
        sections(demo, 0).forEach((key, text) -> {
            String shown = whole.get(key);
            if (shown == null) {
                whole.put(key, text);
            } else {
                Map<String, String> inside = sections(shown, 2);
                sections(text, 2).forEach((inner, value) -> {
                    if (!inside.isEmpty() && !inside.containsKey(inner)) {
                        whole.merge(key, value, String::concat);
                    }
                });
            }
        });
        return String.join("", whole.values());
    }

    /** By key, in order: each entry of a mapping with all that belongs to it. */
    private static Map<String, String> sections(String yaml, int indent) {
        Map<String, String> sections = new LinkedHashMap<>();
        String key = "";
        for (String line : yaml.lines().toList()) {
            int deep = line.length() - line.stripLeading().length();
            if (deep == indent && KEY.matcher(line).matches()) {
                key = line.strip().replaceAll(":.*", "");
            }
            if (!key.isEmpty()) {
                sections.merge(key, line + "\n", String::concat);
            }
        }
        return sections;
    }
}
