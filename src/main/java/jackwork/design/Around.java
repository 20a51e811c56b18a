package jackwork.design;

import jackwork.drawing.Drawing;

/**
 * What an entry stands among.
 *
 * @param works of its own file
 * @param yaml its own file
 * @param drawing of its own file
 */
public record Around(WorkshopFile workshop, Works works, YamlFile yaml, Drawing drawing) {

    /** @param path from the file's root */
    void problem(String path, String message) {
        yaml.problem(path, message);
    }
}
