package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.Child;
import jackwork.cli.Main;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A pack where there is no room, or that may not be written: said in words, and nothing half made. */
@EnabledOnOs(OS.LINUX)
class PackWithoutRoomTest {

    @TempDir
    private Path folder;

    private static String packed(List<String> before, Path out) throws IOException, InterruptedException {
        Child child = Child.start(before, Main.class, "pack", "demo/heron", "-o", out.toString());
        String said = child.rest();
        assertThat(child.process().waitFor()).as(said).isEqualTo(2);
        assertThat(said).contains("cannot read or write").doesNotContain("\tat ");
        return said;
    }

    /** No file may have more than 16 KiB: the same for a pack as a disk without room. */
    @Test
    void aFileThatMayNotGrow() throws Exception {
        Path out = folder.resolve("out");
        packed(List.of("bash", "-c", "ulimit -f 16; exec \"$@\"", "limited"), out);
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files.toList()).allSatisfy(file -> {
                assertThat(file.getFileName().toString()).doesNotStartWith(".");
                assertThat(Files.size(file)).isBetween(1L, 16L * 1024);
            });
        }
        assertThat(out.resolve("contents.html")).as("it is written last").doesNotExist();
    }

    @Test
    void aFolderThatMayNotBeWritten() throws Exception {
        Path closed = Files.createDirectory(
                folder.resolve("closed"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("r-xr-xr-x")));
        assertThat(packed(Child.lesser(), closed)).contains("closed", "give yourself the right");
        assertThat(packed(Child.lesser(), closed.resolve("out"))).contains("closed");
        assertThat(closed).isEmptyDirectory();
    }
}
