package jackwork.app.history;

import jackwork.design.DesignFiles;
import jackwork.design.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Texts that a design's files once had, each under its own name in one folder. A text that does not fit its name was not
 * written here, and is not read.
 */
public final class KeptTexts {

    /** As large as a drawing may be. */
    private static final long MOST_BYTES = 20L << 20;

    private final HistoryFolder folder;

    KeptTexts(HistoryFolder folder) {
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
        Path file = file(name);
        folder.requireOwnToWrite(file);
        if (!text.equals(found(name).orElse(""))) {
            try {
                Files.createDirectories(folder.path());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            WholeFile.save(file, text);
        }
        return name;
    }

    /** @throws UnfitHistoryException when it is not there as it was kept */
    String text(String name) {
        return found(name).orElseThrow(() -> folder.unfit("the text " + name + " in it is not there as it was kept"));
    }

    private Optional<String> found(String name) {
        Path file = file(name);
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES) {
                return Optional.empty();
            }
            return Optional.of(Files.readString(file))
                    .filter(text -> DesignFiles.nameOf(text).equals(name));
        } catch (CharacterCodingException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path file(String name) {
        return folder.path().resolve(name + ".yaml");
    }

    /**
     * A file of a design as it is now.
     *
     * @throws UncheckedIOException when it cannot be read, is no text or larger than any
     */
    public static String read(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new FileSystemException(file.toString(), null, "is larger than any file of a design");
            }
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
