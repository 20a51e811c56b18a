package jackwork.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a program is started with everyone on the machine can read. */
class BrowserStartTest {

    private static final URI ADDRESS = URI.create("http://127.0.0.1:8473/?key=secret");

    @TempDir
    Path home;

    @Test
    void nobodyElseReadsTheFileThatTheBrowserIsStartedWith() throws IOException {
        Path file = BrowserStart.leading(ADDRESS, home);
        assertThat(file.toUri().toString()).doesNotContain("secret");
        assertThat(Files.readString(file)).contains("url=" + ADDRESS);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())))
                .isEqualTo("rwx------");
    }
}
