package jackwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
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
    void goesWithTheProgram() throws IOException {
        for (String file : new String[] {"NOTICE", "LICENSE"}) {
            try (InputStream in = NoticeTest.class.getResourceAsStream("/META-INF/" + file)) {
                assertThat(in).as(file).isNotNull();
                assertThat(in.readAllBytes()).isEqualTo(Files.readAllBytes(Path.of(file)));
            }
        }
    }
}
