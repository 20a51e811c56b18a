package jackwork;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.cli.Main;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever is shipped is named, with the licence that it has today. */
@Tag("quick")
class NoticeTest {

    @Test
    void namesWhatTheBuildResolved() throws IOException {
        assertThat(Files.readString(NoticeFile.FILE))
                .as("NOTICE has drifted: run NoticeFile.main of the test sources")
                .isEqualTo(NoticeFile.text());
    }

    /** Within the jar too: whoever has that alone has the terms. */
    @Test
    void goesWithTheProgram() throws IOException, URISyntaxException {
        // Not by name alone: other jars on the way there have a NOTICE of their own.
        Path classes = Path.of(
                Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        for (String file : new String[] {"NOTICE", "LICENSE"}) {
            assertThat(Files.readString(classes.resolve("META-INF").resolve(file)))
                    .as(file)
                    .isEqualTo(Files.readString(Path.of(file)));
        }
    }
}
