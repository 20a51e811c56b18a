package jackwork.app;

import jackwork.design.DesignFiles;
import jackwork.design.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Texts that a design's files once had, each under its own name in one folder. */
final class KeptTexts {

    private final Path folder;

    KeptTexts(Path folder) {
        this.folder = folder;
    }

    /** @return their names by file */
    Map<Path, String> keep(Map<Path, String> texts) {
        Map<Path, String> names = new LinkedHashMap<>();
        texts.forEach((path, text) -> names.put(path, keep(text)));
        return names;
    }

    /** @return its name */
    String keep(String text) {
        String name = DesignFiles.nameOf(text);
        Path file = folder.resolve(name + ".yaml");
        if (!Files.exists(file)) {
            try {
                Files.createDirectories(folder);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            WholeFile.save(file, text);
        }
        return name;
    }

    String text(String name) {
        return read(folder.resolve(name + ".yaml"));
    }

    /** A file as it is now. */
    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
