package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.drawing.PictureException;
import jackwork.drawing.PictureReader;
import java.io.IOException;
import java.nio.file.Path;

/** Holds the pictures of one file against its parts, its drawing and what lies beside it. */
final class PictureReferences {

    private static final double WIDEST = 5000;
    private static final double MOST_BLEED = 20;

    private PictureReferences() {}

    static void check(Works works, YamlFile yaml, Drawing drawing) {
        works.pictures().forEach((part, picture) -> {
            String path = "pictures." + part;
            References.known(path, part, works.parts().keySet(), "a part of this file", yaml);
            References.place(path + ".at", picture.at(), "", drawing, yaml);
            if (!(picture.width() > 0 && picture.width() <= WIDEST)) {
                yaml.problem(
                        path + ".width",
                        "read " + picture.width() + ", expected more than 0 and at most " + WIDEST + " mm");
            }
            double bleed = picture.bleedOrUsual();
            if (!(bleed >= 0 && bleed <= MOST_BLEED)) {
                yaml.problem(path + ".bleed", "read " + bleed + ", expected 0 to " + MOST_BLEED + " mm");
            }
        });
    }

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
