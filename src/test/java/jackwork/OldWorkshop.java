package jackwork;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Copies of the demo workshop as release 0.1 had it, in format 1. */
public final class OldWorkshop {

    private static final Path KEPT = Path.of("src/test/resources/jackwork/workshop-0.1");

    private OldWorkshop() {}

    /** A fresh copy as {@code folder}. */
    public static Path at(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(KEPT)) {
            for (Path file : files.sorted().toList()) {
                Path target = folder.resolve(KEPT.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        return folder;
    }

    /** Every byte of every file, by name, but for what Jackwork keeps for itself. */
    public static Map<String, String> bytes(Path folder) throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString();
                if (!name.startsWith(".jackwork")) {
                    all.put(name, HexFormat.of().formatHex(Files.readAllBytes(file)));
                }
            }
        }
        return all;
    }
}
