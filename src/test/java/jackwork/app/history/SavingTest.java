package jackwork.app.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is saved is never called a failure, and what is not never a success. */
@Tag("quick")
class SavingTest {

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void old() throws IOException {
        file = folder.resolve("design.yaml");
        Files.writeString(file, "old");
    }

    private static UncheckedIOException full() {
        return new UncheckedIOException(new IOException("no space left"));
    }

    @Test
    void aNoteThatCouldNotBeWrittenAfterTheFileIsNoFailure() throws IOException {
        assertThatCode(() -> Saving.all(Map.of(file, "new"), () -> {
                    write("new");
                    throw full();
                }))
                .doesNotThrowAnyException();
        assertThat(Files.readString(file)).isEqualTo("new");
    }

    @Test
    void aFileThatCouldNotBeWrittenIsOne() throws IOException {
        assertThatThrownBy(() -> Saving.all(Map.of(file, "new"), () -> {
                    throw full();
                }))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessageContaining("no space left");
        assertThat(Files.readString(file)).isEqualTo("old");
    }

    private void write(String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
