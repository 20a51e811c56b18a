package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A finding's id is written in one place. */
@Tag("quick")
class TopicsTest {

    /** On the page a topic is a type: the compiler knows a word that is none. */
    private static final Pattern TYPED = Pattern.compile("topic === \"[a-z-]+\"");

    @Test
    void idsAreReadBackAsWhatTheyAreAbout() {
        for (Topic topic : Topic.values()) {
            assertThat(Topic.of(topic.id(""))).isEqualTo(topic);
            assertThat(Topic.of(topic.id("a/b"))).isEqualTo(topic);
        }
        assertThatThrownBy(() -> Topic.of("heap-grows"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("heap-grows");
    }

    /**
     * No Java and no page source but {@link Topic} writes one as text. Words of one part ({@code builds}, {@code heap})
     * mean other things as well: they are found only where they begin an id, {@code "other/}.
     */
    @Test
    void noIdIsWrittenAsTextElsewhere() throws IOException {
        String words = Arrays.stream(Topic.values())
                .map(topic -> topic.word() + (topic.word().contains("-") ? "[\"/]" : "/"))
                .collect(Collectors.joining("|"));
        Pattern written = Pattern.compile("[\"`](" + words + ")");
        List<String> found = new ArrayList<>();
        List<Path> sources = sources();
        for (Path source : sources) {
            for (String line : Files.readAllLines(source)) {
                Matcher matcher = written.matcher(TYPED.matcher(line).replaceAll(""));
                if (matcher.find()) {
                    found.add(source + ": " + line.strip());
                }
            }
        }
        assertThat(found).isEmpty();
        assertThat(sources).hasSizeGreaterThan(500);
    }

    private static List<Path> sources() throws IOException {
        List<Path> sources = new ArrayList<>();
        for (Path root : List.of(Path.of("src/main/java"), Path.of("web/src"))) {
            try (Stream<Path> files = Files.walk(root)) {
                files.filter(file -> file.toString().matches(".*\\.(java|ts)"))
                        .filter(file -> !file.endsWith("Topic.java") && !file.endsWith("api-types.ts"))
                        .forEach(sources::add);
            }
        }
        return sources;
    }
}
