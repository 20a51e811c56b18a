package jackwork.cli;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * Opens the page in the browser. With what words a program is started everyone on the machine can read, and the page's
 * address lets in whoever has it: so the browser is given a file that only this account can read, and that leads on.
 */
final class BrowserStart {

    private static final String PAGE = """
            <!doctype html>
            <html lang="en"><meta charset="utf-8"><title>Jackwork</title>
            <meta http-equiv="refresh" content="0; url=%s">
            <p><a href="%s">Open Jackwork</a></p></html>
            """;

    /** A browser that starts for the first time takes its time, s. */
    private static final int READ = 120;

    private BrowserStart() {}

    /** @param home folder of this account's own, in which browsers may read */
    static void open(URI address, Path home) {
        try {
            start(leading(address, home).toUri());
        } catch (IOException | UnsupportedOperationException e) {
            System.err.println("No browser could be started; open the address yourself.");
        }
    }

    /** Once the browser has read it; at the latest when the program ends. */
    private static void removeLater(File folder, File file) {
        folder.deleteOnExit();
        file.deleteOnExit();
        CompletableFuture.delayedExecutor(READ, TimeUnit.SECONDS).execute(() -> {
            if (file.delete()) {
                folder.delete();
            }
        });
    }

    /** The folder that is made for this is its owner's alone where the file system knows owners. */
    private static void requireOwn(Path folder) throws IOException {
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")
                && Files.getPosixFilePermissions(folder).stream()
                        .anyMatch(right -> !right.name().startsWith("OWNER"))) {
            throw new IOException(folder + " can be read by others");
        }
    }

    /** The file, in a folder that is its owner's alone. */
    static Path leading(URI address, Path home) throws IOException {
        Path folder = Files.createTempDirectory(home, "jackwork-open-");
        Path file = folder.resolve("open.html");
        removeLater(folder.toFile(), file.toFile());
        requireOwn(folder);
        return Files.writeString(file, PAGE.formatted(address, address), StandardCharsets.UTF_8);
    }

    private static void start(URI file) throws IOException {
        if (!GraphicsEnvironment.isHeadless()
                && Desktop.isDesktopSupported()
                && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
            Desktop.getDesktop().browse(file);
            return;
        }
        String opener = System.getProperty("os.name").startsWith("Mac") ? "open" : "xdg-open";
        new ProcessBuilder(opener, file.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
