package jackwork.design;

import jackwork.drawing.PictureException;
import jackwork.drawing.PictureReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Holds the pictures of one file against what lies beside it. */
final class PictureReferences {

    private PictureReferences() {}

    /**
     * Only its head is looked at here; all of it when it is printed.
     *
     * @return its bytes, where they could be read
     */
    static Optional<byte[]> check(Path file, String path, YamlFile yaml) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            PictureReader.checkHeader(String.valueOf(file.getFileName()), bytes);
            return Optional.of(bytes);
        } catch (PictureException e) {
            yaml.problem(path, "the picture " + e.file() + " " + e.problem());
        } catch (IOException e) {
            yaml.problem(path, "the picture cannot be opened: " + e.getMessage());
        }
        return Optional.empty();
    }
}
