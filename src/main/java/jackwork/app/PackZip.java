package jackwork.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Files in one folder in one zip: the same files give the same bytes, by their names' order and all of one date. */
final class PackZip {

    /** The first that a zip can hold. */
    private static final LocalDateTime DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

    private PackZip() {}

    /** @param folder in the zip */
    static Path write(List<Path> files, String folder, Path zip) throws IOException {
        try (OutputStream out = Files.newOutputStream(zip);
                ZipOutputStream entries = new ZipOutputStream(out)) {
            for (Path file : files.stream()
                    .sorted(Comparator.comparing(file -> file.getFileName().toString()))
                    .toList()) {
                ZipEntry entry = new ZipEntry(folder + "/" + file.getFileName());
                entry.setTimeLocal(DATE);
                entries.putNextEntry(entry);
                Files.copy(file, entries);
                entries.closeEntry();
            }
        }
        return zip;
    }
}
