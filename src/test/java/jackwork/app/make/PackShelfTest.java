package jackwork.app.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.app.wire.BadRequestException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** One pack stands ready at a time, and nothing of it is left behind. */
class PackShelfTest {

    private static PackShelf.Boxed made(PackShelf shelf, int number) throws IOException {
        try (PackShelf.Bench bench = shelf.bench()) {
            Files.createDirectories(bench.folder());
            Path file = Files.writeString(bench.folder().resolve("a.txt"), "a" + number);
            Files.copy(file, bench.zip());
            bench.keep(number, "heron-pack.zip");
        }
        return shelf.find(number);
    }

    @Test
    void theLastPackStandsAndTheOneBeforeIsGone() throws IOException {
        try (PackShelf shelf = new PackShelf()) {
            PackShelf.Boxed first = made(shelf, 3);
            assertThat(first.zip()).exists();
            assertThat(first.root()).isDirectoryContaining(file -> file.equals(first.zip()));
            assertThat(first.root().resolve("files")).doesNotExist();
            PackShelf.Boxed second = made(shelf, 4);
            assertThat(first.root()).doesNotExist();
            assertThat(second.zip()).exists();
            assertThatThrownBy(() -> shelf.find(3))
                    .isInstanceOf(BadRequestException.class)
                    .hasMessageContaining("make it again");
            shelf.close();
            assertThat(second.root()).doesNotExist();
        }
    }

    @Test
    void whatIsBeingFetchedIsFetchedToItsEnd() throws IOException {
        try (PackShelf shelf = new PackShelf()) {
            made(shelf, 3);
            PackShelf.Fetched fetched = shelf.fetch(3);
            made(shelf, 4);
            shelf.close();
            try (InputStream bytes = fetched.bytes()) {
                assertThat(new String(bytes.readAllBytes(), StandardCharsets.UTF_8))
                        .isEqualTo("a3");
            }
        }
    }

    @Test
    void whatIsNotFinishedLeavesNothing() throws IOException {
        try (PackShelf shelf = new PackShelf()) {
            Path folder;
            try (PackShelf.Bench bench = shelf.bench()) {
                folder = bench.folder();
                Files.createDirectories(folder);
                Files.writeString(folder.resolve("half.svg"), "<svg");
            }
            assertThat(folder.getParent()).doesNotExist();
            assertThatThrownBy(() -> shelf.find(0)).isInstanceOf(BadRequestException.class);
        }
    }
}
