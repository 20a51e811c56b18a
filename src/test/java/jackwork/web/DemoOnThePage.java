package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.app.core.Benches;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;

/** The demo itself on the page, for tests that change nothing of it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class DemoOnThePage {

    PageServer server;
    Browser browser;

    @BeforeAll
    void open() {
        server = PageServer.start(Benches.at(Path.of("demo")), 0);
        browser = new Browser();
    }

    /** Whatever a test did, the console stays quiet and every request is answered. */
    @AfterEach
    void nothingComplained() {
        assertThat(browser.complaints()).isEmpty();
    }

    @AfterAll
    void close() {
        browser.close();
        server.stop();
    }
}
