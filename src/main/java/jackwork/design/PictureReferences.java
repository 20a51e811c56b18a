package jackwork.design;

import jackwork.drawing.PictureException;
import jackwork.drawing.PictureReader;
import java.io.IOException;
import java.nio.file.Path;

/** Holds the pictures of one file against what lies beside it. */
final class PictureReferences {

    private PictureReferences() {}

    /** Only the head of the file is read here: all of it when it is printed. */
    static void checkFile(Path file, String path, YamlFile yaml) {
        try {
            PictureReader.checkHeader(file);
        } catch (PictureException e) {
            yaml.problem(path, "the picture " + e.file() + " " + e.problem());
        } catch (IOException e) {
            yaml.problem(path, "the picture cannot be opened: " + e.getMessage());
        }
    }
}
