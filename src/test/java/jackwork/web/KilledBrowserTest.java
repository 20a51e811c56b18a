package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;
import jackwork.DemoCopy;
import jackwork.design.DesignEdit;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program killed outright (SIGKILL) around a change at the page, and started again: nothing is lost. The page that was
 * open goes on as soon as the new address was opened beside it.
 */
@Tag("browser")
class KilledBrowserTest {

    private static final int KILLS = 2;
    private static final String WIDTH = "box.coin-works.slot.width";

    @TempDir
    Path folder;

    /** A program of its own, up and serving; the address that it printed. */
    private record Started(Process process, String address) {

        void kill() throws InterruptedException {
            process.destroyForcibly().waitFor();
        }
    }

    private static Started start(Path workshop, int port) throws IOException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        "jackwork.cli.Main",
                        "open",
                        workshop.toString(),
                        "--port",
                        String.valueOf(port),
                        "--no-browser")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader out = process.inputReader();
        String address = out.readLine();
        assertThat(address).startsWith("http://127.0.0.1:" + port + "/?");
        return new Started(process, address);
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    @Test
    void aChangeOutlivesTheProgramThatWasToSaveIt() throws Exception {
        Path demo = DemoCopy.at(folder.resolve("hut"));
        Path file = demo.resolve("heron").resolve("design.yaml");
        String before = Files.readString(file);
        int port = freePort();
        Random random = new Random(20261126);
        Started program = start(demo, port);
        try (Browser browser = new Browser()) {
            Page page = browser.open(program.address() + "#heron", 1400, 1000);
            page.waitForSelector("jackwork-page[data-ready=heron]");
            page.locator(".change-switch").click();
            Locator field = page.locator("[data-setting='" + WIDTH + "']");
            for (int i = 1; i <= KILLS; i++) {
                String value = "3.0" + i;
                String old = read(file);
                field.fill(value);
                field.press("Enter");
                page.waitForTimeout(random.nextInt(300));
                program.kill();
                assertThat(read(file))
                        .as("the old file or the new one, never a part of one")
                        .isIn(old, DesignEdit.with(old, WIDTH, value));
                program = start(demo, port);
                page.waitForSelector(".told.away:has-text('address')");
                Page beside = page.context().newPage();
                beside.navigate(program.address());
                beside.close();
                page.waitForSelector(
                        ".told.away", new Page.WaitForSelectorOptions().setState(WaitForSelectorState.DETACHED));
                page.waitForCondition(() -> read(file).contains(WIDTH + ": " + value));
            }
            page.reload();
            page.waitForSelector("[data-step=undo]:not([disabled])");
            for (int i = KILLS - 1; i >= 1; i--) {
                String value = "3.0" + i;
                page.waitForSelector("[data-step=undo][aria-label*='3.0" + (i + 1) + "']");
                page.locator("[data-step=undo]").click();
                page.waitForCondition(() -> read(file).contains(WIDTH + ": " + value));
            }
            page.waitForSelector("[data-step=undo][aria-label*='3.01']");
            page.locator("[data-step=undo]").click();
            page.waitForCondition(() -> read(file).equals(before));
            try (Stream<Path> left = Files.list(file.getParent())) {
                assertThat(left.map(path -> path.getFileName().toString()))
                        .as("drafts are as hidden as they are harmless")
                        .allMatch(
                                name -> !name.contains("design") || name.equals("design.yaml") || name.startsWith("."));
            }
        } finally {
            program.kill();
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
