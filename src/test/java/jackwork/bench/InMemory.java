package jackwork.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/**
 * A folder on a disk in memory where there is one: thousands of entries would wait for a slow disk else. A killed program
 * loses the same on either; what a cut of power does to a disk no test here shows.
 */
public final class InMemory implements TempDirFactory {

    private static final Path MEMORY = Path.of("/dev/shm");

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext test) throws IOException {
        return Files.isWritable(MEMORY)
                ? Files.createTempDirectory(MEMORY, "jackwork")
                : Files.createTempDirectory("jackwork");
    }
}
