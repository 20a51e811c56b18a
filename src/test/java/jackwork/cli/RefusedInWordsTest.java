package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be used is told in words, with exit code 2; never as a fault of the program. */
class RefusedInWordsTest {

    @TempDir
    Path folder;

    @BeforeEach
    void copy() throws IOException {
        DemoCopy.with(folder, "heron", "windmill");
    }

    @Test
    void aDesignThatTakesNoCoin() throws IOException {
        change("heron/design.yaml", "(?m)^coins: .*$", "coins: []");
        refused(Ran.run("check", at("heron")), "design.yaml:5:", "names no coin");
    }

    @ParameterizedTest
    @ValueSource(strings = {",", " , ", ""})
    void aListThatNamesNoCoin(String list) {
        refused(Ran.run("check", at("heron"), "--coins", list), "--coins reads", "names no coin");
    }

    @Test
    void aCoinNamedTwice() {
        refused(
                Ran.run("check", at("heron"), "--coins", "EUR-1,EUR-2,EUR-1"),
                "coins: read EUR-1, EUR-2, EUR-1",
                "each coin once");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "1.8", "5", "-30", "1000"})
    void playThatLeavesNoTeeth(String play) throws IOException {
        change("windmill/figure.yaml", "pressure-angle: 25\\}", "pressure-angle: 25, play: " + play + "}");
        boolean sensible = play.length() > 1 ? play.startsWith("1.") : play.equals("2");
        refused(
                Ran.run("check", at("windmill")),
                sensible ? "teeth of module" : "figure.yaml:",
                sensible
                        ? String.format(java.util.Locale.ROOT, "play of %.2f mm", Double.parseDouble(play))
                        : "expected 0 to 2 mm");
    }

    @Test
    void aGapBelowNothing() throws IOException {
        change("workshop.yaml", "(?m)^  gap: 3 ", "  gap: -30 ");
        Ran ran = Ran.run("pack", at("heron"), "-o", at("out"), "--search", "1");
        refused(ran, "workshop.yaml:11:8: read -30, expected 0 to 100 mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"70000", "-1"})
    void aPortThatIsNone(String port) {
        refused(Ran.run("open", folder.toString(), "--no-browser", "--port", port), "--port reads " + port, "65535");
        refused(Ran.run("bench", "phone", "--port", port), "--port reads " + port, "65535");
    }

    private void change(String file, String from, String to) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        String changed = text.replaceFirst(from, to);
        assertThat(changed).isNotEqualTo(text);
        Files.writeString(path, changed);
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    private static void refused(Ran ran, String... words) {
        assertThat(ran.err()).contains(words).doesNotContain("our fault");
        assertThat(ran.exit()).isEqualTo(Outcome.BAD_INPUT);
    }
}
