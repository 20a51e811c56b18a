package jackwork.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The page and its server speak of the same things. */
@Tag("quick")
class ApiTypesTest {

    @Test
    void thePagesTypesAreThoseOfTheRecords() throws IOException {
        assertThat(Files.readString(ApiTypes.FILE))
                .as("run jackwork.app.ApiTypes after changing what is sent to the page")
                .isEqualTo(ApiTypes.text());
    }
}
