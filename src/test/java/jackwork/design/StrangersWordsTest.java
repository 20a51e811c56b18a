package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.DemoCopy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a stranger wrote into a file does nothing to the screen that shows it. */
@Tag("quick")
class StrangersWordsTest {

    @ParameterizedTest
    @ValueSource(strings = {"\\e[31mred", "\\u202Edlrow", "\\x07bell"})
    void aNameThatAScreenObeysIsRefusedWithItsPlace(String name, @TempDir Path folder) throws IOException {
        Path heron = DemoCopy.with(folder.resolve("hut"), "heron").resolve("heron");
        Path file = heron.resolve("design.yaml");
        Files.writeString(
                file,
                Files.readString(file).replaceFirst("(?m)^name: .*$", "name: \"" + name.replace("\\", "\\\\") + "\""));
        assertThatThrownBy(() -> DesignReader.read(heron))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("design.yaml:")
                .hasMessageContaining("cannot be seen (U+");
    }

    @Test
    void soIsAKey(@TempDir Path folder) throws IOException {
        Path heron = DemoCopy.with(folder.resolve("hut"), "heron").resolve("heron");
        Path file = heron.resolve("figure.yaml");
        Files.writeString(file, Files.readString(file).replace("  tail: {", "  \"ta\\eil\": {"));
        assertThatThrownBy(() -> DesignReader.read(heron))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("figure.yaml:")
                .hasMessageContaining("U+001B");
    }

    @Test
    void aLongQuotationIsCutAndEscapesAreNotRepeated() {
        String told = ToldWords.message("read \"" + "9".repeat(5_000_000) + "\u001b[31m\", expected a number");
        assertThat(told)
                .hasSizeLessThan(1_010)
                .endsWith("[31m\", expected a number")
                .doesNotContain("\u001b");
        assertThat(ToldWords.message("Grüße, 9,5 mm\nnext")).isEqualTo("Grüße, 9,5 mm\nnext");
    }
}
