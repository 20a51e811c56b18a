package jackwork;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Copies of the demo workshop for tests to spoil. */
public final class DemoCopy {

    private DemoCopy() {}

    /** A fresh copy of the demo as {@code folder}. */
    public static Path at(Path folder) throws IOException {
        Path demo = Path.of("demo");
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.sorted().toList()) {
                Path target = folder.resolve(demo.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        return folder;
    }
}
