package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The table of what goes wrong at a bench is what comes of it today. */
class DefectsTest {

    @TempDir
    private Path folder;

    @Test
    void theTableIsTodays() throws IOException {
        assertThat(DefectsTable.table(folder)).isEqualTo(Files.readString(DefectsTable.FILE));
    }
}
